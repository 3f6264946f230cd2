#include "job/limited_planner.h"

namespace foldyard {

namespace {

// Of the price search: open cloth starts from nothing.
constexpr int kFirstRounds = 40;
constexpr int kPlannerRounds = 16;

}  // namespace

LimitedPlanner::LimitedPlanner(const Job& job, int roll, Aim aim, const SearchBudget& budget,
                               RollPlanner& free)
    : job_(job), roll_(roll), aim_(aim), budget_(budget), free_(free) {}

bool LimitedPlanner::keeps_limits(const Plan& plan) const { return is_within(plan.yield, limits_of(job_)); }

const LimitedPlanner::Open& LimitedPlanner::open() {
  std::call_once(once_, [&] {
    const Result<RollPlanner::Searched> free_plan = free_.search(FoldWay{});
    if (!free_plan || keeps_limits(free_plan->plan)) return;
    LimitedWay search(job_, roll_, aim_, FoldWay{}, budget_, {});
    open_.plan = search.run(kFirstRounds);
    open_.prices = search.prices();
  });
  return open_;
}

Result<Plan> LimitedPlanner::plan(const FoldWay& way) {
  Result<Plan> free_plan = free_.plan(way);
  if (!free_plan || keeps_limits(*free_plan)) return free_plan;
  const Open& first = open();
  if (way == FoldWay{} && first.plan) return *first.plan;
  return LimitedWay(job_, roll_, aim_, way, budget_, first.prices).run(first.prices.empty() ? kFirstRounds : kPlannerRounds);
}

}  // namespace foldyard
