#include "cli/compare_verb.h"

#include <QJsonArray>

#include "cli/choice.h"
#include "cli/comparison_words.h"
#include "cli/interrupt.h"
#include "cli/plan_json.h"
#include "job/plan_roll.h"

namespace foldyard {

Outcome compare_verb(const Job& job, const Call& call) {
  QStringList words = {panel_legend(job)};
  QJsonArray rolls;
  bool any = false;
  const Interruptible interruptible;
  for (int roll : chosen_rolls(job, call)) {
    const Comparison comparison = compare_ways(job, roll, call.aim, interruptible.budget());
    any = any || !comparison.ranking.empty();
    if (call.json) rolls.append(comparison_json(job, comparison));
    else words << comparison_words(job, comparison);
  }
  if (!any) {
    return {Exit::cannot_plan, words.join(QLatin1Char('\n')),
            QStringLiteral("no roll can be planned in any way")};
  }
  if (call.json) return {Exit::done, answer_text(QStringLiteral("compare"), call.aim, rolls), interruptible.complaint()};
  return {Exit::done, words.join(QLatin1Char('\n')), interruptible.complaint()};
}

}  // namespace foldyard
