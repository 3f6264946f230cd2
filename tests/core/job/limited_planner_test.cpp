#include "job/limited_planner.h"

#include <gtest/gtest.h>

#include "core/support/cushions.h"
#include "core/support/fold_ways.h"
#include "inspect/inspect_plan.h"
#include "job/defaults.h"

namespace foldyard {
namespace {

using test::kHalf;
using test::kOffCentre;
using test::kOpen;

Result<Plan> plan_alone(const Job& job, Aim aim, const FoldWay& way) {
  RollPlanner free(job, 0, aim, {});
  return LimitedPlanner(job, 0, aim, {}, free).plan(way);
}

Job limited_cushions(std::optional<std::int64_t> seats, std::optional<std::int64_t> arms) {
  Job job = test::cushions();
  job.panels[0].at_most = seats;
  job.panels[1].at_most = arms;
  return job;
}

TEST(LimitedPlanner, GivesThePlanWithoutLimitsWhereItKeepsWithinThem) {
  for (const Aim aim : {Aim::most_worth, Aim::worth_less_time}) {
    const Job free = limited_cushions({}, {}), loose = limited_cushions(1000, 1000);
    const auto plan = plan_alone(free, aim, kHalf);
    const auto same = plan_alone(loose, aim, kHalf);
    ASSERT_TRUE(plan);
    ASSERT_TRUE(same);
    EXPECT_EQ(*plan, *same);
  }
}

TEST(LimitedPlanner, KeepsLimitsUnderEveryWayAndAim) {
  const Job job = limited_cushions(5, 9);
  SearchBudget little;
  little.steps = 1'000'000;
  for (const Aim aim : {Aim::most_worth, Aim::worth_less_time}) {
    RollPlanner free(job, 0, aim, little);
    LimitedPlanner planner(job, 0, aim, little, free);
    for (const FoldWay& way : all_ways(4)) {
      const auto plan = planner.plan(way);
      if (!plan) continue;
      EXPECT_LE(plan->yield[0], 5) << way_key(way);
      EXPECT_LE(plan->yield[1], 9) << way_key(way);
      EXPECT_EQ(inspect_plan(job, *plan), std::vector<std::string>()) << way_key(way);
    }
  }
}

// One planner for many ways gives each the plan that a fresh one gives it.
TEST(LimitedPlanner, PlansNoWayDifferentlyAfterAnother) {
  const Job job = limited_cushions(5, {});
  RollPlanner free(job, 0, Aim::most_worth, {});
  LimitedPlanner shared(job, 0, Aim::most_worth, {}, free);
  for (const FoldWay& way : {kHalf, kOpen, kOffCentre}) {
    const auto one = shared.plan(way), alone = plan_alone(job, Aim::most_worth, way);
    ASSERT_TRUE(one);
    ASSERT_TRUE(alone);
    EXPECT_EQ(*one, *alone) << way_key(way);
  }
}

// A panel of which none is wanted is as one that is not there.
TEST(LimitedPlanner, LeavesOutWhatIsNotWanted) {
  const auto none = plan_alone(limited_cushions({}, 0), Aim::most_worth, FoldWay{});
  Job without = limited_cushions({}, {});
  without.panels.pop_back();
  const auto alone = plan_alone(without, Aim::most_worth, FoldWay{});
  ASSERT_TRUE(none);
  ASSERT_TRUE(alone);
  EXPECT_EQ(none->worth, alone->worth);
  EXPECT_TRUE(none->proof.proved);
}

// Net worth of a limited plan: no other aim's plan within the limits has more.
TEST(LimitedPlanner, WeighsTimeWithinLimits) {
  const Job job = limited_cushions(6, 11);
  for (const FoldWay& way : {FoldWay{}, kHalf}) {
    const auto by_net = plan_alone(job, Aim::worth_less_time, way);
    const auto by_worth = plan_alone(job, Aim::most_worth, way);
    ASSERT_TRUE(by_net);
    ASSERT_TRUE(by_worth);
    EXPECT_GE(by_net->net + Worth::parts(1), by_worth->net);
    EXPECT_LE(by_worth->net, by_net->proof.bound + Worth::parts(1));
  }
}

}  // namespace
}  // namespace foldyard
