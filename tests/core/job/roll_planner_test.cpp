#include "job/roll_planner.h"

#include <gtest/gtest.h>

#include "core/support/cushions.h"
#include "core/support/fold_ways.h"
#include "inspect/inspect_plan.h"
#include "job/defaults.h"

namespace foldyard {
namespace {

using test::kHalf;
using test::kOpenEndToEnd;

Job cushions_of_two_rolls() {
  Job job = test::cushions();
  job.rolls = {test::cushion_cloth("grey", Length::mm(3000)), test::cushion_cloth("blue")};
  return job;
}

// One planner for many ways gives each the plan that a fresh one gives it.
TEST(RollPlanner, PlansNoWayDifferentlyAfterAnother) {
  const Job job = cushions_of_two_rolls();
  for (const Aim aim : {Aim::most_worth, Aim::worth_less_time}) {
    RollPlanner shared(job, 1, aim, {});
    for (const FoldWay& way : all_ways(5)) {
      const auto one = shared.plan(way), alone = RollPlanner(job, 1, aim, {}).plan(way);
      ASSERT_EQ(static_cast<bool>(one), static_cast<bool>(alone)) << way_key(way);
      if (one) {
        EXPECT_EQ(*one, *alone) << way_key(way);
      }
    }
  }
}

TEST(RollPlanner, PlansTheRollThatIsAskedFor) {
  const Job job = cushions_of_two_rolls();
  const auto plan = RollPlanner(job, 0, Aim::most_worth, {}).plan(kHalf);
  ASSERT_TRUE(plan);
  EXPECT_EQ(plan->roll, 0);
  EXPECT_EQ(plan->cloth, Length::mm(1500) * Length::mm(3000));
  EXPECT_EQ(inspect_plan(job, *plan), std::vector<std::string>());
}

// 400 squares of 10 cm along a table of 40 m, and steps for a few dozen places: the square's
// own size is among them, or none would fit.
TEST(RollPlanner, FindsRoomForPanelsOnATableOfManyPlaces) {
  Job job = default_job();
  job.rolls = {{"long", default_fabric(), Length::mm(41'000)}};
  job.table.length = Length::mm(40'000);
  job.panels = {{"square", Length::mm(100), Length::mm(100), false, true, Worth::whole(1)}};
  SearchBudget little;
  little.steps = 10'000;
  const auto plan = RollPlanner(job, 0, Aim::most_worth, little).plan(FoldWay{});
  ASSERT_TRUE(plan) << plan.problem().sentence();
  EXPECT_EQ(inspect_plan(job, *plan), std::vector<std::string>());
}

TEST(RollPlanner, StacksNoMoreThanTheCutterTakes) {
  Job job = cushions_of_two_rolls();
  job.cutter = {Length::mm(4), 12};  // two plies of 1 mm a length: two lengths
  const auto plan = RollPlanner(job, 1, Aim::most_worth, {}).plan(kHalf);
  ASSERT_TRUE(plan);
  std::size_t lengths = 0;
  for (const Lay& lay : plan->lays) {
    EXPECT_LE(lay.lengths, 2);
    lengths += static_cast<std::size_t>(lay.lengths);
  }
  EXPECT_EQ(lengths, plan->lengths.size());
}

TEST(RollPlanner, CutsNoLengthThatTheTableCannotHold) {
  Job job = cushions_of_two_rolls();
  job.table.length = Length::mm(900);
  for (const bool end_to_end : {false, true}) {
    const FoldWay way{FoldKind::selvedge_to_selvedge, 2, end_to_end, true};
    const auto plan = RollPlanner(job, 1, Aim::most_worth, {}).plan(way);
    ASSERT_TRUE(plan);
    for (const Pattern& pattern : plan->patterns) {
      EXPECT_LE(pattern.folded_along, Length::mm(900));
      EXPECT_EQ(pattern.length, pattern.folded_along * (end_to_end ? 2 : 1));
    }
  }
}

TEST(RollPlanner, NamesTheReasonOfARefusal) {
  Job job = cushions_of_two_rolls();
  job.rolls[0].fabric.nap = Nap::one_way;
  const auto plan =
      RollPlanner(job, 0, Aim::most_worth, {}).plan(kOpenEndToEnd);
  ASSERT_FALSE(plan);
  EXPECT_EQ(plan.problem().where, "open, end to end");
  EXPECT_NE(plan.problem().what.find("one-way"), std::string::npos);
}

}  // namespace
}  // namespace foldyard
