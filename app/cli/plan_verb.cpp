#include "cli/plan_verb.h"

#include <QJsonArray>

#include "cli/choice.h"
#include "cli/interrupt.h"
#include "cli/plain_text.h"
#include "cli/plan_json.h"
#include "cli/plan_words.h"
#include "cli/range_answer.h"
#include "drawing/words.h"
#include "job/plan_roll.h"
#include "job/roll_of.h"
#include "language/spoken.h"
#include "language/tr.h"
#include "measure/index.h"

namespace foldyard {
namespace {

struct Answer {
  int roll = 0;
  std::optional<Plan> plan;
  QString refused;
  QString refused_english;  // in JSON
};

Answer named_way(const Job& job, const Call& call, int roll, const SearchBudget& budget) {
  const Result<Plan> plan = plan_roll(job, roll, *call.way, call.aim, budget);
  if (plan) return {roll, *plan, {}, {}};
  return {roll, {}, spoken(plan.problem()), QString::fromStdString(plan.problem().sentence())};
}

Answer best_way(const Job& job, const Call& call, int roll, const SearchBudget& budget) {
  const Comparison comparison = compare_ways(job, roll, call.aim, budget);
  const int way = chosen_way(comparison, call);
  if (way < 0) return {roll, {}, refusal_words(comparison), refusal_words(comparison, true)};
  return {roll, comparison.ways[ix(way)].plan, {}, {}};
}

// The same way and aim on the same roll without its flaws.
std::optional<Plan> plan_without_flaws(const Job& job, const Plan& plan,
                                       const SearchBudget& budget) {
  Job clean = job;
  clean.rolls[ix(plan.roll)].flaws.clear();
  const Result<Plan> whole = plan_roll(clean, plan.roll, plan.way, plan.aim, budget);
  return whole ? std::optional<Plan>(*whole) : std::nullopt;
}

// What flaws cost against a roll without any; nothing for such a roll.
QString cost_of_flaws(const Job& job, const Plan& plan, const SearchBudget& budget) {
  if (roll_of(job, plan).flaws.empty()) return {};
  const std::optional<Plan> whole = plan_without_flaws(job, plan, budget);
  if (!whole || budget.is_cancelled()) return {};
  const bool by_worth = plan.aim == Aim::most_worth;
  const Worth reached = by_worth ? plan.worth : plan.net;
  const Worth without = by_worth ? whole->worth : whole->net;
  return (by_worth
              ? tr("\nWithout its flaws the roll would give %1 this way, worth %2:\nthe flaws cost %3.\n")
              : tr("\nWithout its flaws the roll would give %1 this way, after your time %2:\nthe flaws cost %3.\n"))
      .arg(yield_words(job, whole->yield), worth_words(without), worth_words(without - reached));
}

QJsonObject json_of(const Job& job, const Answer& answer, const SearchBudget& budget) {
  if (!answer.plan) return refused_json(job, answer.roll, answer.refused_english);
  QJsonObject json = with_range(job, *answer.plan, plan_json(job, *answer.plan), budget);
  if (job.rolls[ix(answer.roll)].flaws.empty()) return json;
  const std::optional<Plan> whole = plan_without_flaws(job, *answer.plan, budget);
  if (whole && !budget.is_cancelled())
    json["without_flaws"] = QJsonObject{{"worth", exact_worth(whole->worth)},
                                        {"net", exact_worth(whole->net)}};
  return json;
}

QString words_of(const Job& job, const Answer& answer, const SearchBudget& budget) {
  if (answer.plan)
    return plan_words(job, *answer.plan) + plain_text(cost_of_flaws(job, *answer.plan, budget)) +
           QLatin1Char('\n') + range_words_of(job, *answer.plan, budget);
  return tr("Roll %1 cannot be planned: %2\n\n")
      .arg(QString::fromStdString(job.rolls[ix(answer.roll)].name), answer.refused);
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
    if (!answer.plan) refused += words_of(job, answer, budget);
    if (call.json) rolls.append(json_of(job, answer, budget));
    else words += words_of(job, answer, budget);
  }
  if (!any) return {Exit::cannot_plan, {}, refused.trimmed()};
  if (call.json) return {Exit::done, answer_text(QStringLiteral("plan"), call.aim, rolls), interruptible.complaint()};
  return {Exit::done, words + caution_words(job), interruptible.complaint()};
}

}  // namespace foldyard
