#include "cli/plan_verb.h"

#include <QJsonArray>

#include "cli/choice.h"
#include "cli/interrupt.h"
#include "cli/plan_json.h"
#include "cli/plan_words.h"
#include "job/plan_roll.h"

namespace foldyard {
namespace {

struct Answer {
  int roll = 0;
  std::optional<Plan> plan;
  QString refused;
};

Answer named_way(const Job& job, const Call& call, int roll, const SearchBudget& budget) {
  const Result<Plan> plan = plan_roll(job, roll, *call.way, call.aim, budget);
  if (plan) return {roll, *plan, {}};
  return {roll, {}, QString::fromStdString(plan.problem().sentence())};
}

Answer best_way(const Job& job, const Call& call, int roll, const SearchBudget& budget) {
  const Comparison comparison = compare_ways(job, roll, call.aim, budget);
  const int way = chosen_way(comparison, call);
  if (way < 0) return {roll, {}, refusal_words(comparison)};
  return {roll, comparison.ways[static_cast<std::size_t>(way)].plan, {}};
}

QJsonObject json_of(const Job& job, const Answer& answer) {
  return answer.plan ? plan_json(job, *answer.plan)
                     : refused_json(job, answer.roll, answer.refused);
}

QString words_of(const Job& job, const Answer& answer) {
  if (answer.plan) return plan_words(job, *answer.plan) + QLatin1Char('\n');
  return QStringLiteral("Roll %1 cannot be planned: %2\n\n")
      .arg(QString::fromStdString(job.rolls[static_cast<std::size_t>(answer.roll)].name),
           answer.refused);
}

}  // namespace

Outcome plan_verb(const Job& job, const Call& call) {
  QString words;
  QJsonArray rolls;
  bool any = false;
  QString refused;
  const Interruptible interruptible;
  const SearchBudget budget = interruptible.budget();
  for (int roll : chosen_rolls(job, call)) {
    const Answer answer = call.way ? named_way(job, call, roll, budget) : best_way(job, call, roll, budget);
    any = any || answer.plan;
    if (!answer.plan) refused += words_of(job, answer);
    if (call.json) rolls.append(json_of(job, answer));
    else words += words_of(job, answer);
  }
  if (!any) return {Exit::cannot_plan, {}, refused.trimmed()};
  if (call.json) return {Exit::done, answer_text(QStringLiteral("plan"), call.aim, rolls), interruptible.complaint()};
  return {Exit::done, words + caution_words(job), interruptible.complaint()};
}

}  // namespace foldyard
