#include "job/plan_batch.h"

#include "inspect/inspect_batch.h"
#include "job/batch_search.h"
#include "job/write_batch.h"

namespace foldyard {

namespace {

class Door {
 public:
  Door(const Job& job, const BatchCase& c, const BatchBudget& budget)
      : job_(job), case_(c), budget_(budget), search_(job_, case_, budget, [this] { tell(); }) {}

  Result<BatchPlan> plan() {
    search_.run();
    return inspected();
  }

 private:
  BatchPlan written() const {
    BatchPlan plan = write_batch(job_, case_, search_.lengths(), search_.best());
    const BatchBounds bounds = search_.bounds();
    plan.filled_bound = Worth::parts(bounds.filled);
    plan.cost_bound = least_cost();
    if (is_filled() && bounds.has_cost && bounds.keeps_rules == (search_.score().short_of_rules == 0))
      plan.cost_bound = std::max(plan.cost_bound, Worth::parts(bounds.cost));
    plan.proved = is_filled() && search_.is_proved();
    plan.note = plan.proved ? "no plan that makes as much costs less: prices of panels prove it"
                            : "this is the best found; prices of panels bound what any plan costs";
    return plan;
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

  Result<BatchPlan> inspected() const {
    BatchPlan plan = written();
    if (std::optional<Problem> problem = uncut()) return *std::move(problem);
    if (plan.made.empty())
      return Problem{"order", budget_.is_cancelled() ? "planning was stopped before a plan was found"
                                                     : "no panel of the order can be cut from any roll", ""};
    if (const auto findings = inspect_batch(job_, plan); !findings.empty())
      return Problem{"order", "the plan found does not pass inspection: " + findings.front(),
                     "this is a fault of the program; please report it with the job file"};
    return plan;
  }

  // A roll that must be cut, and on which no length finds room.
  std::optional<Problem> uncut() const {
    for (std::size_t r = 0; r < case_.order.rolls.size(); ++r)
      if (case_.order.rolls[r].must && search_.best().rolls[r].lengths.empty())
        return Problem{"rolls[" + std::to_string(case_.rolls[r]) + "].in_batch",
                       "\"" + job_.rolls[static_cast<std::size_t>(case_.rolls[r])].name +
                           "\" must be cut, and no panel of the order can be cut from it",
                       "let the batch choose, or order what this cloth can serve"};
    return std::nullopt;
  }

  void tell() const {
    if (!budget_.found) return;
    if (const Result<BatchPlan> plan = inspected()) budget_.found(*plan);
  }

  const Job& job_;
  const BatchCase& case_;
  const BatchBudget& budget_;
  BatchSearch search_;
};

// A limit on copies is for plans of one roll; an order says itself what it needs.
Job without_limits(Job job) {
  for (Panel& panel : job.panels) panel.at_most.reset();
  return job;
}

}  // namespace

Result<BatchPlan> plan_batch(const Job& job, const BatchBudget& budget) {
  const Job unlimited = without_limits(job);
  const Result<BatchCase> c = batch_case(unlimited);
  if (!c) return c.problem();
  return Door(unlimited, *c, budget).plan();
}

}  // namespace foldyard
