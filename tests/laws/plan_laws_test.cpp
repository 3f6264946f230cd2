// What must hold between the plans of two jobs, whatever the jobs.

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

#include "inspect/inspect_plan.h"
#include "job/plan_roll.h"
#include "laws/any_job.h"

namespace foldyard {
namespace {

using test::any_job;
using test::any_panel;
using test::any_size;

Comparison compare(const Job& job) { return compare_ways(job, 0, Aim::most_worth); }

std::int64_t worth_of(const WayResult& result) {
  return result.plan ? result.plan->worth.parts() : 0;
}

// Under every way, `more` is worth at least as much as `less`.
void expect_no_loss(const Job& less, const Job& more) {
  const Comparison before = compare(less), after = compare(more);
  for (std::size_t i = 0; i < before.ways.size(); ++i) {
    RC_LOG() << way_key(before.ways[i].way) << ": " << after.ways[i].refused << "\n";
    RC_ASSERT(worth_of(before.ways[i]) <= worth_of(after.ways[i]));
  }
}

RC_GTEST_PROP(MoreCloth, YieldsNoLessFromALongerRoll, ()) {
  const Job job = *any_job();
  Job longer = job;
  longer.rolls[0].length += *any_size(1, 100);
  expect_no_loss(job, longer);
}

RC_GTEST_PROP(MoreCloth, YieldsNoLessFromAWiderRoll, ()) {
  const Job job = *any_job();
  Job wider = job;
  wider.rolls[0].fabric.width += *any_size(1, 40);
  expect_no_loss(job, wider);
}

RC_GTEST_PROP(MoreFreedom, LosesNothingWherePanelsMayTurn, ()) {
  const Job job = *any_job();
  Job turning = job;
  for (Panel& p : turning.panels) p.may_turn = true;
  expect_no_loss(job, turning);
}

RC_GTEST_PROP(MoreFreedom, LosesNothingWherePanelsMayBeCutOnTheFold, ()) {
  const Job job = *any_job();
  Job creased = job;
  for (Panel& p : creased.panels) p.on_fold = true;
  expect_no_loss(job, creased);
}

RC_GTEST_PROP(MoreFreedom, LosesNothingWithAPanelMore, ()) {
  const Job job = *any_job();
  Job more = job;
  more.panels.push_back(*any_panel());
  expect_no_loss(job, more);
}

RC_GTEST_PROP(LessLoss, LosesNothingWithASmallerAllowance, ()) {
  const Job job = *any_job();
  Job less = job;
  less.losses.allowance = std::min(job.losses.allowance, *any_size(0, 4));
  expect_no_loss(job, less);
}

RC_GTEST_PROP(LessLoss, LosesNothingOnALongerTable, ()) {
  const Job job = *any_job();
  Job longer = job;
  longer.table.length += *any_size(1, 50);
  expect_no_loss(job, longer);
}

RC_GTEST_PROP(OneWayCloth, IsNeverFoldedEndToEnd, ()) {
  Job job = *any_job();
  job.rolls[0].fabric.nap = Nap::one_way;
  for (const WayResult& result : compare(job).ways)
    if (result.way.end_to_end) {
      RC_ASSERT(!result.plan);
      RC_ASSERT(result.refused.find("one-way") != std::string::npos);
    }
}

RC_GTEST_PROP(Repetition, GivesTheSamePlan, ()) {
  const Job job = *any_job();
  for (const Aim aim : {Aim::most_worth, Aim::worth_less_time}) {
    const Comparison one = compare_ways(job, 0, aim), two = compare_ways(job, 0, aim);
    RC_ASSERT(one.ranking == two.ranking);
    for (std::size_t i = 0; i < one.ways.size(); ++i) {
      RC_ASSERT(one.ways[i].plan == two.ways[i].plan);
      RC_ASSERT(one.ways[i].refused == two.ways[i].refused);
    }
  }
}

RC_GTEST_PROP(EveryPlan, PassesInspection, ()) {
  const Job job = *any_job();
  for (const Aim aim : {Aim::most_worth, Aim::worth_less_time})
    for (const WayResult& result : compare_ways(job, 0, aim).ways) {
      RC_LOG() << way_key(result.way) << "\n";
      RC_ASSERT(result.refused.find("inspection") == std::string::npos);
      if (result.plan) RC_ASSERT(inspect_plan(job, *result.plan) == std::vector<std::string>());
    }
}

// A plan that holds more than was searched for, by the way, is not proved best.
RC_GTEST_PROP(EveryPlan, ReachesItsBoundWhereItIsProved, ()) {
  for (const WayResult& result : compare(*any_job()).ways)
    if (result.plan) {
      const Proof& proof = result.plan->proof;
      RC_ASSERT(result.plan->worth <= proof.bound);
      RC_ASSERT(proof.proved == (result.plan->worth == proof.bound));
    }
}

// Nothing comes off by the way where every ply covers the cloth.
RC_GTEST_PROP(EveryPlan, IsProvedOpenAndInHalf, ()) {
  for (const WayResult& result : compare(*any_job()).ways)
    if (result.way.legs <= 2 && result.way.plain && result.plan)
      RC_ASSERT(result.plan->proof.proved);
}

}  // namespace
}  // namespace foldyard
