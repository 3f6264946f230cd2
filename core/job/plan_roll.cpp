#include "job/plan_roll.h"

#include <algorithm>
#include <atomic>
#include <future>
#include <memory>
#include <thread>

#include "inspect/inspect_plan.h"
#include "job/limited_planner.h"
#include "job/matched_planner.h"
#include "job/plan_by.h"
#include "job/quick_plan.h"

namespace foldyard {

// LimitedPlanner keeps every limit; where panels match a pattern or folds are put
// by hand, plans are only held to them.
Result<Plan> inspected(const Job& job, Result<Plan> plan) {
  if (!plan) return plan;
  if (!is_within(plan->yield, limits_of(job)))
    return Problem{way_name(plan->way),
                   say("the best plan passes a limit on copies, and plans within limits are not searched where panels "
                       "must match or folds are put by hand"),
                   say("raise the limits")};
  const std::vector<std::string> findings = inspect_plan(job, *plan);
  if (findings.empty()) return plan;
  return Problem{way_name(plan->way), say("the plan found does not pass inspection: %1", findings.front()),
                 say("this is a fault of the program; please report it with the job file")};
}

namespace {

// Best first: by the aim, then fewer cuts, then less time, then the way named first.
bool ranks_before(const Plan& a, const Plan& b) {
  const auto value = [](const Plan& p) { return p.aim == Aim::most_worth ? p.worth : p.net; };
  if (value(a) != value(b)) return value(a) > value(b);
  if (a.cuts + a.cross_cuts != b.cuts + b.cross_cuts)
    return a.cuts + a.cross_cuts < b.cuts + b.cross_cuts;
  return a.time < b.time;
}

void rank(Comparison& comparison) {
  for (int i = 0; i < static_cast<int>(comparison.ways.size()); ++i)
    if (comparison.ways[i].plan) comparison.ranking.push_back(i);
  std::stable_sort(comparison.ranking.begin(), comparison.ranking.end(), [&](int a, int b) {
    return ranks_before(*comparison.ways[a].plan, *comparison.ways[b].plan);
  });
}

void find_frontier(Comparison& comparison) {
  std::vector<int> order = comparison.ranking;
  std::stable_sort(order.begin(), order.end(), [&](int a, int b) {
    const Plan &p = *comparison.ways[a].plan, &q = *comparison.ways[b].plan;
    return p.worth != q.worth ? p.worth > q.worth : p.time < q.time;
  });
  for (int i : order)
    if (comparison.frontier.empty() ||
        comparison.ways[i].plan->time < comparison.ways[comparison.frontier.back()].plan->time)
      comparison.frontier.push_back(i);
}

}  // namespace

namespace {

// What stands in a stopped search for the plan that it did not finish.
constexpr const char* kStopped = to_say("planning was stopped before the search was done; this is the best found "
                                        "by then; the bound counts every bit of usable cloth");

class Door {
 public:
  Door(const Job& job, int roll, Aim aim, const SearchBudget& budget, RollPlanner& planner)
      : job_(job), budget_(budget), planner_(planner), limited_(job, roll, aim, budget, planner), quick_(job, roll, aim) {
    if (needs_matching(job, roll)) matched_ = std::make_unique<MatchedPlanner>(job, roll, aim, budget);
  }

  Result<Plan> plan(const FoldWay& way) {
    Result<Plan> found = inspected(job_, matched_ ? matched_->plan(way) : limited_.plan(way));
    if (!budget_.is_cancelled() || budget_.is_unwanted() || (found && found->proof.proved)) return found;
    return better_of(std::move(found), way);
  }

 private:
  Result<Plan> better_of(Result<Plan> found, const FoldWay& way) {
    Result<Plan> few = quick_.plan(way);
    if (!few) return found;
    Plan plan = std::move(few).value();
    plan.proof = {planner_.area_bound(), false, say(kStopped)};
    const Result<Plan> quick = inspected(job_, std::move(plan));
    return quick && (!found || ranks_before(*quick, *found)) ? quick : found;
  }

  const Job& job_;
  const SearchBudget& budget_;
  RollPlanner& planner_;
  LimitedPlanner limited_;
  std::unique_ptr<MatchedPlanner> matched_;  // where panels must match a pattern
  QuickPlanner quick_;
};

void count_one(SearchProgress* progress) {
  if (progress) ++progress->done;
}

}  // namespace

Result<Plan> plan_roll(const Job& job, int roll, const FoldWay& way, Aim aim,
                       const SearchBudget& budget) {
  RollPlanner planner(job, roll, aim, budget);
  return plan_by(job, roll, way, aim, budget, planner);
}

Result<Plan> plan_by(const Job& job, int roll, const FoldWay& way, Aim aim, const SearchBudget& budget,
                     RollPlanner& planner) {
  if (budget.progress) budget.progress->begin(RollPlanner::kStages + 1);
  Result<Plan> plan = Door(job, roll, aim, budget, planner).plan(way);
  count_one(budget.progress);
  return plan;
}

namespace {

WayResult result_of(Door& door, const FoldWay& way) {
  WayResult result;
  result.way = way;
  if (Result<Plan> plan = door.plan(way))
    result.plan = std::move(plan).value();
  else
    result.refused = plan.problem().what;
  return result;
}

// Where the tables of all ways take too much memory, each way makes its own and lets them go.
std::vector<WayResult> results_alone(const Job& job, int roll, Aim aim, const SearchBudget& budget,
                                     const std::vector<FoldWay>& ways, SearchProgress* progress) {
  std::vector<WayResult> results;
  for (const FoldWay& way : ways) {
    RollPlanner planner(job, roll, aim, budget);
    Door door(job, roll, aim, budget, planner);
    results.push_back(result_of(door, way));
    count_one(progress);
  }
  return results;
}

// Plans the ways on as many threads as there are processors, at most four: the
// tables they share are large. Each way's result has its own place, so it does
// not matter who plans it.
std::vector<WayResult> results_of(Door& door, const std::vector<FoldWay>& ways, SearchProgress* progress) {
  std::vector<WayResult> results(ways.size());
  std::atomic<std::size_t> next = 0;
  const auto work = [&] {
    for (std::size_t i; (i = next++) < ways.size(); count_one(progress)) results[i] = result_of(door, ways[i]);
  };
  std::vector<std::future<void>> others;
  for (unsigned n = std::min(4u, std::thread::hardware_concurrency()); n > 1; --n)
    others.push_back(std::async(std::launch::async, work));
  work();
  for (std::future<void>& other : others) other.get();  // passes on what it threw
  return results;
}

}  // namespace

Comparison compare_ways(const Job& job, int roll, Aim aim, const SearchBudget& budget) {
  RollPlanner planner(job, roll, aim, budget.without_progress());
  return compare_by(job, roll, aim, budget, planner);
}

Comparison compare_by(const Job& job, int roll, Aim aim, const SearchBudget& budget, RollPlanner& planner) {
  Comparison comparison;
  comparison.roll = roll;
  comparison.aim = aim;
  const std::vector<FoldWay> ways = all_ways(job.longest_fan);
  if (budget.progress) budget.progress->begin(static_cast<int>(ways.size()));
  // Ways are counted themselves, not their stages.
  const SearchBudget of_ways = budget.without_progress();
  if (planner.may_share()) {
    Door door(job, roll, aim, of_ways, planner);
    comparison.ways = results_of(door, ways, budget.progress);
  } else {
    comparison.ways = results_alone(job, roll, aim, of_ways, ways, budget.progress);
  }
  rank(comparison);
  find_frontier(comparison);
  return comparison;
}

}  // namespace foldyard
