#include "cli/compare_verb.h"

#include <QJsonArray>

#include "cli/choice.h"
#include "cli/comparison_words.h"
#include "cli/interrupt.h"
#include "cli/plan_json.h"
#include "cli/range_answer.h"
#include "job/plan_roll.h"
#include "language/tr.h"
#include "measure/index.h"

namespace foldyard {

namespace {

// The steps of the best way, where the roll's length is estimated.
const Plan* best_of(const Comparison& comparison) {
  if (comparison.ranking.empty()) return nullptr;
  return &*comparison.ways[ix(comparison.ranking.front())].plan;
}

QJsonObject json_of(const Job& job, const Comparison& comparison, const SearchBudget& budget) {
  const QJsonObject json = comparison_json(job, comparison);
  const Plan* best = best_of(comparison);
  return best ? with_range(job, *best, json, budget) : json;
}

QString words_of(const Job& job, const Comparison& comparison, const SearchBudget& budget) {
  const QString words = comparison_words(job, comparison);
  const Plan* best = best_of(comparison);
  const QString range = best ? range_words_of(job, *best, budget) : QString();
  return range.isEmpty() ? words : words + QLatin1Char('\n') + range;
}

}  // namespace

Outcome compare_verb(const Job& job, const Call& call) {
  QStringList words = {panel_legend(job)};
  QJsonArray rolls;
  bool any = false;
  const Interruptible interruptible;
  for (int roll : chosen_rolls(job, call)) {
    const Comparison comparison = compare_ways(job, roll, call.aim, interruptible.budget());
    any = any || !comparison.ranking.empty();
    if (call.json) rolls.append(json_of(job, comparison, interruptible.budget()));
    else words << words_of(job, comparison, interruptible.budget());
  }
  if (!any) {
    return {Exit::cannot_plan, words.join(QLatin1Char('\n')),
            tr("no roll can be planned in any way")};
  }
  if (call.json) return {Exit::done, answer_text(QStringLiteral("compare"), call.aim, rolls), interruptible.complaint()};
  return {Exit::done, words.join(QLatin1Char('\n')), interruptible.complaint()};
}

}  // namespace foldyard
