#include "job/plan_roll.h"

#include <gtest/gtest.h>

#include <chrono>
#include <thread>

#include "core/support/cushions.h"
#include "core/support/fold_ways.h"
#include "core/support/slow_roll.h"
#include "core/support/way_title.h"
#include "inspect/inspect_plan.h"
#include "job/defaults.h"
#include "job/roll_planner.h"

namespace foldyard {
namespace {

using test::kHalf;
using test::kOpen;
using test::kOpenEndToEnd;
using test::kPlainQuarters;
using test::SmallRoll;

constexpr int kFine = 60;

std::int64_t worth_of(const Result<Plan>& plan) { return plan ? plan->worth.parts() : 0; }

std::string title(unsigned seed, const SmallRoll& r) {
  return "FOLDYARD_SEED=" + std::to_string(seed) + ": " + test::text(r.cloth) + "; table " +
         std::to_string(r.cloth.tallest) + ", roll " + std::to_string(r.length) + ", squaring " +
         std::to_string(r.squaring) + ", allowance " + std::to_string(r.allowance);
}

// Small jobs under one way.
class SmallJobs : public testing::TestWithParam<FoldWay> {
 protected:
  template <class Expect>
  void for_each(bool deep, int rounds, Expect expect) {
    const unsigned first = test::first_seed();
    for (unsigned seed = first; seed < first + static_cast<unsigned>(rounds); ++seed) {
      const SmallRoll r = test::throw_small_roll(seed, deep);
      if (GetParam().plain && !test::folds_evenly(r.cloth, GetParam())) continue;
      SCOPED_TRACE(title(seed, r));
      expect(r);
      if (HasFailure()) return;
    }
  }
};

// Every folded plan unfolds to an open one; end to end, to one twice as long.
TEST_P(SmallJobs, AreWorthNoMoreThanOpenCloth) {
  for_each(false, 60, [](const SmallRoll& r) {
    const auto plan = plan_roll(test::job_of(r, 1), 0, GetParam(), Aim::most_worth);
    SmallRoll open = r;
    open.cloth.cloth.depth = open.cloth.cloth.width;
    if (GetParam().end_to_end) open.cloth.tallest *= 2;
    EXPECT_LE(worth_of(plan), 1000 * test::slow_worth(open, kOpen));
  });
}

// Open and in half, the positions and so the rule of strips leave nothing out.
TEST(PlanRoll, IsWorthWhatTryingEverythingIsWorthOpenAndInHalf) {
  const unsigned first = test::first_seed();
  for (const FoldWay& way : {kOpen, kHalf})
    for (unsigned seed = first; seed < first + 200 && !HasFailure(); ++seed) {
      const SmallRoll r = test::throw_small_roll(seed, true);
      if (!test::folds_evenly(r.cloth, way)) continue;
      SCOPED_TRACE(title(seed, r));
      const auto plan = plan_roll(test::job_of(r, 1), 0, way, Aim::most_worth);
      EXPECT_EQ(worth_of(plan), 1000 * test::slow_worth(r, way));
    }
}

TEST_P(SmallJobs, AreWorthNoLessThanTryingEverything) {
  for_each(true, 40, [](const SmallRoll& r) {
    const auto plan = plan_roll(test::job_of(r, kFine), 0, GetParam(), Aim::most_worth);
    EXPECT_GE(worth_of(plan), 1000 * test::slow_worth(r, GetParam()));
  });
}

TEST_P(SmallJobs, PassInspection) {
  for (const Aim aim : {Aim::most_worth, Aim::worth_less_time})
    for (const int scale : {1, 60})
      for_each(false, 60, [&](const SmallRoll& r) {
        const Job job = test::job_of(r, scale);
        const auto plan = plan_roll(job, 0, GetParam(), aim);
        if (plan)
          EXPECT_EQ(inspect_plan(job, *plan), std::vector<std::string>());
        else
          EXPECT_EQ(plan.problem().sentence().find("inspection"), std::string::npos)
              << plan.problem().sentence();
      });
}

TEST_P(SmallJobs, GetTheSamePlanTwice) {
  for_each(true, 10, [](const SmallRoll& r) {
    const Job job = test::job_of(r, 1);
    for (const Aim aim : {Aim::most_worth, Aim::worth_less_time}) {
      const auto one = plan_roll(job, 0, GetParam(), aim), two = plan_roll(job, 0, GetParam(), aim);
      ASSERT_EQ(static_cast<bool>(one), static_cast<bool>(two));
      if (one)
        EXPECT_EQ(*one, *two);
      else
        EXPECT_EQ(one.problem().sentence(), two.problem().sentence());
    }
  });
}

// Worth is rounded down to a part, so one part may be lost in it.
TEST_P(SmallJobs, NetNoLessWhereTimeIsWeighed) {
  for_each(true, 60, [](const SmallRoll& r) {
    const Job job = test::job_of(r, kFine);
    const auto most = plan_roll(job, 0, GetParam(), Aim::most_worth);
    const auto net = plan_roll(job, 0, GetParam(), Aim::worth_less_time);
    // A plan with a gift (docs/decisions/strips-first.md) is better than searched.
    if (!most || !most->proof.proved) return;
    // No plan at all nets nothing, but the time of unrolling is spent either way.
    const Worth best = net ? net->net : Worth() - cost_of(job.pace.unroll, job.pace);
    EXPECT_GE(best + Worth::parts(1), most->net);
  });
}

INSTANTIATE_TEST_SUITE_P(PlanRoll, SmallJobs, testing::ValuesIn(all_ways(6)), test::way_title);

Job blue_seats() {
  Job job = test::blue_cushions();
  job.panels.pop_back();
  return job;
}

std::string refusal(const Job& job, const FoldWay& way) {
  const auto plan = plan_roll(job, 0, way, Aim::most_worth);
  return plan ? "" : plan.problem().what;
}

TEST(PlanRoll, RefusesOneWayClothEndToEnd) {
  Job job = blue_seats();
  job.rolls[0].fabric.nap = Nap::one_way;
  EXPECT_NE(refusal(job, kOpenEndToEnd).find("one-way"), std::string::npos);
  EXPECT_EQ(refusal(job, kHalf), "");
}

// On railroaded cloth the nap runs across: a fold along the roll turns it, one
// across the roll does not.
TEST(PlanRoll, RefusesOneWayRailroadedClothFoldedAlongTheRoll) {
  Job job = blue_seats();
  job.rolls[0].fabric.nap = Nap::one_way;
  job.rolls[0].fabric.railroaded = true;
  for (const FoldWay& way : all_ways(5)) {
    const std::string why = refusal(job, way);
    EXPECT_EQ(why.find("selvedge to selvedge") != std::string::npos, way.kind != FoldKind::open)
        << way_name(way) << ": " << why;
  }
  EXPECT_EQ(refusal(job, kOpen), "");
  EXPECT_EQ(refusal(job, kOpenEndToEnd), "");
}

// Usable 1480: three of 480 need 1440, three of 480 / 0.97 = 494.85 mm need
// 1484.5 and only two fit.
TEST(PlanRoll, CutsPanelsLargerOnClothThatShrinks) {
  Job job = blue_seats();
  job.panels[0].across = Length::mm(480);
  const auto plan = plan_roll(job, 0, kOpen, Aim::most_worth);
  job.rolls[0].fabric.shrinkage.across = 300;
  const auto larger = plan_roll(job, 0, kOpen, Aim::most_worth);
  ASSERT_TRUE(plan && larger);
  EXPECT_EQ(plan->yield[0] % 3, 0);
  EXPECT_EQ(larger->yield[0] * 3, plan->yield[0] * 2);
  const Length cut = Length::units(158'352);  // 158 350.5 units, up to an even one
  EXPECT_EQ(larger->used, cut * Length::mm(900) * larger->yield[0]);
}

TEST(PlanRoll, RefusesMorePliesThanTheCutterTakes) {
  Job job = blue_seats();
  job.cutter = {Length::mm(25), 3};
  EXPECT_NE(refusal(job, kPlainQuarters).find("4 plies"), std::string::npos);
  EXPECT_EQ(refusal(job, kHalf), "");
  // By height: four plies of 1 mm are 4 mm.
  job.cutter = {Length::mm(3), 12};
  EXPECT_NE(refusal(job, kPlainQuarters).find("stack of 4 mm"), std::string::npos);
}

TEST(PlanRoll, RefusesClothDeeperThanTheTable) {
  Job job = blue_seats();
  job.table.depth = Length::mm(1499);
  EXPECT_NE(refusal(job, kOpen).find("deeper"), std::string::npos);
  EXPECT_EQ(refusal(job, kHalf), "");
  job.table.depth = Length::mm(1500);
  EXPECT_EQ(refusal(job, kOpen), "");
  job.table.both_sides = false;
  job.table.reach = Length::mm(749);
  EXPECT_NE(refusal(job, kHalf).find("deeper"), std::string::npos);
}

TEST(PlanRoll, RefusesWhereNoPanelFits) {
  Job job = blue_seats();
  job.panels[0].across = Length::mm(1481);
  EXPECT_EQ(refusal(job, kOpen), "no panel fits");
  job.panels[0].across = Length::mm(1480);
  EXPECT_EQ(refusal(job, kOpen), "");
  job.panels[0].along = job.table.length + Length::units(1);
  EXPECT_EQ(refusal(job, kOpen), "no panel fits");
}

TEST(PlanRoll, RefusesARollThatItsEndLossesTakeWhole) {
  Job job = blue_seats();
  job.rolls[0].length = job.losses.squaring * 2 + job.losses.allowance;
  EXPECT_NE(refusal(job, kOpen).find("no longer than"), std::string::npos);
}

TEST(PlanRoll, RefusesWhatIsNotWorthItsTime) {
  Job job = blue_seats();
  job.panels[0].worth = Worth::parts(1);
  const auto plan = plan_roll(job, 0, kOpen, Aim::worth_less_time);
  ASSERT_FALSE(plan);
  EXPECT_NE(plan.problem().what.find("worth the time"), std::string::npos);
}

// A seat is worth 100 s. One length of three takes four cuts of 60 + 18 s, a
// lift of 60 and a cross-cut of 60 + 30: 462 s for 300. Five in one lay take
// 312 + 60 + 450 = 822 s for 1500: 678 s are left.
TEST(PlanRoll, StacksLengthsThatDoNotPayAlone) {
  Job job = blue_seats();
  job.table.length = Length::mm(1000);
  job.panels[0].worth = Worth::whole(1);
  job.pace = {};
  job.pace.rate = Worth::whole(36);
  job.pace.mark = job.pace.lift = job.pace.cross_cut = Duration::seconds(60);
  job.pace.ms_per_metre = 20'000;
  const auto plan = plan_roll(job, 0, kOpen, Aim::worth_less_time);
  ASSERT_TRUE(plan) << plan.problem().sentence();
  EXPECT_EQ(plan->lays, std::vector<Lay>{(Lay{0, 5})});
  EXPECT_EQ(plan->net, Worth::parts(67'800));
}

TEST(PlanRoll, ProvesASmallJobAndSaysSo) {
  const auto plan = plan_roll(blue_seats(), 0, kHalf, Aim::most_worth);
  ASSERT_TRUE(plan);
  EXPECT_TRUE(plan->proof.proved);
  EXPECT_EQ(plan->proof.bound, plan->worth);
  // 5000 less 2 × 100: five lengths of 900 + 40; three seats each.
  EXPECT_EQ(plan->worth, Worth::whole(5 * 3 * 3));
  EXPECT_EQ(plan->cross_cuts, 5);
}

TEST(PlanRoll, BoundsWhatItCannotProve) {
  Job job = blue_seats();
  for (int i = 0; i < 6; ++i)
    job.panels.push_back({"p", Length::mm(203 + 17 * i), Length::mm(307 + 13 * i), true, true,
                          Worth::whole(1)});
  const auto whole = plan_roll(job, 0, kHalf, Aim::most_worth);
  const auto hasty = plan_roll(job, 0, kHalf, Aim::most_worth, SearchBudget{2000});
  ASSERT_TRUE(whole && hasty);
  EXPECT_FALSE(hasty->proof.proved);
  EXPECT_LE(hasty->worth, whole->worth);
  EXPECT_GE(hasty->proof.bound, whole->worth);
}

// Stopped at once every way that the job allows has a sound plan, not proved.
TEST(CompareWays, HasPlansEvenWhenItIsStoppedAtOnce) {
  const std::atomic<bool> stopped = true;
  SearchBudget budget;
  budget.cancelled = &stopped;
  const Comparison whole = compare_ways(blue_seats(), 0, Aim::most_worth);
  const Comparison c = compare_ways(blue_seats(), 0, Aim::most_worth, budget);
  EXPECT_EQ(c.ranking.size(), whole.ranking.size());
  for (const int i : c.ranking) {
    const Plan& plan = *c.ways[static_cast<std::size_t>(i)].plan;
    EXPECT_FALSE(plan.proof.proved);
    EXPECT_NE(plan.proof.note.find("stopped"), std::string::npos);
    EXPECT_EQ(inspect_plan(blue_seats(), plan), std::vector<std::string>());
    EXPECT_GE(plan.proof.bound, whole.ways[static_cast<std::size_t>(i)].plan->worth);
  }
}

// Where nobody waits for the answer, every way says that it was not planned.
TEST(CompareWays, RefusesWhatItWasStoppedBeforeWhereNobodyWaits) {
  const std::atomic<bool> stopped = true;
  SearchBudget budget;
  budget.cancelled = budget.unwanted = &stopped;
  const Comparison c = compare_ways(blue_seats(), 0, Aim::most_worth, budget);
  EXPECT_TRUE(c.ranking.empty());
  for (const WayResult& way : c.ways)
    EXPECT_EQ(way.refused, "planning was stopped before this way") << way_name(way.way);
}

TEST(CompareWays, CountsTheWaysAsTheyAreDone) {
  SearchProgress progress;
  SearchBudget budget;
  budget.progress = &progress;
  const Comparison c = compare_ways(blue_seats(), 0, Aim::most_worth, budget);
  EXPECT_EQ(progress.total, std::ssize(c.ways));
  EXPECT_EQ(progress.done, std::ssize(c.ways));
  const Comparison same = compare_ways(blue_seats(), 0, Aim::most_worth);
  for (std::size_t i = 0; i < c.ways.size(); ++i) EXPECT_EQ(c.ways[i].plan, same.ways[i].plan);
}

TEST(PlanRoll, CountsItsStages) {
  SearchProgress progress;
  SearchBudget budget;
  budget.progress = &progress;
  ASSERT_TRUE(plan_roll(blue_seats(), 0, kHalf, Aim::most_worth, budget));
  EXPECT_GT(progress.total, 1);
  EXPECT_EQ(progress.done, progress.total);
}

// Stopped anywhere, what there is is sound, and nothing is called proved that
// the whole search does not reach.
TEST(CompareWays, GivesSoundPlansWheneverItIsStopped) {
  const Comparison whole = compare_ways(blue_seats(), 0, Aim::most_worth);
  for (const int ms : {1, 2, 5, 10, 20, 50}) {
    std::atomic<bool> stopped = false;
    SearchBudget budget;
    budget.cancelled = &stopped;
    std::thread stop([&] {
      std::this_thread::sleep_for(std::chrono::milliseconds(ms));
      stopped = true;
    });
    const Comparison c = compare_ways(blue_seats(), 0, Aim::most_worth, budget);
    stop.join();
    for (std::size_t i = 0; i < c.ways.size(); ++i) {
      if (!c.ways[i].plan) continue;
      EXPECT_EQ(inspect_plan(blue_seats(), *c.ways[i].plan), std::vector<std::string>());
      if (c.ways[i].plan->proof.proved) {
        EXPECT_EQ(*c.ways[i].plan, *whole.ways[i].plan);
      }
    }
  }
}

TEST(CompareWays, RanksByTheAimAndKeepsRefusals) {
  Job job = blue_seats();
  job.rolls[0].fabric.nap = Nap::one_way;
  const Comparison all = compare_ways(job, 0, Aim::most_worth);
  EXPECT_EQ(all.ways.size(), all_ways(job.longest_fan).size());
  for (const WayResult& result : all.ways) {
    EXPECT_EQ(result.way.end_to_end, !result.plan && !result.refused.empty()) << way_key(result.way);
  }
  for (std::size_t i = 1; i < all.ranking.size(); ++i) {
    const Plan& before = *all.ways[static_cast<std::size_t>(all.ranking[i - 1])].plan;
    const Plan& after = *all.ways[static_cast<std::size_t>(all.ranking[i])].plan;
    EXPECT_GE(before.worth, after.worth);
  }
}

TEST(CompareWays, BoundsEveryWayByOpenCloth) {
  const Comparison all = compare_ways(blue_seats(), 0, Aim::most_worth);
  ASSERT_TRUE(all.ways[0].plan);
  for (const WayResult& result : all.ways)
    if (result.plan) {
      EXPECT_LE(result.plan->worth, all.ways[0].plan->worth) << way_key(result.way);
    }
}

TEST(CompareWays, FindsAFrontierThatNoPlanBeats) {
  const Comparison all = compare_ways(blue_seats(), 0, Aim::most_worth);
  const auto plan = [&](int i) -> const Plan& { return *all.ways[static_cast<std::size_t>(i)].plan; };
  ASSERT_FALSE(all.frontier.empty());
  for (const int f : all.frontier)
    for (const int other : all.ranking)
      EXPECT_FALSE(plan(other).worth >= plan(f).worth && plan(other).time < plan(f).time);
  for (std::size_t i = 1; i < all.frontier.size(); ++i)
    EXPECT_LT(plan(all.frontier[i]).time, plan(all.frontier[i - 1]).time);
}

TEST(CompareWays, PlansEachWayAsPlanRollDoes) {
  const Job job = blue_seats();
  for (const Aim aim : {Aim::most_worth, Aim::worth_less_time})
    for (const WayResult& result : compare_ways(job, 0, aim).ways) {
      const auto alone = plan_roll(job, 0, result.way, aim);
      ASSERT_EQ(static_cast<bool>(alone), result.plan.has_value()) << way_key(result.way);
      if (alone) {
        EXPECT_EQ(*alone, *result.plan) << way_key(result.way);
      }
    }
}

// Too little for the tables of all ways together, enough for those of one.
SearchBudget scarce(const Job& job, Aim aim) {
  SearchBudget budget;
  while (RollPlanner(job, 0, aim, budget).may_share()) budget.bytes /= 2;
  return budget;
}

TEST(CompareWays, GivesTheSamePlansWhereMemoryIsScarce) {
  const Job job = blue_seats();
  for (const Aim aim : {Aim::most_worth, Aim::worth_less_time}) {
    const Comparison whole = compare_ways(job, 0, aim), alone = compare_ways(job, 0, aim, scarce(job, aim));
    EXPECT_EQ(alone.ranking, whole.ranking);
    for (std::size_t i = 0; i < whole.ways.size(); ++i) EXPECT_EQ(alone.ways[i].plan, whole.ways[i].plan) << i;
  }
}

TEST(PlanRoll, LeavesOutPlacesWhereMemoryIsScarce) {
  const Job job = blue_seats();
  SearchBudget budget;
  budget.bytes = 1'000;
  const auto whole = plan_roll(job, 0, kHalf, Aim::most_worth), few = plan_roll(job, 0, kHalf, Aim::most_worth, budget);
  ASSERT_TRUE(whole && few);
  EXPECT_LE(few->worth, whole->worth);
  EXPECT_LE(whole->worth, few->proof.bound);
  EXPECT_TRUE(whole->proof.proved);
  EXPECT_FALSE(few->proof.proved);
  EXPECT_EQ(inspect_plan(job, *few), std::vector<std::string>());
}

}  // namespace
}  // namespace foldyard
