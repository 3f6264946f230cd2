// What RollPlanner does within a hand (core/job/roll_within.cpp).

#include <gtest/gtest.h>

#include "core/support/cushions.h"
#include "core/support/fold_ways.h"
#include "core/support/lengths.h"
#include "core/support/planned.h"
#include "core/support/slow_roll.h"
#include "core/support/way_title.h"
#include "inspect/inspect_hand.h"
#include "inspect/inspect_plan.h"
#include "job/defaults.h"
#include "job/hand_edit.h"
#include "job/roll_planner.h"

namespace foldyard {
namespace {

using test::aimed_worth;
using test::blue_cushions;
using test::kFlaps;
using test::kHalf;
using test::kOffCentre;
using test::kOpen;
using test::kOpenEndToEnd;
using test::mm;

Hand length_of(Length length) {
  Hand hand;
  hand.length = length;
  return hand;
}

TEST(RollWithin, IsThePlanOfTheWayWhereNothingIsSet) {
  const Job job = blue_cushions();
  RollPlanner planner(job, 0, Aim::most_worth, {});
  EXPECT_EQ(planner.plan_within(kOffCentre, {})->worth, planner.plan(kOffCentre)->worth);
}

// Seats are 900 long; of 960 the last 60 are cut off with one cut more.
TEST(RollWithin, CutsTheRestOffALengthThatIsLongerThanItsPanels) {
  const Job job = blue_cushions();
  RollPlanner planner(job, 0, Aim::most_worth, {});
  const auto exact = planner.plan_within({}, length_of(mm(900))), longer = planner.plan_within({}, length_of(mm(930)));
  ASSERT_TRUE(exact);
  ASSERT_TRUE(longer) << longer.problem().sentence();
  for (const Pattern& pattern : longer->patterns) EXPECT_EQ(pattern.length, mm(930));
  EXPECT_EQ(longer->patterns[0].worth, exact->patterns[0].worth);
  EXPECT_EQ(std::ssize(longer->patterns[0].cuts), std::ssize(exact->patterns[0].cuts) + 1);
  EXPECT_EQ(inspect_plan(job, *longer), std::vector<std::string>());
  EXPECT_TRUE(longer->proof.proved);
}

TEST(RollWithin, RefusesALengthThatCannotBe) {
  const Job job = blue_cushions();
  RollPlanner planner(job, 0, Aim::most_worth, {});
  EXPECT_EQ(planner.plan_within({}, length_of(mm(200))).problem().sentence(), "open: no panel fits lengths of 200 mm.");
  const auto longer = planner.plan_within({}, length_of(mm(6000)));
  ASSERT_FALSE(longer);
  EXPECT_NE(longer.problem().what.find("longer than the"), std::string::npos);
  EXPECT_FALSE(planner.plan_within(kOpenEndToEnd, length_of(mm(1000) + Length::units(1))));
}

TEST(RollWithin, RefusesALineThatCannotLieThere) {
  const Job job = blue_cushions();
  RollPlanner planner(job, 0, Aim::most_worth, {});
  const auto plan = planner.plan_within(kFlaps, with_line({}, kFlaps, 0, mm(900)));
  ASSERT_FALSE(plan);
  EXPECT_EQ(plan.problem().what, "the folds cannot lie so with the pinned lines where they are");
  EXPECT_EQ(planner.plan_within(kHalf, with_line({}, kHalf, 0, mm(700))).problem().what,
            "it has one place, with the folds at 750 mm");
}

class EveryHand : public testing::TestWithParam<FoldWay> {
 protected:
  template <class Expect>
  void for_each(int rounds, Expect expect) {
    const unsigned first = test::first_seed();
    for (unsigned seed = first; seed < first + static_cast<unsigned>(rounds); ++seed) {
      const test::SmallRoll r = test::throw_small_roll(seed, true);
      SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed) + ": " + test::text(r.cloth));
      for (const Aim aim : {Aim::most_worth, Aim::worth_less_time}) {
        const Job job = test::job_of(r, 60);
        RollPlanner planner(job, 0, aim, {});
        expect(job, planner, test::Dice(seed), r);
        if (HasFailure()) return;
      }
    }
  }
};

// However it is pinned, the plan is sound, keeps its pins and gains no more than
// the best of its way; and pinned where the best lies, it gains as much.
TEST_P(EveryHand, KeepsToWhatIsSet) {
  for_each(30, [](const Job& job, RollPlanner& planner, test::Dice dice, const test::SmallRoll&) {
    const auto best = planner.plan(GetParam());
    if (!best) return;
    Hand hand;
    const std::vector<Length>& lines = best->patterns[0].fold.lines;
    if (!lines.empty()) {
      const int line = dice.from_to(0, static_cast<int>(lines.size()) - 1);
      hand = with_line(hand, GetParam(), line, lines[static_cast<std::size_t>(line)]);
    }
    hand.length = best->patterns[0].length;
    const auto plan = planner.plan_within(GetParam(), hand);
    ASSERT_TRUE(plan) << plan.problem().sentence();
    EXPECT_EQ(inspect_plan(job, *plan), std::vector<std::string>());
    EXPECT_EQ(inspect_hand(job, *plan, hand), std::vector<std::string>());
    if (best->aim == Aim::most_worth) {
      EXPECT_LE(aimed_worth(*plan), aimed_worth(*best));
    }
    if (best->patterns.size() == 1) {
      EXPECT_GE(aimed_worth(*plan) + 1, aimed_worth(*best));
    }
  });
}

// The most that one length of the roll gives by slow folding, cut at any shorter
// place; as often as the roll holds it. −1: it does not fit.
std::int64_t slow_worth_of_length(const test::SmallRoll& r, const FoldWay& way, int folded) {
  const int room = r.length - 2 * r.squaring, size = folded * (way.end_to_end ? 2 : 1) + r.allowance;
  if (size > room) return -1;
  test::SlowRectangle rectangles(test::slow_shapes(r.cloth.panels, false), r.cloth.aim, r.cloth.trim);
  std::int64_t gain = 0;
  for (int less = 1; less <= folded; ++less)
    gain = std::max(gain, test::slow_best(r.cloth, way, rectangles, less, test::least_flap(r.cloth)).gain);
  return gain * 1000 * (room / size);
}

TEST(RollWithin, GivesOfOneLengthWhatSlowFoldingGivesOpenAndInHalf) {
  const unsigned first = test::first_seed();
  int compared = 0;
  for (const FoldWay& way : {kOpen, kHalf})
    for (unsigned seed = first; seed < first + 120 && !HasFailure(); ++seed) {
      const test::SmallRoll r = test::throw_small_roll(seed, true);
      if (!test::folds_evenly(r.cloth, way)) continue;
      SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed) + ": " + test::text(r.cloth));
      const Job job = test::job_of(r, 1);
      const int folded = test::Dice(seed).from_to(1, r.cloth.tallest);
      const std::int64_t worth = slow_worth_of_length(r, way, folded);
      const auto plan = RollPlanner(job, 0, Aim::most_worth, {}).plan_within(way, length_of(Length::units(folded)));
      EXPECT_EQ(static_cast<bool>(plan), worth > 0) << "length " << folded;
      if (!plan) continue;
      ++compared;
      EXPECT_EQ(plan->worth.parts(), worth) << "length " << folded;
      EXPECT_EQ(inspect_plan(job, *plan), std::vector<std::string>());
    }
  EXPECT_GT(compared, 20);
}

// Folds may lie at finer places than slow folding tries.
TEST_P(EveryHand, GivesOfOneLengthNoLessThanSlowFolding) {
  for_each(30, [](const Job& job, RollPlanner& planner, test::Dice dice, const test::SmallRoll& r) {
    if (GetParam().plain && !test::folds_evenly(r.cloth, GetParam())) return;
    const int folded = dice.from_to(1, r.cloth.tallest), half = GetParam().end_to_end ? 2 : 1;
    const std::int64_t worth = slow_worth_of_length(r, GetParam(), folded);
    const auto plan = planner.plan_within(GetParam(), length_of(Length::units(folded * half * 60)));
    if (!plan) return;
    EXPECT_EQ(inspect_plan(job, *plan), std::vector<std::string>());
    if (plan->aim == Aim::most_worth) {
      EXPECT_GE(plan->worth.parts(), worth) << "length " << folded;
    }
  });
}

INSTANTIATE_TEST_SUITE_P(RollWithin, EveryHand, testing::ValuesIn(all_ways(5)), test::way_title);

}  // namespace
}  // namespace foldyard
