#include "file/read_job.h"

#include <QFile>
#include <QFileInfo>
#include <QJsonDocument>

#include "cloth/flaw_order.h"
#include "file/file_words.h"
#include "file/read_order.h"
#include "file/read_roll.h"
#include "file/sewn_fields.h"
#include "file/strict_json.h"
#include "job/check_job.h"
#include "job/defaults.h"

namespace foldyard {
namespace {

const QStringList kGrains = {"pattern", "warp"};           // in the order of Grain
const QStringList kMatches = {"none", "start", "centred"};  // in the order of Match

const std::string kThisVersion = std::to_string(kJobFileVersion);

// The version of the file; the present one where there is a fault.
int read_version(const QJsonObject& fields, std::optional<Problem>& fault) {
  FieldReader file(fields, "", fault);
  file.need("foldyard_job", say("write \"foldyard_job\": %1 at the head of the file", kThisVersion));
  const int version = file.whole("foldyard_job", kJobFileVersion);
  if (fault || (1 <= version && version <= kJobFileVersion)) return version;
  fault = version > kJobFileVersion
              ? Problem{"foldyard_job",
                        say("the file has version %1 and this program reads up to version %2", version, kThisVersion),
                        say("open it with a newer Foldyard")}
              : Problem{"foldyard_job", say("there is no version 0"), say("write %1", kThisVersion)};
  return kJobFileVersion;
}

// The word that holds where the file says nothing, as its index.
int usual_word(std::string_view key, const QStringList& words) {
  const std::string_view word = default_of(key).value;
  return static_cast<int>(words.indexOf(QLatin1String(word.data(), qsizetype(word.size()))));
}

Panel read_panel(FieldReader& fields) {
  fields.only({"name", "across", "along", "may_turn", "on_fold", "worth", "at_most", "grain",
               "match", "sewn"});
  fields.need("name", to_say("give the panel a name"));
  const bool is_sewn = fields.has("sewn");
  const bool has_size = !is_sewn || fields.has("across") || fields.has("along");
  if (has_size) {
    fields.need("across", to_say("give its size from selvedge to selvedge, like \"45 cm\""));
    fields.need("along", to_say("give its size in the direction of the roll, like \"90 cm\""));
  }
  Panel panel;
  panel.name = fields.text("name");
  panel.across = fields.length("across", {});
  panel.along = fields.length("along", {});
  if (is_sewn) read_sewn(fields, has_size, panel);
  panel.may_turn = fields.flag("may_turn", default_of("panels[].may_turn").value == "true");
  panel.on_fold = fields.flag("on_fold", default_of("panels[].on_fold").value == "true");
  panel.worth = fields.worth("worth", default_worth(panel.area()));
  if (fields.has("at_most")) panel.at_most = fields.decimal("at_most", 0, 0);
  panel.grain = static_cast<Grain>(
      fields.choice("grain", kGrains, usual_word("panels[].grain", kGrains)));
  panel.match = static_cast<Match>(
      fields.choice("match", kMatches, usual_word("panels[].match", kMatches)));
  return panel;
}

void refuse_mixed_worths(const std::vector<FieldReader>& panels, std::optional<Problem>& fault) {
  std::size_t first_without = panels.size();
  std::size_t named = 0;
  for (std::size_t i = panels.size(); i-- > 0;) {
    if (panels[i].has("worth")) ++named;
    else first_without = i;
  }
  if (fault || named == 0 || named == panels.size()) return;
  fault = Problem{"panels[" + std::to_string(first_without) + "].worth",
                  say("some panels name a worth and this one does not"),
                  say("give every panel a worth, or none")};
}

std::vector<Panel> read_panels(FieldReader& file, std::optional<Problem>& fault) {
  std::vector<FieldReader> entries = file.list("panels");
  refuse_mixed_worths(entries, fault);
  std::vector<Panel> panels;
  for (FieldReader& entry : entries) panels.push_back(read_panel(entry));
  return panels;
}

void read_table(FieldReader fields, Table& table) {
  fields.only({"length", "depth", "reach", "both_sides"});
  table.length = fields.length("length", table.length);
  table.depth = fields.length("depth", table.depth);
  table.reach = fields.length("reach", table.reach);
  table.both_sides = fields.flag("both_sides", table.both_sides);
}

void read_cutter(FieldReader fields, Cutter& cutter) {
  fields.only({"height", "most_plies"});
  cutter.height = fields.length("height", cutter.height);
  cutter.most_plies = fields.whole("most_plies", cutter.most_plies);
}

void read_losses(FieldReader fields, Losses& losses) {
  fields.only({"squaring", "allowance", "fold_trim", "keep_across", "keep_along"});
  losses.squaring = fields.length("squaring", losses.squaring);
  losses.allowance = fields.length("allowance", losses.allowance);
  losses.fold_trim = fields.length("fold_trim", losses.fold_trim);
  losses.keep_across = fields.length("keep_across", losses.keep_across);
  losses.keep_along = fields.length("keep_along", losses.keep_along);
}

void read_pace(FieldReader fields, Pace& pace) {
  fields.only({"unroll", "cross_cut", "fold", "lift", "mark", "seconds_per_metre", "handle",
               "allowance_percent", "rate"});
  pace.unroll = fields.seconds("unroll", pace.unroll);
  pace.cross_cut = fields.seconds("cross_cut", pace.cross_cut);
  pace.fold = fields.seconds("fold", pace.fold);
  pace.lift = fields.seconds("lift", pace.lift);
  pace.mark = fields.seconds("mark", pace.mark);
  pace.ms_per_metre = fields.decimal("seconds_per_metre", 3, pace.ms_per_metre);
  pace.handle = fields.seconds("handle", pace.handle);
  pace.allowance_percent = fields.whole("allowance_percent", pace.allowance_percent);
  pace.rate = fields.worth("rate", pace.rate);
}

Job read_job_fields(FieldReader& file, std::optional<Problem>& fault) {
  Job job = default_job();
  file.only({"foldyard_job", "name", "unit", "rolls", "panels", "table", "cutter", "losses",
             "pace", "longest_fan", "products", "webbing", "order", "on_hand", "history", "notions", "sitting",
             "cloth_price_per_square_metre"});
  job.name = file.text("name");
  job.unit = static_cast<Unit>(file.choice("unit", kUnitWords, static_cast<int>(job.unit)));
  for (FieldReader& entry : file.list("rolls")) job.rolls.push_back(read_roll(entry));
  job.panels = read_panels(file, fault);
  read_table(file.group("table"), job.table);
  read_cutter(file.group("cutter"), job.cutter);
  read_losses(file.group("losses"), job.losses);
  read_pace(file.group("pace"), job.pace);
  job.longest_fan = file.whole("longest_fan", job.longest_fan);
  job.cloth_price = file.worth("cloth_price_per_square_metre", job.cloth_price);
  read_order(file, job);
  return job;
}

Problem too_large() {
  return {"", say("the file is larger than 4 MiB"), say("a job file is far smaller; choose another")};
}

}  // namespace

Result<Job> read_job(const QByteArray& bytes) {
  if (bytes.size() > kLargestJobFile) return too_large();
  std::optional<Problem> fault = check_json(bytes);
  if (fault) return *fault;
  QJsonParseError error;
  const QJsonDocument json = QJsonDocument::fromJson(bytes, &error);
  if (!json.isObject()) {
    return Problem{"", say("the file cannot be read as JSON (%1)", error.errorString().toStdString()),
                   say("correct it")};
  }
  const int version = read_version(json.object(), fault);
  if (fault) return *fault;
  const Result<QJsonObject> fields = migrate_job(json.object(), version);
  if (!fields) return fields.problem();
  FieldReader file(*fields, "", fault);
  Job job = read_job_fields(file, fault);
  if (!fault) fault = check_unordered_job(job);
  for (Roll& roll : job.rolls) put_in_order(roll.flaws);
  if (fault) return *fault;
  return job;
}

Result<Job> load_job(const QString& path) {
  const QFileInfo info(path);
  const std::string where = path.toStdString();
  if (!info.exists()) return Problem{where, say("there is no such file"), say("check its name and folder")};
  if (!info.isFile()) return Problem{where, say("this is not a file"), say("choose a job file")};
  if (info.size() > kLargestJobFile) return Problem{where, too_large().what, too_large().next};
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) {
    return Problem{where, say("the file may not be read"), say("ask for the right to read it")};
  }
  const QByteArray bytes = file.read(kLargestJobFile + 1);
  if (file.error() != QFileDevice::NoError) {
    return Problem{where, say("the disk could not read the file"), say("try again or use a copy")};
  }
  return read_job(bytes);
}

}  // namespace foldyard
