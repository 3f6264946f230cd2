#include "job/flawed_roll.h"

#include <gtest/gtest.h>

#include "core/support/borne_out.h"
#include "core/support/fold_ways.h"
#include "core/support/lengths.h"
#include "core/support/planned.h"
#include "core/support/slow_holes.h"
#include "core/support/slow_roll.h"
#include "core/support/stopped_after.h"
#include "inspect/inspect_plan.h"
#include "job/defaults.h"
#include "job/lost_panels.h"

namespace foldyard {
namespace {

using test::aimed_worth;
using test::Dice;
using test::kHalf;
using test::kOpen;
using test::mm;
using test::planned;

// 1000 of usable width, squared by 100 at each end, 40 of allowance: carriers
// of 500 × 900 lie two abreast, pouches of 100 × 100 ten.
Job bags(int length, std::vector<Flaw> flaws) {
  Job job = default_job();
  job.unit = Unit::mm;
  job.rolls = {{"cloth", {Length::mm(1020), Length::mm(10), Length::mm(1), Nap::none, "#808080"},
                Length::mm(length)}};
  job.rolls[0].flaws = std::move(flaws);
  job.panels = {{"carrier", Length::mm(500), Length::mm(900), false, true, Worth::whole(9)}};
  job.losses = {Length::mm(100), Length::mm(40), Length::mm(5), Length::mm(300), Length::mm(300)};
  return job;
}

// Room for three lengths of 940: 100 … 2920.
TEST(FlawedRoll, LosesThePanelUnderAFlawWhereNoClothIsToSpare) {
  const Plan plan = planned(bags(3020, {{mm(500, 510), mm(100, 110), "stain"}}));
  EXPECT_EQ(plan.yield[0], 5);
  ASSERT_EQ(plan.lost.size(), 1u);
  EXPECT_EQ(plan.lost[0].length, 0);
  EXPECT_TRUE(plan.cut_out.empty());
}

// 60 to spare, and a seam that ends 30 behind the squared end: the first length
// begins 10 behind that, so that its carriers begin where the seam ends.
TEST(FlawedRoll, CutsOutAFlawWhereClothIsToSpare) {
  const Plan plan = planned(bags(3080, {{mm(100, 150), mm(0, 1020), "seam"}}));
  EXPECT_EQ(plan.yield[0], 6);
  EXPECT_TRUE(plan.lost.empty());
  EXPECT_EQ(plan.cut_out, (std::vector<Span>{mm(100, 130)}));
  EXPECT_TRUE(plan.proof.proved);
}

// A flaw of 40 between two lengths lies in the allowance of both.
TEST(FlawedRoll, LosesNothingToAFlawInTheAllowances) {
  const Plan plan = planned(bags(3020, {{mm(1020, 1060), mm(0, 1020), "seam"}}));
  EXPECT_EQ(plan.yield[0], 6);
  EXPECT_TRUE(plan.lost.empty());
  EXPECT_TRUE(plan.cut_out.empty());
}

// A seam 250 behind the squared end. Before it, behind half an allowance, two
// rows of ten pouches; behind it carriers at once, so that this length ends at
// 355 + 900 + 20 = 1275. Carriers again to 2215, and eight rows of ten pouches
// on the 845 that are left.
TEST(FlawedRoll, CutsSmallerGoodsAroundAFlaw) {
  Job job = bags(3200, {{mm(350, 355), mm(0, 1020), "seam"}});
  job.panels.push_back({"pouch", Length::mm(100), Length::mm(100), false, true, Worth::parts(1000)});
  const Plan plan = planned(job);
  EXPECT_EQ(plan.worth, Worth::parts(4 * 90'000 + (20 + 80) * 1000));
  EXPECT_GE(plan.proof.bound, plan.worth);
}

// Folded double at 510, a length gives one of 250 on the fold (u to 125) and
// one from either ply (u 125 … 375). A flaw at x 200 … 210 is at u 300 … 310 of
// the left ply: there is no room beside it.
TEST(FlawedRoll, LosesOnlyThePlyThatHoldsTheFlaw) {
  Job job = bags(1140, {{mm(500, 510), mm(200, 210), "stain"}});
  job.panels[0] = {"narrow", Length::mm(250), Length::mm(900), false, true, Worth::whole(9)};
  const Plan plan = planned(job, kHalf);
  EXPECT_EQ(plan.yield[0], 2);
  EXPECT_EQ(plan.lost.size(), 1u);
}

// A flaw at u 200 … 210 leaves room for 250 behind it, in both plies.
TEST(FlawedRoll, CutsAroundAFlawInFoldedCloth) {
  Job job = bags(1140, {{mm(500, 510), mm(300, 310), "stain"}});
  job.panels[0] = {"narrow", Length::mm(250), Length::mm(900), false, true, Worth::whole(9)};
  const Plan plan = planned(job, kHalf);
  EXPECT_EQ(plan.yield[0], 3);
  EXPECT_TRUE(plan.lost.empty());
  EXPECT_TRUE(plan.proof.proved);
}

TEST(FlawedRoll, LosesAPanelOnTheFoldToAFlawOfEitherHalf) {
  Job job = bags(2080, {{mm(500, 510), mm(200, 210), "stain"}});
  job.panels[0].across = Length::mm(1000);
  EXPECT_EQ(planned(job, kHalf).yield[0], 1);
}

TEST(FlawedRoll, IsRefusedWhereNoPanelIsLeft) {
  const Job job = bags(1140, {{mm(0, 1140), mm(0, 1020), "mildew"}});
  for (const FoldWay& way : all_ways(3)) {
    const Result<Plan> plan = plan_roll(job, 0, way, Aim::most_worth);
    ASSERT_FALSE(plan);
    EXPECT_FALSE(plan.problem().what.empty());
  }
  EXPECT_EQ(plan_roll(job, 0, kOpen, Aim::most_worth).problem().what,
            "every panel that fits would touch a flaw");
}

TEST(FlawedRoll, PlansSharedLaysForLengthsThatLieApart) {
  Job job = bags(5000, {{mm(1900, 2000), mm(0, 1020), "seam"}});
  const Plan plan = planned(job, kOpen, Aim::worth_less_time);
  EXPECT_FALSE(plan.cut_out.empty() && plan.lost.empty());
  EXPECT_LT(plan.lays.size(), plan.lengths.size());
}

// Random flaws on small random rolls.
Job throw_flawed(const test::SmallRoll& roll, Dice& dice) {
  Job job = test::job_of(roll, 1);
  const int width = roll.cloth.cloth.width;
  for (int n = dice.from_to(1, 3); n > 0; --n) {
    const int x = dice.from_to(0, width - 1), y = dice.from_to(0, roll.length - 1);
    job.rolls[0].flaws.push_back(
        {{Length::units(y), Length::units(y + dice.from_to(1, 3))},
         {Length::units(x), Length::units(x + dice.from_to(1, dice.coin() ? 3 : width))},
         ""});
  }
  std::stable_sort(job.rolls[0].flaws.begin(), job.rolls[0].flaws.end(),
                   [](const Flaw& a, const Flaw& b) { return a.along.from < b.along.from; });
  return job;
}

Job without_flaws(Job job) {
  job.rolls[0].flaws.clear();
  return job;
}

// For every way and both aims (plan_roll inspects): flaws never gain, and the
// bound holds. Only a panel that a ply gives by the way, which no search counts,
// may put a plan above; then it is not called proved.
TEST(FlawedRoll, IsSoundAndNeverBetterThanTheRollWithoutFlaws) {
  const unsigned seed = test::first_seed();
  for (unsigned i = 0; i < 12; ++i) {
    Dice dice(seed + 1000 + i);
    const test::SmallRoll roll = test::throw_small_roll(seed + i, dice.coin());
    if (roll.length <= 2 * roll.squaring + roll.allowance) continue;
    const Job job = throw_flawed(roll, dice), clean = without_flaws(job);
    for (const FoldWay& way : all_ways(3))
      for (const Aim aim : {Aim::most_worth, Aim::worth_less_time}) {
        const Result<Plan> flawed = plan_roll(job, 0, way, aim), whole = plan_roll(clean, 0, way, aim);
        if (!flawed) continue;
        ASSERT_TRUE(whole) << "seed " << seed + i;
        if (whole->proof.proved) {
          ASSERT_TRUE(aimed_worth(*flawed) <= aimed_worth(*whole) || !flawed->proof.proved)
              << way_key(way) << " seed " << seed + i;
        }
      }
  }
}

// The most worth of an open roll, by every length at every place, each cut in
// every way around its flaws.
std::int64_t slow_open(const Job& job) {
  const Roll& roll = job.rolls[0];
  const auto units = [](Length l) { return static_cast<int>(l.units()); };
  const int first = units(job.losses.squaring), last = units(roll.length) - first;
  const int allowance = units(job.losses.allowance), tallest = units(job.table.length);
  const int left = units(roll.fabric.selvedge), right = units(roll.fabric.width) - left;
  std::vector<Rect> holes;
  for (const Flaw& flaw : roll.flaws) holes.push_back({flaw.across, flaw.along});
  test::SlowHoles cloth(test::slow_shapes(job.panels, false), holes);
  std::vector<std::int64_t> most(static_cast<std::size_t>(std::max(last, 0)) + 1);
  for (int end = first + 1; end <= last; ++end) {
    std::int64_t& here = most[static_cast<std::size_t>(end)];
    here = most[static_cast<std::size_t>(end - 1)];
    for (int length = 1; length <= tallest && end - length - allowance >= first; ++length) {
      const int from = end - length - allowance, start = from + allowance / 2;
      here = std::max(here, most[static_cast<std::size_t>(from)] +
                                cloth.best(left, right, start, start + length));
    }
  }
  return most.back();
}

TEST(FlawedRoll, ReachesWhatTryingEverythingGivesWhereItSaysSo) {
  const unsigned seed = test::first_seed();
  int reached = 0, all = 0;
  for (unsigned i = 0; i < 24; ++i) {
    Dice dice(seed + 2000 + i);
    test::SmallRoll roll = test::throw_small_roll(seed + 500 + i, true);
    roll.length = std::min(roll.length, 22);
    roll.cloth.tallest = std::min(roll.cloth.tallest, 7);
    if (roll.length <= 2 * roll.squaring + roll.allowance) continue;
    const Job job = throw_flawed(roll, dice);
    const Result<Plan> plan = plan_roll(job, 0, kOpen, Aim::most_worth);
    if (!plan) continue;
    const std::int64_t slow = slow_open(job);
    ++all;
    reached += plan->worth.parts() == slow;
    ASSERT_LE(plan->worth.parts(), slow) << "seed " << seed + i;
    ASSERT_GE(plan->proof.bound.parts(), slow) << "seed " << seed + i;
    if (plan->proof.proved) {
      ASSERT_EQ(plan->worth.parts(), slow) << "seed " << seed + i;
    }
  }
  EXPECT_GT(reached * 2, all);
}

// Under every way few steps find what can be cut, lose what the flaws touch, and bound what
// all steps find. Net worth is rounded to a part.
TEST(FlawedRoll, ClaimsNoMoreOfFewStepsThanAllBearOut) {
  const std::vector<FoldWay> ways = all_ways(4);
  int both = 0;
  for (unsigned seed = 0; seed < 60 && !testing::Test::HasFailure(); ++seed) {
    Dice dice(seed);
    const Job job = throw_flawed(test::throw_small_roll(seed, true), dice);
    const Aim aim = dice.coin() ? Aim::most_worth : Aim::worth_less_time;
    const FoldWay& way = ways[static_cast<std::size_t>(dice.from_to(0, static_cast<int>(ways.size()) - 1))];
    SCOPED_TRACE("seed " + std::to_string(seed) + ", " + way_key(way));
    SearchBudget much, little;
    much.steps = 1'000'000;
    little.steps = std::int64_t{1} << dice.from_to(0, 14);
    const auto all = plan_roll(job, 0, way, aim, much), few = plan_roll(job, 0, way, aim, little);
    if (!all || !few) continue;
    ++both;
    for (const Plan* plan : {&*all, &*few}) {
      EXPECT_EQ(inspect_plan(job, *plan), std::vector<std::string>());
      EXPECT_LE(aimed_worth(*plan), plan->proof.bound.parts());
    }
    test::expect_borne_out(*few, *all);
  }
  EXPECT_GT(both, 15);
}

}  // namespace
}  // namespace foldyard
