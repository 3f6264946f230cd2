#include "cli/comparison_words.h"

#include <QMap>
#include <algorithm>
#include <set>

#include "cli/plain_text.h"
#include "cli/text_table.h"
#include "cli/wrapped.h"
#include "drawing/range_words.h"
#include "drawing/words.h"
#include "job/lift_room.h"
#include "language/local_numbers.h"
#include "language/spoken.h"
#include "language/tr.h"
#include "measure/index.h"

namespace foldyard {
namespace {

const Plan& plan_at(const Comparison& comparison, int way) {
  return *comparison.ways[ix(way)].plan;
}

Worth aimed_at(const Plan& plan) { return plan.aim == Aim::most_worth ? plan.worth : plan.net; }

QString proof_cell(const Plan& plan) {
  if (plan.proof.proved) return tr("proved");
  return tr("at most %1").arg(worth_words(plan.proof.bound));
}

// The panels that at least one way yields: the others have no column.
std::vector<int> yielded_panels(const Comparison& comparison) {
  std::set<int> panels;
  for (int way : comparison.ranking) {
    const std::vector<std::int64_t>& yield = plan_at(comparison, way).yield;
    for (std::size_t i = 0; i < yield.size(); ++i) {
      if (yield[i] > 0) panels.insert(static_cast<int>(i));
    }
  }
  return {panels.begin(), panels.end()};
}

QStringList head_row(const std::vector<int>& panels) {
  QStringList row = {tr("way of folding")};
  for (int panel : panels) row << panel_code(panel);
  return row << tr("worth", "column") << tr("net", "column") << tr("used", "column") << tr("lengths")
             << tr("lifts", "column") << tr("a lift", "column") << tr("cuts", "column") << tr("minutes")
             << tr("gives up", "column") << tr("best?", "column") << QStringLiteral("--way");
}

// The lengths in the fullest lift, and how many may lie in one.
QString lift_cell(const Job& job, const Plan& plan) {
  return tr("%1 of %2", "so many of the lengths a lift may hold").arg(most_in_a_lift(plan)).arg(
      lengths_in_a_lift(job, plan.roll, plan.way));
}

QStringList way_row(const Job& job, const Comparison& comparison, int way, const std::vector<int>& panels) {
  const Plan& plan = plan_at(comparison, way);
  QStringList row = {spoken(way_name(plan.way))};
  for (int panel : panels) row << QString::number(plan.yield[ix(panel)]);
  return row << worth_words(plan.worth) << worth_words(plan.net)
             << use_words(plan.used, plan.cloth) << QString::number(plan.lengths.size())
             << QString::number(plan.lays.size()) << lift_cell(job, plan)
             << QString::number(plan.cuts)
             << local_number(plan.time.in_minutes(), 1)
             << worth_words(given_up(comparison, way)) << proof_cell(plan)
             << QString::fromStdString(way_key(plan.way));
}

QString frontier_words(const Comparison& comparison) {
  QStringList names;
  for (int way : comparison.frontier) {
    const Plan& plan = plan_at(comparison, way);
    names << QStringLiteral("%1 (%2, %3)")
                 .arg(QString::fromStdString(way_key(plan.way)), worth_words(plan.worth),
                      minutes_words(plan.time));
  }
  if (names.isEmpty()) return {};
  return tr("From most worth to least time: %1.\n").arg(names.join(QStringLiteral(", ")));
}

// The ways that share a reason are named together.
QString refused_words(const Comparison& comparison) {
  QStringList reasons;
  QMap<QString, QStringList> names;
  for (const WayResult& result : comparison.ways) {
    if (result.plan) continue;
    const QString reason = spoken(result.refused);
    if (!reasons.contains(reason)) reasons << reason;
    names[reason] << QString::fromStdString(way_key(result.way));
  }
  QString text;
  for (const QString& reason : reasons) {
    text += tr("Not planned, because %1: %2.\n")
                .arg(reason, names[reason].join(QStringLiteral(", ")));
  }
  return text;
}

QString aim_words(Aim aim) {
  return aim == Aim::most_worth
             ? tr("most worth, then fewest cuts")
             : tr("most worth after your time");
}

}  // namespace

QString panel_legend(const Job& job) {
  QString text = tr("Panels\n");
  for (int i = 0; i < static_cast<int>(job.panels.size()); ++i) {
    const Panel& panel = job.panels[ix(i)];
    text += tr("  %1 %2, %3, worth %4\n")
                .arg(panel_code(i), QString::fromStdString(panel.name),
                     size_words(panel.across, panel.along, job.unit), worth_words(panel.worth));
  }
  return plain_text(text);
}

Worth given_up(const Comparison& comparison, int way) {
  const Worth best = aimed_at(plan_at(comparison, comparison.ranking.front()));
  return std::max(Worth(), best - aimed_at(plan_at(comparison, way)));
}

int most_in_a_lift(const Plan& plan) {
  int most = 0;
  for (const Lay& lay : plan.lays) most = std::max(most, lay.lengths);
  return most;
}

QString comparison_words(const Job& job, const Comparison& comparison) {
  const Roll& roll = job.rolls[ix(comparison.roll)];
  QString text = tr("Roll %1: %2 of cloth %3 wide. Aim: %4.\n")
                     .arg(QString::fromStdString(roll.name), length_words(roll.length, job.unit),
                          length_words(roll.fabric.width, job.unit), aim_words(comparison.aim));
  if (is_estimated(roll)) text += wrapped(estimated_words(job, roll), {});
  const std::vector<int> panels = yielded_panels(comparison);
  std::vector<QStringList> rows = {head_row(panels)};
  for (int way : comparison.ranking) rows.push_back(way_row(job, comparison, way, panels));
  if (rows.size() > 1) text += text_table(rows);
  return plain_text(text + frontier_words(comparison) + refused_words(comparison));
}

}  // namespace foldyard
