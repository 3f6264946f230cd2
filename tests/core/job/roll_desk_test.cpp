#include "job/roll_desk.h"

#include <gtest/gtest.h>

#include <thread>

#include "core/support/borne_out.h"
#include "core/support/cushions.h"
#include "core/support/fold_ways.h"
#include "core/support/planned.h"
#include "core/support/slow_roll.h"
#include "core/support/way_title.h"
#include "inspect/inspect_hand.h"
#include "inspect/inspect_plan.h"
#include "job/defaults.h"
#include "job/hand_edit.h"

namespace foldyard {
namespace {

using test::aimed_worth;
using test::blue_cushions;
using test::kOffCentre;
using test::kThirds;

TEST(RollDesk, GivesWhatTheDoorsGive) {
  const Job job = blue_cushions();
  for (const Aim aim : {Aim::most_worth, Aim::worth_less_time}) {
    RollDesk desk(job, 0, aim);
    for (const FoldWay& way : all_ways(5)) {
      const auto kept = desk.best(way), fresh = plan_roll(job, 0, way, aim);
      ASSERT_EQ(static_cast<bool>(kept), static_cast<bool>(fresh)) << way_key(way);
      if (fresh) {
        EXPECT_EQ(*kept, *fresh) << way_key(way);
      }
    }
    const Comparison kept = desk.compare(), fresh = compare_ways(job, 0, aim);
    EXPECT_EQ(kept.ranking, fresh.ranking);
    EXPECT_EQ(kept.frontier, fresh.frontier);
  }
}

class EveryDesk : public testing::TestWithParam<FoldWay> {
 protected:
  template <class Expect>
  void for_each(int rounds, Expect expect) {
    const unsigned first = test::first_seed();
    for (unsigned seed = first; seed < first + static_cast<unsigned>(rounds); ++seed) {
      const test::SmallRoll r = test::throw_small_roll(seed, true);
      SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed) + ": " + test::text(r.cloth));
      for (const Aim aim : {Aim::most_worth, Aim::worth_less_time}) {
        const Job job = test::job_of(r, 60);
        RollDesk desk(job, 0, aim);
        expect(job, desk, Dice(seed));
        if (HasFailure()) return;
      }
    }
  }
  using Dice = test::Dice;
};

// Folded where the best plan is, no less is had; its patterns may lie at
// different folds, so each is asked for. (Rounded to a part, worth may differ by
// one where time is weighed.)
TEST_P(EveryDesk, GivesAtTheBestFoldsWhatIsBest) {
  for_each(40, [](const Job& job, RollDesk& desk, auto) {
    const auto best = desk.best(GetParam());
    if (!best || best->patterns.size() != 1) return;
    const auto at = desk.at(best->patterns[0].fold);
    ASSERT_TRUE(at) << at.problem().sentence();
    EXPECT_EQ(at->patterns[0].fold, best->patterns[0].fold);
    EXPECT_GE(aimed_worth(*at) + 1, aimed_worth(*best));
    EXPECT_EQ(inspect_plan(job, *at), std::vector<std::string>());
  });
}

// Wherever the folds are put, a proved best is not beaten in worth. (In net worth
// it may be: which fold saves most cuts is searched among those that are best for
// worth.)
TEST_P(EveryDesk, GivesNoMoreAtOtherFolds) {
  for_each(40, [](const Job& job, RollDesk& desk, Dice dice) {
    const auto best = desk.best(GetParam());
    if (!best || !best->proof.proved || best->aim != Aim::most_worth) return;
    const int lines = static_cast<int>(best->patterns[0].fold.lines.size());
    if (lines == 0) return;
    const int line = dice.from_to(0, lines - 1);
    const std::vector<Length> places = desk.snaps(GetParam(), line);
    ASSERT_FALSE(places.empty());
    const Length place = places[static_cast<std::size_t>(dice.from_to(0, static_cast<int>(places.size()) - 1))];
    const FoldPlan moved = desk.snapped(best->patterns[0].fold, line, place);
    EXPECT_EQ(moved.lines[static_cast<std::size_t>(line)], place);
    const auto at = desk.at(moved);
    if (!at || !at->proof.proved) return;
    EXPECT_LE(at->worth, best->worth);
    EXPECT_EQ(inspect_plan(job, *at), std::vector<std::string>());
  });
}

// The folds of every best plan lie where lines snap to.
TEST_P(EveryDesk, SnapsToTheFoldsOfTheBestPlan) {
  for_each(40, [](const Job&, RollDesk& desk, auto) {
    const auto best = desk.best(GetParam());
    if (!best) return;
    for (const Pattern& pattern : best->patterns)
      for (std::size_t i = 0; i < pattern.fold.lines.size(); ++i) {
        const std::vector<Length> places = desk.snaps(GetParam(), static_cast<int>(i));
        EXPECT_TRUE(std::binary_search(places.begin(), places.end(), pattern.fold.lines[i]))
            << "fold line " << i << " at " << pattern.fold.lines[i].units();
      }
  });
}

INSTANTIATE_TEST_SUITE_P(RollDesk, EveryDesk, testing::ValuesIn(all_ways(6)), test::way_title);

TEST(RollDesk, SnapsToHalfACarrierFromTheSelvedge) {
  RollDesk desk(blue_cushions(), 0, Aim::most_worth);
  const std::vector<Length> places = desk.snaps(kOffCentre, 0);
  EXPECT_TRUE(std::binary_search(places.begin(), places.end(), Length::mm(235)));
  EXPECT_TRUE(desk.snaps(kOffCentre, 1).empty());
  EXPECT_TRUE(desk.snaps({}, 0).empty());
}

// Thirds with 450 to fold: moving the first line takes the second along, so
// that the inner leg stays the longest.
TEST(RollDesk, TakesTheOtherLinesAlong) {
  RollDesk desk(blue_cushions(), 0, Aim::most_worth);
  const FoldPlan thirds{kThirds, {Length::mm(500), Length::mm(1000)}, levels_of(kThirds)};
  for (const int place : {200, 350, 460}) {
    const FoldPlan moved = desk.snapped(thirds, 0, Length::mm(place));
    EXPECT_TRUE(desk.at(moved)) << desk.at(moved).problem().sentence();
  }
}

TEST(RollDesk, RefusesFoldsThatCannotLieSo) {
  RollDesk desk(blue_cushions(), 0, Aim::most_worth);
  const auto plan = desk.at({kThirds, {Length::mm(700), Length::mm(1000)}, {0, 1, 2}});
  ASSERT_FALSE(plan);
  EXPECT_EQ(plan.problem().sentence(),
            "in thirds: an end leg of 700 mm is longer than the inner legs of 300 mm.");
}

TEST(RollDesk, RefusesAWayThatIsNotAllowed) {
  Job job = blue_cushions();
  job.rolls[0].fabric.nap = Nap::one_way;
  RollDesk desk(job, 0, Aim::most_worth);
  const auto plan = desk.at({{FoldKind::off_centre, 2, true, false}, {Length::mm(235)}, {1, 0}});
  ASSERT_FALSE(plan);
  EXPECT_NE(plan.problem().what.find("one-way"), std::string::npos);
}

TEST(RollDesk, RefusesFoldsPutByHandWherePanelsMatchAPattern) {
  Job job = blue_cushions();
  job.rolls[0].fabric.repeat.along = Length::mm(320);
  job.panels[0].match = Match::start;
  RollDesk desk(job, 0, Aim::most_worth);
  const auto plan = desk.at({kOffCentre, {Length::mm(300)}, {1, 0}});
  ASSERT_FALSE(plan);
  EXPECT_NE(plan.problem().what.find("match a pattern"), std::string::npos);
}

TEST(RollDesk, ProvesOnlyWhatLiesAtTheseFolds) {
  RollDesk desk(blue_cushions(), 0, Aim::most_worth);
  const auto plan = desk.at({kOffCentre, {Length::mm(300)}, {1, 0}});
  ASSERT_TRUE(plan);
  EXPECT_TRUE(plan->proof.proved);
  EXPECT_EQ(plan->proof.note.find("with the folds where they are"), 0u);
}

TEST(RollDesk, IsTheBestWhereNothingIsSet) {
  RollDesk desk(blue_cushions(), 0, Aim::most_worth);
  EXPECT_EQ(*desk.within(kOffCentre, {}), *desk.best(kOffCentre));
}

TEST(RollDesk, KeepsToThePinnedLineAndToTheLength) {
  const Job job = blue_cushions();
  RollDesk desk(job, 0, Aim::most_worth);
  Hand hand = with_line({}, kOffCentre, 0, Length::mm(300));
  hand.length = Length::mm(930);
  const auto plan = desk.within(kOffCentre, hand);
  ASSERT_TRUE(plan) << plan.problem().sentence();
  EXPECT_EQ(inspect_hand(job, *plan, hand), std::vector<std::string>());
  EXPECT_LE(plan->worth, desk.best(kOffCentre)->worth);
  EXPECT_TRUE(plan->proof.proved);
  EXPECT_EQ(plan->proof.note.find("with what is set by hand"), 0u);
}

// Of a fan with one line pinned not every fold is searched: the bound is that of
// the way, which the plan may reach.
TEST(RollDesk, SaysWhatTheBoundSpeaksOf) {
  RollDesk desk(blue_cushions(), 0, Aim::most_worth);
  const auto best = desk.best(kThirds);
  const auto same = desk.within(kThirds, with_line({}, kThirds, 0, best->patterns[0].fold.lines[0]));
  ASSERT_TRUE(same);
  EXPECT_EQ(same->worth, best->worth);
  EXPECT_TRUE(same->proof.proved);
  const auto other = desk.within(kThirds, with_line({}, kThirds, 0, Length::mm(333)));
  ASSERT_TRUE(other) << other.problem().sentence();
  EXPECT_LE(other->worth, other->proof.bound);
  EXPECT_EQ(other->proof.bound, best->worth);
}

TEST(RollDesk, SetsNothingByHandWherePanelsMatchAPattern) {
  Job job = blue_cushions();
  job.rolls[0].fabric.repeat.along = Length::mm(320);
  job.panels[0].match = Match::start;
  RollDesk desk(job, 0, Aim::most_worth);
  const auto plan = desk.within(kOffCentre, with_line({}, kOffCentre, 0, Length::mm(300)));
  ASSERT_FALSE(plan);
  EXPECT_EQ(plan.problem().what, "the panels match a pattern; there nothing is set by hand");
}

TEST(RollDesk, MakesItsTablesAgainAfterACancel) {
  std::atomic<bool> cancelled = true;
  SearchBudget budget;
  budget.cancelled = &cancelled;
  RollDesk desk(blue_cushions(), 0, Aim::most_worth, budget);
  const auto stopped = desk.best(kOffCentre);
  EXPECT_FALSE(stopped && stopped->proof.proved);
  cancelled = false;
  const auto plan = desk.best(kOffCentre), fresh = plan_roll(blue_cushions(), 0, kOffCentre, Aim::most_worth);
  ASSERT_TRUE(plan);
  EXPECT_EQ(*plan, *fresh);
}

TEST(RollDesk, ServesSeveralThreadsAtOnce) {
  RollDesk desk(blue_cushions(), 0, Aim::most_worth);
  const std::vector<FoldWay> ways = all_ways(5);
  std::vector<std::optional<Plan>> plans(ways.size());
  std::vector<std::thread> threads;
  for (std::size_t first = 0; first < 4; ++first)
    threads.emplace_back([&, first] {
      for (std::size_t i = first; i < ways.size(); i += 4)
        if (auto plan = desk.best(ways[i])) plans[i] = *plan;
    });
  for (std::thread& thread : threads) thread.join();
  for (std::size_t i = 0; i < ways.size(); ++i) {
    const auto alone = plan_roll(blue_cushions(), 0, ways[i], Aim::most_worth);
    ASSERT_EQ(plans[i].has_value(), static_cast<bool>(alone));
    if (alone) {
      EXPECT_EQ(*plans[i], *alone) << way_key(ways[i]);
    }
  }
}

TEST(RollDesk, SnapsOnlyLinesThatTheWayHas) {
  RollDesk desk(blue_cushions(), 0, Aim::most_worth);
  EXPECT_FALSE(desk.snaps(kOffCentre, 0).empty());
  for (const int line : {-1, 1, 7}) {
    EXPECT_TRUE(desk.snaps(kOffCentre, line).empty()) << line;
    const FoldPlan fold{kOffCentre, {Length::mm(300)}, {1, 0}};
    EXPECT_EQ(desk.snapped(fold, line, Length::mm(200)), fold) << line;
  }
  const FoldPlan lacking{kThirds, {Length::mm(300)}, {0, 1, 2}};
  EXPECT_EQ(desk.snapped(lacking, 0, Length::mm(200)), lacking);
}

TEST(RollDesk, PassesOnWhyWhatIsSetCannotBe) {
  RollDesk desk(blue_cushions(), 0, Aim::most_worth);
  Hand hand;
  hand.length = Length::mm(200);
  EXPECT_EQ(desk.within(kOffCentre, hand).problem().what, "no panel fits lengths of 200 mm");
  hand.at_least["arm"] = 3;
  EXPECT_EQ(desk.within(kOffCentre, hand).problem().what, "no panel fits lengths of 200 mm");
}

// Folds put by hand are planned as if there were no limits, and then held to them.
TEST(RollDesk, HoldsFoldsPutByHandToTheLimits) {
  Job job = blue_cushions();
  const FoldPlan fold{kOffCentre, {Length::mm(300)}, {1, 0}};
  const auto free = RollDesk(job, 0, Aim::most_worth).at(fold);
  ASSERT_TRUE(free);
  job.panels[1].at_most = free->yield[1];
  EXPECT_EQ(*RollDesk(job, 0, Aim::most_worth).at(fold), *free);
  job.panels[1].at_most = free->yield[1] - 1;
  const auto refused = RollDesk(job, 0, Aim::most_worth).at(fold);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.problem().what.find("the best plan passes a limit on copies"), 0u) << refused.problem().what;
}

// Small random rolls with a line, a length or a number set, or some of them.
Hand throw_hand(test::Dice& dice, const Job& job, const FoldWay& way, const Plan& best) {
  Hand hand;
  const Pattern& pattern = best.patterns[0];
  for (int i = 0; i < std::ssize(pattern.fold.lines); ++i)
    if (dice.coin()) hand = with_line(hand, way, i, pattern.fold.lines[static_cast<std::size_t>(i)]);
  if (dice.coin()) hand.length = pattern.length;
  if (dice.coin()) hand = with_at_least(hand, job.panels[0].name, dice.from_to(1, 5));
  return hand;
}

void expect_within_sound(const Job& job, const Hand& hand, const Result<Plan>& plan) {
  if (!plan) return;
  EXPECT_EQ(inspect_plan(job, *plan), std::vector<std::string>());
  EXPECT_EQ(inspect_hand(job, *plan, hand), std::vector<std::string>());
  EXPECT_LE(aimed_worth(*plan), plan->proof.bound.parts());
  for (std::size_t p = 0; p < job.panels.size(); ++p) {
    EXPECT_LE(plan->yield[p], job.panels[p].at_most.value_or(plan->yield[p]));
  }
}

// Of a hand, too, few steps bound what all find, and prove no less. Net worth is rounded to
// a part.
TEST_P(EveryDesk, ClaimsNoMoreOfFewStepsThanAllBearOut) {
  for (unsigned seed = 0; seed < 6 && !HasFailure(); ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    test::Dice dice(seed);
    Job job = test::job_of(test::throw_small_roll(seed, true), 60);
    const Aim aim = dice.coin() ? Aim::most_worth : Aim::worth_less_time;
    const auto best = plan_roll(job, 0, GetParam(), aim);
    if (!best) continue;
    const Hand hand = throw_hand(dice, job, GetParam(), *best);
    if (dice.coin()) job.panels.back().at_most = dice.from_to(1, 8);
    SearchBudget little;
    little.steps = std::int64_t{1} << dice.from_to(0, 14);
    RollDesk desk(job, 0, aim), hasty(job, 0, aim, little);
    const auto all = desk.within(GetParam(), hand), few = hasty.within(GetParam(), hand);
    expect_within_sound(job, hand, all);
    expect_within_sound(job, hand, few);
    expect_within_sound(job, hand, hasty.within(GetParam(), hand));
    if (!all || !few) continue;
    test::expect_borne_out(*few, *all);
  }
}

// What is stopped again and again leaves nothing behind that is used afterwards.
TEST(RollDesk, GivesWhatAFreshDeskGivesHoweverOftenItWasStopped) {
  Hand hand;
  hand.at_least["arm"] = 6;
  std::atomic<bool> cancelled = true;
  SearchBudget budget;
  budget.cancelled = &cancelled;
  RollDesk desk(blue_cushions(), 0, Aim::most_worth, budget), fresh(blue_cushions(), 0, Aim::most_worth);
  const Hand pinned = with_line({}, kThirds, 0, Length::mm(480));
  for (int n = 0; n < 3; ++n) {
    for (const Hand& each : {hand, pinned}) {
      const auto stopped = desk.within(kThirds, each);
      EXPECT_FALSE(stopped && stopped->proof.proved);
    }
  }
  cancelled = false;
  for (const Hand& each : {hand, pinned}) {
    const auto plan = desk.within(kThirds, each), whole = fresh.within(kThirds, each);
    ASSERT_TRUE(plan && whole);
    EXPECT_EQ(*plan, *whole);
  }
}

}  // namespace
}  // namespace foldyard
