#include "job/roll_planner.h"

#include <gtest/gtest.h>

#include "core/support/borne_out.h"
#include "core/support/cushions.h"
#include "core/support/fold_ways.h"
#include "core/support/lengths.h"
#include "core/support/planned.h"
#include "core/support/stopped_after.h"
#include "inspect/inspect_plan.h"
#include "job/defaults.h"

namespace foldyard {
namespace {

using test::kHalf;
using test::kOpen;
using test::kOpenEndToEnd;
using test::mm;

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

// Its ends are squared by more than it is long: no tables, and nothing to share.
TEST(RollPlanner, RefusesARollThatItsEndsUseUp) {
  Job job = test::cushions();
  job.losses.squaring = job.rolls[0].length / 2;
  RollPlanner planner(job, 0, Aim::most_worth, {});
  EXPECT_TRUE(planner.may_share());
  EXPECT_TRUE(planner.fold_places(kHalf).empty());
  for (const auto& refused : {planner.plan(kHalf).problem(), planner.search(kHalf).problem(),
                              planner.plan_at({kHalf, {mm(750)}, {1, 0}}).problem()})
    EXPECT_EQ(refused.what, "the roll is no longer than its end losses");
}

TEST(RollPlanner, RefusesWhatIsTooDeepForTheTable) {
  Job job = test::blue_cushions();
  job.table.depth = job.table.reach = mm(700);
  job.table.both_sides = false;
  RollPlanner planner(job, 0, Aim::most_worth, {});
  EXPECT_EQ(planner.plan(kHalf).problem().what.find("folded so it is deeper than the 700 mm"), 0u);
  EXPECT_EQ(planner.search(kHalf).problem().what, "folded so it is too deep for the table");
}

TEST(RollPlanner, RefusesWhatItWasStoppedBefore) {
  const std::atomic<bool> stopped = true;
  SearchBudget budget;
  budget.cancelled = &stopped;
  const Job job = test::cushions();
  RollPlanner planner(job, 0, Aim::most_worth, budget);
  for (const auto& refused : {planner.plan(kHalf).problem(), planner.search(kHalf).problem(),
                              planner.plan_within(kHalf, {}).problem(),
                              planner.plan_at({kHalf, {mm(750)}, {1, 0}}).problem()})
    EXPECT_EQ(refused.what, "planning was stopped before this way");
}

// A fold that has one place has one list of lines, and the lines of others are theirs.
TEST(RollPlanner, ListsWhereFoldsLie) {
  const Job job = test::cushions();
  RollPlanner planner(job, 0, Aim::most_worth, {});
  EXPECT_EQ(planner.fold_places(kHalf), (std::vector<std::vector<Length>>{{mm(750)}}));
  EXPECT_EQ(planner.fold_places(kOpen), (std::vector<std::vector<Length>>{{}}));
  for (const FoldWay& way : all_ways(5))
    for (const std::vector<Length>& lines : planner.fold_places(way)) {
      EXPECT_EQ(std::ssize(lines), way.legs - 1) << way_key(way);
      EXPECT_TRUE(std::is_sorted(lines.begin(), lines.end())) << way_key(way);
    }
}

// So long a table and so small panels that the patterns of all lengths would fill memory:
// those laid around the flaw are fewer, and nothing is proved by them.
TEST(RollPlanner, LaysNoMoreAroundFlawsThanMemoryIsFor) {
  Job job = test::cushions();
  job.table.length = mm(16'000);
  job.rolls[0] = test::cushion_cloth("long", mm(16'200));
  job.panels = {{"square", mm(110), mm(100), false, true, Worth::whole(1)}};
  job.rolls[0].flaws = {{mm(8'000, 8'030), mm(700, 730), "stain"}};
  SearchBudget little;
  little.steps = 400'000;
  const auto plan = RollPlanner(job, 0, Aim::most_worth, little).plan(kOpen);
  ASSERT_TRUE(plan) << plan.problem().sentence();
  EXPECT_EQ(inspect_plan(job, *plan), std::vector<std::string>());
  EXPECT_FALSE(plan->proof.proved);
  EXPECT_LT(plan->worth, plan->proof.bound);
}

TEST(RollPlanner, IsSoundWheneverItIsStopped) {
  Job job = test::cushions();
  job.rolls[0].flaws = {{mm(700, 730), mm(300, 330), "stain"}, {mm(3'100, 3'130), mm(900, 930), "hole"}};
  for (const Aim aim : {Aim::most_worth, Aim::worth_less_time}) {
    const auto search = [&](const std::atomic<bool>* stopped) {
      return RollPlanner(job, 0, aim, SearchBudget{2'000'000, stopped}).plan(test::kThirds);
    };
    test::stop_at_moments(8, search, [&](const Result<Plan>& found, const Result<Plan>& whole) {
      test::expect_sound_or_stopped(job, found, whole);
      EXPECT_TRUE(!found || !found->proof.proved || *found == *whole);
    });
  }
}

}  // namespace
}  // namespace foldyard
