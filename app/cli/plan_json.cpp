#include "cli/plan_json.h"

#include <QJsonArray>
#include <QJsonDocument>

#include "cli/call.h"
#include "cli/comparison_words.h"
#include "cli/goods_json.h"
#include "cutting/phase_axis.h"
#include "cutting/shape.h"
#include "file/exact_length.h"
#include "fold/plies.h"
#include "job/decimal.h"
#include "job/lift_room.h"
#include "job/roll_of.h"
#include "language/utf8.h"
#include "measure/index.h"

namespace foldyard {

double seconds(Duration time) { return static_cast<double>(time.ticks() / Duration::kTicksPerMs) / 1000; }

QString exact_worth(Worth worth) {
  const std::int64_t parts = worth.parts();
  const QString size = QString::fromStdString(write_decimal(parts < 0 ? -parts : parts, 4));
  return parts < 0 ? QLatin1Char('-') + size : size;
}

namespace {

class PlanWriter {
 public:
  PlanWriter(const Job& job, int roll)
      : job_(job), fabric_(job.rolls[ix(roll)].fabric) {}

  QJsonObject plan(const Plan& plan) const {
    QJsonObject json{{"way", text(way_key(plan.way))},
                     {"way_name", text(way_name(plan.way))},
                     {"yield", yield(plan)},
                     {"worth", exact_worth(plan.worth)},
                     {"net", exact_worth(plan.net)},
                     {"used_square_metres", plan.used.in_square_metres()},
                     {"cloth_square_metres", plan.cloth.in_square_metres()},
                     {"cuts", static_cast<qint64>(plan.cuts)},
                     {"cross_cuts", static_cast<qint64>(plan.cross_cuts)},
                     {"travel", length(plan.travel)},
                     {"seconds", seconds(plan.time)},
                     {"most_lengths_in_a_lift", most_in_a_lift(plan)},
                     {"lengths_may_lie_in_a_lift",
                      static_cast<qint64>(lengths_in_a_lift(job_, plan.roll, plan.way))},
                     {"proof", proof(plan.proof)}};
    json["goods"] = goods_json(job_, plan);
    json["patterns"] = list(plan.patterns, &PlanWriter::pattern);
    json["lays"] = list(plan.lays, &PlanWriter::lay);
    json["lengths"] = list(plan.lengths, &PlanWriter::length_on_roll);
    if (fabric_.repeat.is_any()) add_repeat(plan, json);
    if (!roll_of(job_, plan).flaws.empty()) add_flaws(plan, json);
    json["remnant"] = span(plan.remnant);
    json["remnant_kept"] = plan.remnant_kept;
    return json;
  }

 private:
  void add_repeat(const Plan& plan, QJsonObject& json) const {
    const Repeat& repeat = fabric_.repeat;
    json["repeat"] = QJsonObject{{"along", length(repeat.along)},
                                 {"across", length(repeat.across)},
                                 {"start_along", length(repeat.start_along)},
                                 {"start_across", length(repeat.start_across)}};
    json["cut_out"] = list(plan.cut_out, &PlanWriter::span);
    if (!plan.unmatched) return;
    json["where_nothing_need_match"] =
        QJsonObject{{"worth", exact_worth(plan.unmatched->worth)},
                    {"used_square_metres", plan.unmatched->used.in_square_metres()}};
  }
  // How far the pattern of a length begins beyond the start of a repeat.
  QString phase(const LengthOnRoll& on_roll) const {
    const Length start = on_roll.pattern_start(job_.losses.allowance);
    return length(phase_at(start, fabric_.repeat.start_along, fabric_.repeat.along));
  }
  void add_flaws(const Plan& plan, QJsonObject& json) const {
    json["flaws"] = list(roll_of(job_, plan).flaws, &PlanWriter::flaw);
    json["cut_out"] = list(plan.cut_out, &PlanWriter::span);
    QJsonArray lost;
    for (const LostPanel& each : plan.lost) {
      const int lay = plan.lengths[ix(each.length)].lay;
      const int pattern = plan.lays[ix(lay)].pattern;
      const auto& panels = plan.patterns[ix(pattern)].panels;
      lost.append(QJsonObject{
          {"length", each.length},
          {"placed", each.panel},
          {"panel", panel_name(panels[ix(each.panel)].panel)},
          {"flaw", each.flaw}});
    }
    json["lost"] = lost;
  }
  QJsonObject flaw(const Flaw& flaw) const {
    return {{"kind", text(flaw.kind)}, {"along", span(flaw.along)}, {"across", span(flaw.across)}};
  }

  template <class List, class Each>
  QJsonArray list(const List& entries, Each each) const {
    QJsonArray json;
    for (const auto& entry : entries) json.append((this->*each)(entry));
    return json;
  }

  QString length(Length length) const { return text(exact_length(length, job_.unit)); }
  QJsonValue length_value(const Length& value) const { return length(value); }

  QJsonObject span(const Span& span) const {
    return {{"from", length(span.from)}, {"to", length(span.to)}};
  }
  QJsonObject rect(const Rect& rect) const {
    return {{"across", span(rect.across)}, {"along", span(rect.along)}};
  }
  QString panel_name(int panel) const {
    return text(job_.panels[ix(panel)].name);
  }

  QJsonArray yield(const Plan& plan) const {
    QJsonArray json;
    for (std::size_t i = 0; i < plan.yield.size(); ++i) {
      QJsonObject line{{"panel", panel_name(static_cast<int>(i))}, {"count", static_cast<qint64>(plan.yield[i])}};
      if (job_.panels[i].at_most) line["at_most"] = static_cast<qint64>(*job_.panels[i].at_most);
      json.append(line);
    }
    return json;
  }
  QJsonObject proof(const Proof& proof) const {
    return {{"bound", exact_worth(proof.bound)},
            {"proved", proof.proved},
            {"note", text(proof.note)}};
  }

  QJsonObject pattern(const Pattern& pattern) const {
    return {{"length", length(pattern.length)},
            {"fold_lines", list(pattern.fold.lines, &PlanWriter::length_value)},
            {"levels", levels(pattern.fold.levels)},
            {"end_to_end", pattern.fold.way.end_to_end},
            {"folded_across", length(pattern.folded_across)},
            {"folded_along", length(pattern.folded_along)},
            {"plies", pattern.plies},
            {"worth", exact_worth(pattern.worth)},
            {"travel", length(pattern.travel)},
            {"cuts", list(pattern.cuts, &PlanWriter::cut)},
            {"panels", list(pattern.panels, &PlanWriter::placed)},
            {"rests", list(pattern.rests, &PlanWriter::rest)},
            {"stack", stack(pattern)}};
  }
  // Every ply of one length, from the table up.
  QJsonArray stack(const Pattern& pattern) const {
    QJsonArray json;
    for (const Ply& each : plies_of(fold_map(pattern.fold, fabric_.width, pattern.length)))
      json.append(ply(each));
    return json;
  }
  QJsonObject ply(const Ply& ply) const {
    QJsonObject json{{"level", ply.level},
                     {"face", ply.is_face_up() ? "up" : "down"},
                     {"flat", rect(ply.flat)},
                     {"folded", rect(ply.folded)}};
    if (fabric_.nap == Nap::one_way)
      json["nap"] = nap_run_name(nap_run(ply, fabric_.railroaded));
    return json;
  }
  static QJsonArray levels(const std::vector<int>& levels) {
    QJsonArray json;
    for (int level : levels) json.append(level);
    return json;
  }
  QJsonObject cut(const Cut& cut) const {
    return {{"direction", cut.direction == Direction::along ? "along" : "across"},
            {"at", length(cut.at)},
            {"over", span(cut.over)}};
  }
  QJsonObject placed(const PlacedPanel& placed) const {
    return {{"panel", panel_name(placed.panel)},
            {"turned", placed.turned},
            {"on_fold", placed.on_fold},
            {"finishes", finished(placed)},
            {"flat", rect(placed.flat)},
            {"folded", rect(placed.folded)}};
  }
  // What it measures once the cloth has shrunk, as it lies on the cloth.
  QJsonObject finished(const PlacedPanel& placed) const {
    const Panel& goods = job_.panels[ix(placed.panel)];
    const bool sideways = lies_sideways(goods, fabric_, placed.turned);
    return {{"across", length(sideways ? goods.along : goods.across)},
            {"along", length(sideways ? goods.across : goods.along)}};
  }
  QJsonObject rest(const Rest& rest) const {
    const char* const kind = rest.kind == RestKind::selvedge  ? "selvedge"
                             : rest.kind == RestKind::remnant ? "remnant"
                                                              : "offcut";
    return {{"kind", kind}, {"flat", rect(rest.flat)}};
  }
  QJsonObject lay(const Lay& lay) const {
    return {{"pattern", lay.pattern}, {"lengths", lay.lengths}};
  }
  QJsonObject length_on_roll(const LengthOnRoll& length) const {
    QJsonObject json{{"lay", length.lay}, {"on_roll", span(length.on_roll)}};
    if (fabric_.repeat.along > Length()) json["phase"] = phase(length);
    return json;
  }

  const Job& job_;
  const Fabric& fabric_;
};

QString roll_name(const Job& job, int roll) {
  return text(job.rolls[ix(roll)].name);
}

QJsonObject way_json(const Job& job, const Comparison& comparison, int way) {
  const WayResult& result = comparison.ways[ix(way)];
  if (!result.plan) {
    return {{"way", text(way_key(result.way))},
            {"way_name", text(way_name(result.way))},
            {"refused", text(result.refused)}};
  }
  QJsonObject json = PlanWriter(job, comparison.roll).plan(*result.plan);
  json["gives_up"] = exact_worth(given_up(comparison, way));
  return json;
}

QJsonArray keys_json(const Comparison& comparison, const std::vector<int>& ways) {
  QJsonArray keys;
  for (int way : ways) {
    keys.append(text(way_key(comparison.ways[ix(way)].way)));
  }
  return keys;
}

}  // namespace

QJsonObject plan_json(const Job& job, const Plan& plan) {
  return {{"roll", roll_name(job, plan.roll)}, {"plan", PlanWriter(job, plan.roll).plan(plan)}};
}

QJsonObject comparison_json(const Job& job, const Comparison& comparison) {
  QJsonArray ways;
  for (int i = 0; i < static_cast<int>(comparison.ways.size()); ++i) {
    ways.append(way_json(job, comparison, i));
  }
  return {{"roll", roll_name(job, comparison.roll)},
          {"ways", ways},
          {"ranking", keys_json(comparison, comparison.ranking)},
          {"frontier", keys_json(comparison, comparison.frontier)}};
}

QJsonObject refused_json(const Job& job, int roll, const QString& reason) {
  return {{"roll", roll_name(job, roll)}, {"refused", reason}};
}

QString answer_text(const QString& verb, Aim aim, const QJsonArray& rolls) {
  const QJsonObject json{{"foldyard_answer", kAnswerVersion},
                         {"verb", verb},
                         {"aim", aim_key(aim)},
                         {"rolls", rolls}};
  return QString::fromUtf8(QJsonDocument(json).toJson());
}

}  // namespace foldyard
