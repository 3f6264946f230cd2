#include "job/plan_roll.h"

#include <algorithm>
#include <atomic>
#include <future>
#include <thread>

#include "inspect/inspect_plan.h"
#include "job/roll_planner.h"

namespace foldyard {

namespace {

Result<Plan> inspected(const Job& job, Result<Plan> plan) {
  if (!plan) return plan;
  const std::vector<std::string> findings = inspect_plan(job, *plan);
  if (findings.empty()) return plan;
  return Problem{way_name(plan->way), "the plan found does not pass inspection: " + findings.front(),
                 "this is a fault of the program; please report it with the job file"};
}

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

Result<Plan> plan_roll(const Job& job, int roll, const FoldWay& way, Aim aim,
                       const SearchBudget& budget) {
  return inspected(job, RollPlanner(job, roll, aim, budget).plan(way));
}

namespace {

WayResult result_of(const Job& job, RollPlanner& planner, const FoldWay& way) {
  WayResult result;
  result.way = way;
  if (Result<Plan> plan = inspected(job, planner.plan(way)))
    result.plan = std::move(plan).value();
  else
    result.refused = plan.problem().what;
  return result;
}

// Plans the ways on as many threads as there are processors, at most four: the
// tables they share are large. Each way's result has its own place, so it does
// not matter who plans it.
std::vector<WayResult> results_of(const Job& job, RollPlanner& planner, const std::vector<FoldWay>& ways) {
  std::vector<WayResult> results(ways.size());
  std::atomic<std::size_t> next = 0;
  const auto work = [&] {
    for (std::size_t i; (i = next++) < ways.size();) results[i] = result_of(job, planner, ways[i]);
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
  Comparison comparison;
  comparison.roll = roll;
  comparison.aim = aim;
  RollPlanner planner(job, roll, aim, budget);
  comparison.ways = results_of(job, planner, all_ways(job.longest_fan));
  rank(comparison);
  find_frontier(comparison);
  return comparison;
}

}  // namespace foldyard
