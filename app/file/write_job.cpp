#include "file/write_job.h"

#include "file/file_words.h"
#include "file/json_line.h"
#include "file/migrate_job.h"
#include "file/sewn_fields.h"
#include "file/write_order.h"
#include "file/write_roll.h"

namespace foldyard {
namespace {

// What holds for most panels (no limit, no wish for grain or match, not sewn
// into known goods) is left out.
std::string panel_text(const Panel& panel, Unit unit) {
  JsonLine line(unit);
  line.text("name", panel.name)
      .length("across", panel.across)
      .length("along", panel.along)
      .flag("may_turn", panel.may_turn)
      .flag("on_fold", panel.on_fold)
      .worth("worth", panel.worth);
  if (panel.at_most) line.whole("at_most", *panel.at_most);
  if (panel.grain == Grain::warp) line.text("grain", "warp");
  if (panel.match == Match::start) line.text("match", "start");
  if (panel.match == Match::centred) line.text("match", "centred");
  if (panel.sewn) line.raw("sewn", sewn_text(*panel.sewn, unit));
  return line.object();
}

std::string table_text(const Table& table, Unit unit) {
  return JsonLine(unit)
      .length("length", table.length)
      .length("depth", table.depth)
      .length("reach", table.reach)
      .flag("both_sides", table.both_sides)
      .object();
}

std::string cutter_text(const Cutter& cutter, Unit unit) {
  return JsonLine(unit)
      .length("height", cutter.height)
      .whole("most_plies", cutter.most_plies)
      .object();
}

std::string losses_text(const Losses& losses, Unit unit) {
  return JsonLine(unit)
      .length("squaring", losses.squaring)
      .length("allowance", losses.allowance)
      .length("fold_trim", losses.fold_trim)
      .length("keep_across", losses.keep_across)
      .length("keep_along", losses.keep_along)
      .object();
}

std::string pace_text(const Pace& pace, Unit unit) {
  return JsonLine(unit)
      .seconds("unroll", pace.unroll)
      .seconds("cross_cut", pace.cross_cut)
      .seconds("fold", pace.fold)
      .seconds("lift", pace.lift)
      .seconds("mark", pace.mark)
      .decimal("seconds_per_metre", pace.ms_per_metre, 3)
      .seconds("handle", pace.handle)
      .whole("allowance_percent", pace.allowance_percent)
      .worth("rate", pace.rate)
      .object();
}

}  // namespace

QByteArray write_job(const Job& job) {
  const Unit unit = job.unit;
  std::string out = "{\n  \"foldyard_job\": " + std::to_string(kJobFileVersion) + ",\n";
  const auto field = [&out](const char* key, const std::string& value) {
    ((((out += "  \"") += key) += "\": ") += value) += ",\n";
  };
  field("name", quoted(job.name));
  field("unit", quoted(word_of(kUnitWords, unit).toStdString()));
  field("rolls", list_text(job.rolls, unit, roll_text));
  field("panels", list_text(job.panels, unit, panel_text));
  field("table", table_text(job.table, unit));
  field("cutter", cutter_text(job.cutter, unit));
  field("losses", losses_text(job.losses, unit));
  field("pace", pace_text(job.pace, unit));
  out += order_fields(job);
  out += "  \"longest_fan\": " + std::to_string(job.longest_fan) + "\n}\n";
  return QByteArray::fromStdString(out);
}

}  // namespace foldyard
