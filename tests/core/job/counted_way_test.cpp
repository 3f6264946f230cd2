#include "job/counted_way.h"

#include <gtest/gtest.h>

#include "core/support/borne_out.h"
#include "core/support/cushions.h"
#include "core/support/dice.h"
#include "core/support/fold_ways.h"
#include "core/support/planned.h"
#include "core/support/slow_roll.h"
#include "core/support/stopped_after.h"
#include "inspect/inspect_hand.h"
#include "inspect/inspect_plan.h"
#include "job/hand_edit.h"

namespace foldyard {
namespace {

using test::aimed_worth;
using test::kHalf;

// A seat is worth nine arms.
Job dear_cushions() {
  Job job = test::cushions();
  job.panels[0].worth = Worth::whole(9);
  return job;
}

Result<Plan> counted_plan(const Job& job, const FoldWay& way, Aim aim, std::map<std::string, std::int64_t> least) {
  Hand hand;
  hand.at_least = std::move(least);
  Result<Plan> plan = CountedWay(job, 0, aim, way, hand, {}).run(24);
  if (plan) {
    EXPECT_EQ(inspect_plan(job, *plan), std::vector<std::string>());
    EXPECT_EQ(inspect_hand(job, *plan, hand), std::vector<std::string>());
    EXPECT_LE(aim == Aim::most_worth ? plan->worth : plan->net, plan->proof.bound);
  }
  return plan;
}

TEST(CountedWay, GivesAtLeastAsManyAsAreAskedFor) {
  const Job job = dear_cushions();
  for (const Aim aim : {Aim::most_worth, Aim::worth_less_time})
    for (const FoldWay& way : {FoldWay{}, kHalf})
      for (const int arms : {5, 20, 33}) {
        const auto plan = counted_plan(job, way, aim, {{"arm", arms}});
        ASSERT_TRUE(plan) << plan.problem().sentence();
        EXPECT_GE(plan->yield[1], arms);
      }
}

// Arms are 300 × 400, the usable cloth 1480 wide, 4940 long less what each length
// loses: no more than the area allows.
TEST(CountedWay, RefusesWhatCannotBeHadAndSaysHowManyCan) {
  const Job job = dear_cushions();
  const auto plan = counted_plan(job, {}, Aim::most_worth, {{"arm", 900}});
  ASSERT_FALSE(plan);
  const std::string words = plan.problem().sentence();
  EXPECT_EQ(words.find("open: there is no way to get 900 of arm from this roll: at most "), 0u) << words;
  EXPECT_NE(words.find(", proved."), std::string::npos) << words;
  // Just so many can be had.
  const int most = std::stoi(words.substr(words.find("at most ") + 8));
  const auto just = counted_plan(job, {}, Aim::most_worth, {{"arm", most}});
  ASSERT_TRUE(just);
  EXPECT_EQ(just->yield[1], most);
}

TEST(CountedWay, KeepsALimitBesidesWhatIsAskedFor) {
  Job job = dear_cushions();
  job.panels[0].at_most = 4;
  const auto plan = counted_plan(job, {}, Aim::most_worth, {{"arm", 12}});
  ASSERT_TRUE(plan) << plan.problem().sentence();
  EXPECT_LE(plan->yield[0], 4);
  EXPECT_GE(plan->yield[1], 12);
  job.panels[1].at_most = 3;
  EXPECT_EQ(counted_plan(job, {}, Aim::most_worth, {{"arm", 4}}).problem().what,
            "4 of arm are asked for, but the job wants at most 3");
}

// What a length or a fold by hand forbids is said as it is without counts.
TEST(CountedWay, PassesOnWhyWhatIsSetCannotBe) {
  Job job = dear_cushions();
  Hand hand;
  hand.length = Length::mm(6000);
  hand.at_least["arm"] = 3;
  const std::string why = CountedWay(job, 0, Aim::most_worth, {}, hand, {}).run(24).problem().sentence();
  EXPECT_NE(why.find("longer than the"), std::string::npos) << why;
  hand.at_least.clear();
  job.panels[1].at_most = 3;
  EXPECT_EQ(CountedWay(job, 0, Aim::most_worth, {}, hand, {}).run(24).problem().sentence(), why);
}

TEST(CountedWay, SaysWhereTheLimitsLeaveNothing) {
  Job job = test::few_cushions();
  for (Panel& p : job.panels) p.on_fold = false, p.at_most = 1;
  const auto plan = counted_plan(job, kHalf, Aim::most_worth, {});
  ASSERT_FALSE(plan);
  EXPECT_EQ(plan.problem().what, "with what is set by hand no plan within the limits on copies was found");
}

// An arm is not worth its handling, nor, in the end, a seat: asked for they are cut.
TEST(CountedWay, GivesWhatDoesNotPayWhereItIsAskedFor) {
  Job job = dear_cushions();
  job.panels[1].worth = Worth::parts(1);
  EXPECT_GE(counted_plan(job, {}, Aim::worth_less_time, {{"arm", 5}})->yield[1], 5);
  job.panels[0].worth = Worth::parts(1);
  for (const FoldWay& way : {FoldWay{}, kHalf}) {
    const auto plan = counted_plan(job, way, Aim::worth_less_time, {{"seat", 2}, {"arm", 5}});
    ASSERT_TRUE(plan) << plan.problem().sentence();
    EXPECT_GE(plan->yield[0], 2);
    EXPECT_GE(plan->yield[1], 5);
    EXPECT_LT(plan->net, Worth());
  }
}

// Enough without a bonus: the plan is the best one, and proved as that is.
TEST(CountedWay, NeedsNoBonusWhereThereIsEnough) {
  const Job job = dear_cushions();
  const Plan best = test::planned(job);
  const auto plan = counted_plan(job, {}, Aim::most_worth, {{"seat", 1}});
  ASSERT_TRUE(plan);
  EXPECT_EQ(plan->worth, best.worth);
  EXPECT_TRUE(plan->proof.proved);
}

// A stain that no count of panels knows of: the plan loses what touches it, or goes
// round it, and is not called proved.
TEST(CountedWay, ProvesNothingThatAFlawTakesPanelsFrom) {
  Job job = dear_cushions();
  job.rolls[0].flaws = {{{Length::mm(100), Length::mm(200)}, {Length::mm(200), Length::mm(230)}, "stain"}};
  Hand hand;
  hand.at_least["arm"] = 9;
  const auto plan = CountedWay(job, 0, Aim::most_worth, {}, hand, {}).run(24);
  ASSERT_TRUE(plan) << plan.problem().sentence();
  EXPECT_FALSE(plan->lost.empty());
  EXPECT_FALSE(plan->proof.proved);
  EXPECT_GE(plan->yield[1], 9);
  EXPECT_EQ(inspect_plan(job, *plan), std::vector<std::string>());
}

TEST(CountedWay, IsSoundWheneverItIsStopped) {
  const Job job = dear_cushions();
  Hand hand;
  hand.at_least = {{"seat", 3}, {"arm", 15}};
  const auto search = [&](const std::atomic<bool>* stopped) {
    return CountedWay(job, 0, Aim::worth_less_time, kHalf, hand, SearchBudget{40'000'000, stopped}).run(12);
  };
  test::stop_at_moments(10, search, [&](const Result<Plan>& found, const Result<Plan>& whole) {
    test::expect_sound_or_stopped(job, found, whole);
    if (found) {
      EXPECT_EQ(inspect_hand(job, *found, hand), std::vector<std::string>());
      EXPECT_GE(found->proof.bound, whole->net);
      EXPECT_TRUE(!found->proof.proved || found->net == whole->net);
    }
  });
}

TEST(CountedWay, StopsWhenItIsCancelled) {
  const Job job = dear_cushions();
  std::atomic<bool> stop = true;
  Hand hand;
  hand.at_least["arm"] = 20;
  EXPECT_FALSE(CountedWay(job, 0, Aim::most_worth, {}, hand, {40'000'000, &stop}).run(24));
}

// Without a search for prices nothing that was asked for need be found.
TEST(CountedWay, SaysWhatWasAskedForWhereNothingIsFound) {
  Hand hand;
  hand.at_least = {{"seat", 4}, {"arm", 22}};
  Job job = dear_cushions();
  job.rolls[0].length = Length::mm(2'500);
  const Result<Plan> plan = CountedWay(job, 0, Aim::most_worth, {}, hand, {}).run(0);
  ASSERT_FALSE(plan);
  EXPECT_EQ(plan.problem().what,
            "no plan with at least 4 of seat and 22 of arm was found; that there is none is not proved");
}

// Small random rolls: of one panel a number is asked for, of the other one, too, or it has a
// limit.
struct SmallCounts {
  Job job;
  Hand hand;
};

SmallCounts throw_small_counts(test::Dice& dice, unsigned seed) {
  SmallCounts c{test::job_of(test::throw_small_roll(seed, true), 60), {}};
  Panel &first = c.job.panels.front(), &last = c.job.panels.back();
  c.hand.at_least[first.name] = dice.from_to(1, 6);
  if (dice.coin()) last.at_most = dice.from_to(1, 9);
  else if (dice.coin()) c.hand.at_least[last.name] = dice.from_to(1, 4);
  if (dice.from_to(0, 3) == 0) first.worth = Worth::parts(1);
  return c;
}

void expect_counts_kept(const SmallCounts& c, const Result<Plan>& plan) {
  if (!plan) return;
  EXPECT_EQ(inspect_plan(c.job, *plan), std::vector<std::string>());
  EXPECT_EQ(inspect_hand(c.job, *plan, c.hand), std::vector<std::string>());
  EXPECT_LE(aimed_worth(*plan), plan->proof.bound.parts());
}

// Of what few steps and rounds find, the bound holds for all plans; and what they call
// proved, or proved that it cannot be had, stays so. Net worth is rounded to a part.
TEST(CountedWay, ClaimsNoMoreOfFewStepsThanAllBearOut) {
  int both = 0;
  for (unsigned seed = 0; seed < 60 && !testing::Test::HasFailure(); ++seed) {
    test::Dice dice(seed);
    const SmallCounts c = throw_small_counts(dice, seed);
    const Aim aim = dice.coin() ? Aim::most_worth : Aim::worth_less_time;
    const std::vector<FoldWay> ways = all_ways(4);
    const FoldWay& way = ways[static_cast<std::size_t>(dice.from_to(0, static_cast<int>(ways.size()) - 1))];
    SCOPED_TRACE("seed " + std::to_string(seed) + ", " + way_key(way));
    const auto all = CountedWay(c.job, 0, aim, way, c.hand, {}).run(24);
    SearchBudget little;
    little.steps = std::int64_t{1} << dice.from_to(0, 14);
    const auto few = CountedWay(c.job, 0, aim, way, c.hand, little).run(dice.from_to(0, 12));
    expect_counts_kept(c, all);
    expect_counts_kept(c, few);
    if (!few && few.problem().what.find(", proved") != std::string::npos) {
      EXPECT_FALSE(all);
    }
    if (!all || !few) continue;
    ++both;
    test::expect_borne_out(*few, *all);
  }
  EXPECT_GT(both, 10);
}

// However few rounds the search for a price has, its plan has enough, and the bound holds for
// what more rounds find. Folded in half, arms come in pairs, and few rounds end in between.
TEST(CountedWay, IsSoundAfterEachRound) {
  const Job job = dear_cushions();
  Hand hand;
  hand.at_least["arm"] = 31;
  for (const FoldWay& way : {FoldWay{}, kHalf}) {
    const auto whole = CountedWay(job, 0, Aim::worth_less_time, way, hand, {}).run(24);
    ASSERT_TRUE(whole) << whole.problem().sentence();
    for (int rounds = 0; rounds < 4; ++rounds) {
      const auto plan = CountedWay(job, 0, Aim::worth_less_time, way, hand, {}).run(rounds);
      ASSERT_TRUE(plan) << rounds << ": " << plan.problem().sentence();
      EXPECT_EQ(inspect_hand(job, *plan, hand), std::vector<std::string>()) << rounds;
      test::expect_borne_out(*plan, *whole);
    }
  }
}

// As many as the clean roll holds, and a seam across it: some of the plan's are lost, and it
// is not given for enough.
TEST(CountedWay, GivesNoPlanWhoseFlawLeavesTooFew) {
  Job job = dear_cushions();
  job.rolls[0].length = Length::mm(1'500);
  const std::string words = counted_plan(job, {}, Aim::most_worth, {{"arm", 900}}).problem().what;
  const int most = std::stoi(words.substr(words.find("at most ") + 8));
  ASSERT_EQ(counted_plan(job, {}, Aim::most_worth, {{"arm", most}})->yield[1], most);
  job.rolls[0].flaws = {{{Length::mm(400), Length::mm(800)}, {Length(), Length::mm(1500)}, "seam"}};
  const auto plan = CountedWay(job, 0, Aim::most_worth, {}, Hand{{}, {}, {{"arm", most}}}, {}).run(24);
  ASSERT_FALSE(plan);
  EXPECT_EQ(plan.problem().what,
            "no plan with at least " + std::to_string(most) + " of arm was found; that there is none is not proved");
}

}  // namespace
}  // namespace foldyard
