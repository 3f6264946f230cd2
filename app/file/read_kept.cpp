#include "file/read_kept.h"

#include <algorithm>

namespace foldyard {
namespace {

const QStringList kDirections = {"along", "across"};  // in the order of Direction

int panel_named(FieldReader& fields, const char* key, const Job& job) {
  const std::string name = fields.text(key);
  const auto at = std::find_if(job.panels.begin(), job.panels.end(), [&](const Panel& panel) { return panel.name == name; });
  if (at != job.panels.end()) return static_cast<int>(at - job.panels.begin());
  fields.refuse(key, say("there is no panel of this name"), say("write the name of a panel of this job"));
  return 0;
}

KeptStep read_kept_step(FieldReader& fields, const Job& job) {
  fields.only({"cut", "at", "take", "turned", "leave"});
  if (fields.has("cut")) {
    fields.need("at", to_say("say where it is cut, like \"45 cm\""));
    return {NodeKind::cut, static_cast<Direction>(fields.choice("cut", kDirections, 0)), fields.length("at", {}), -1, false};
  }
  if (fields.has("take")) return {NodeKind::take, Direction::along, {}, panel_named(fields, "take", job), fields.flag("turned", false)};
  fields.need("leave", to_say("write \"cut\", \"take\" or \"leave\""));
  if (!fields.flag("leave", true)) fields.refuse("leave", say("a part is cut, taken or left"), say("write true"));
  return {};
}

}  // namespace

KeptLength read_kept(FieldReader& fields, const Job& job) {
  fields.only({"roll", "count", "length", "way", "lines", "cuts"});
  fields.need("roll", to_say("name the roll that it is cut from"));
  fields.need("length", to_say("say how long it is, without its allowance"));
  KeptLength kept;
  kept.roll = fields.text("roll");
  kept.count = fields.decimal("count", 0, 1);
  kept.length = fields.length("length", {});
  if (fields.has("way") && !way_from_key(fields.text("way"), kept.way))
    fields.refuse("way", say("no way of folding is called so"), say("write one like open or thirds"));
  kept.lines = fields.lengths("lines");
  for (FieldReader& entry : fields.list("cuts")) kept.steps.push_back(read_kept_step(entry, job));
  return kept;
}

}  // namespace foldyard
