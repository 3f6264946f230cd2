#include "job/plan_batch.h"

#include "inspect/inspect_batch.h"
#include "job/batch_limits.h"
#include "job/batch_search.h"
#include "job/write_batch.h"
#include "measure/index.h"

namespace foldyard {

namespace {

class BatchDoor {
 public:
  // limited: the job with its limits on copies.
  BatchDoor(const Job& job, const Job& limited, const BatchCase& c, const BatchBudget& budget)
      : job_(job), limited_(limited), case_(c), budget_(budget), search_(job_, case_, budget, [this] { tell(); }) {}

  Result<BatchPlan> plan() {
    search_.run();
    return inspected();
  }

 private:
  BatchPlan written() {
    const OrderState held = hold_limits(limited_, case_, search_.lengths(), search_.best());
    BatchPlan plan = write_batch(job_, case_, search_.lengths(), held);
    const BatchBounds bounds = search_.bounds();
    plan.filled_bound = Worth::parts(bounds.filled);
    plan.cost_bound = least_cost();
    if (is_filled() && bounds.has_cost && bounds.keeps_rules == (search_.score().short_of_rules == 0))
      plan.cost_bound = std::max(plan.cost_bound, Worth::parts(bounds.cost));
    if (!is_filled() && bounds.served_cost) plan.cost_bound = std::max(plan.cost_bound, Worth::parts(*bounds.served_cost));
    plan.proved = is_filled() && search_.is_proved();
    plan.note = plan.proved ? say("no plan that makes as much costs less: prices of panels prove it")
                            : say("this is the best found; prices of panels bound what any plan costs");
    if (!case_.unmatched.empty()) plan.note = say("%1; %2", plan.note, unmatched());
    return plan;
  }

  Words unmatched() const {
    const auto [roll, panel] = case_.unmatched.front();
    const bool more = case_.unmatched.size() > 1;
    return say(more ? to_say("%1 must match the pattern of %2, so a batch cuts none of it there, and more of that kind")
                    : to_say("%1 must match the pattern of %2, so a batch cuts none of it there"),
               job_.panels[ix(panel)].name, job_.rolls[ix(roll)].name);
  }

  // The bound on cost is one of plans that make all that must be made.
  bool is_filled() const {
    std::int64_t all = 0;
    for (const PieceLine& line : case_.order.lines) all += line.worth * line.must;
    return search_.score().filled == all;
  }

  // Known without any search: no cloth, and every piece that may be made.
  Worth least_cost() const {
    Worth cost;
    for (const PieceLine& line : case_.order.lines) cost = cost - Worth::parts(line.worth * line.may);
    return cost;
  }

  Result<BatchPlan> inspected() {
    BatchPlan plan = written();
    if (std::optional<Problem> problem = uncut()) return *std::move(problem);
    if (std::optional<Problem> problem = over(plan)) return *std::move(problem);
    if (plan.made.empty())
      return Problem{"order", budget_.is_cancelled() ? say("planning was stopped before a plan was found")
                                                     : say("no panel of the order can be cut from any roll"), ""};
    if (const auto findings = inspect_batch(limited_, plan); !findings.empty())
      return Problem{"order", say("the plan found does not pass inspection: %1", findings.front()),
                     say("this is a fault of the program; please report it with the job file")};
    return plan;
  }

  // A roll that must be cut, and on which no length finds room.
  std::optional<Problem> uncut() const {
    for (std::size_t r = 0; r < case_.order.rolls.size(); ++r)
      if (case_.order.rolls[r].must && search_.best().rolls[r].lengths.empty())
        return Problem{"rolls[" + std::to_string(case_.rolls[r]) + "].in_batch",
                       say("\"%1\" must be cut, and no panel of the order can be cut from it",
                           job_.rolls[ix(case_.rolls[r])].name),
                       say("let the batch choose, or order what this cloth can serve")};
    return std::nullopt;
  }

  // A limit that could not be held.
  std::optional<Problem> over(const BatchPlan& plan) const {
    for (std::size_t p = 0; p < job_.panels.size(); ++p) {
      std::int64_t cut = 0;
      for (const Plan& roll : plan.rolls) cut += roll.yield[p];
      if (cut <= limited_.panels[p].at_most.value_or(cut)) continue;
      return Problem{"panels[" + std::to_string(p) + "].at_most",
                     say("the lengths that serve the order give %1 of %2, and at most %3 may be cut", cut, job_.panels[p].name,
                         *limited_.panels[p].at_most),
                     say("take the limit off the panel, or let lengths go that are kept")};
    }
    return std::nullopt;
  }

  void tell() {
    if (!budget_.found) return;
    if (const Result<BatchPlan> plan = inspected()) budget_.found(*plan);
  }

  const Job& job_;
  const Job& limited_;
  const BatchCase& case_;
  const BatchBudget& budget_;
  BatchSearch search_;
};

// The search counts no copies: limits are held when the plan is written.
Job without_limits(Job job) {
  for (Panel& panel : job.panels) panel.at_most.reset();
  return job;
}

}  // namespace

Result<BatchPlan> plan_batch(const Job& job, const BatchBudget& budget) {
  if (std::optional<Problem> problem = over_limit(job)) return *std::move(problem);
  const Job unlimited = without_limits(job);
  const Result<BatchCase> c = batch_case(unlimited);
  if (!c) return c.problem();
  return BatchDoor(unlimited, job, *c, budget).plan();
}

}  // namespace foldyard
