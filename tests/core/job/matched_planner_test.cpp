#include "job/matched_planner.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <functional>
#include <map>

#include "core/support/dice.h"
#include "core/support/fold_ways.h"
#include "core/support/lengths.h"
#include "core/support/planned.h"
#include "core/support/slow_matched.h"
#include "core/support/stopped_after.h"
#include "inspect/inspect_plan.h"
#include "job/defaults.h"

namespace foldyard {
namespace {

using test::kHalf;
using test::kOpen;
using test::kOpenEndToEnd;
using test::mm;
using test::planned;

// Seats of 450 × 500 that begin at the start of a repeat of 640 along, three side
// by side on 1400 of usable cloth.
Job seats() {
  Job job = default_job();
  job.unit = Unit::mm;
  Fabric fabric = default_fabric();
  fabric.width = mm(1420);
  fabric.selvedge = mm(10);
  fabric.repeat = {mm(640), {}, mm(100), {}, false};
  job.rolls = {{"figured", fabric, mm(5000)}};
  job.panels = {{"seat", mm(450), mm(500), false, true, Worth::whole(3)}};
  job.panels[0].match = Match::start;
  job.losses.squaring = mm(20);
  job.losses.allowance = mm(20);
  return job;
}

// Repeats begin at 100, 740, … 4580; the last seat that ends before 4980 − 10 (half
// the allowance) begins at 3940: seven rows. One at 4580 would end at 5080.
TEST(MatchedPlanner, CutsEachPanelFromTheStartOfARepeat) {
  const Plan plan = planned(seats(), kOpen);
  EXPECT_EQ(plan.yield, (std::vector<std::int64_t>{7 * 3}));
  EXPECT_TRUE(plan.proof.proved) << plan.proof.note;
  ASSERT_FALSE(plan.lengths.empty());
  // Half the allowance before the pattern: 100 − 10.
  EXPECT_EQ(plan.lengths[0].on_roll.from, mm(90));
  EXPECT_EQ(plan.cut_out.at(0), (Span{mm(20), mm(90)}));
  // Nine rows of 500 in lengths of up to 3000 fit where nothing need match.
  ASSERT_TRUE(plan.unmatched);
  EXPECT_EQ(plan.unmatched->worth, Worth::whole(9 * 3 * 3));
  EXPECT_EQ(plan.worth, Worth::whole(7 * 3 * 3));
}

// A fold along the roll keeps the phase along: as many as open cloth gives, as a
// seat on the fold, one beside it on both plies.
TEST(MatchedPlanner, FoldsClothThatRepeatsAlongAlongTheRoll) {
  const Plan plan = planned(seats(), kHalf);
  EXPECT_EQ(plan.yield, (std::vector<std::int64_t>{7 * 3}));
  EXPECT_TRUE(plan.proof.proved);
}

TEST(MatchedPlanner, SaysWhyAFoldBreaksTheMatch) {
  const auto end_to_end = plan_roll(seats(), 0, kOpenEndToEnd, Aim::most_worth);
  ASSERT_FALSE(end_to_end);
  EXPECT_NE(end_to_end.problem().what.find("end to end the pattern runs the other way along"),
            std::string::npos);
  Job job = seats();
  job.panels.push_back({"pouch", mm(200), mm(300), true, true, Worth::parts(1000)});
  const Plan others = planned(job, kOpenEndToEnd);
  EXPECT_EQ(others.yield[0], 0);
  EXPECT_GT(others.yield[1], 0);
  EXPECT_NE(others.proof.note.find("left out"), std::string::npos);
  job.rolls[0].fabric.repeat = {{}, mm(500), {}, mm(30), false};
  EXPECT_GT(planned(job, kOpenEndToEnd).yield[0], 0);
  EXPECT_EQ(planned(job, kHalf).yield[0], 0);
}

// A seat worth less than the time of cutting it is left where time is weighed.
TEST(MatchedPlanner, CutsNothingThatIsNotWorthItsTime) {
  Job job = seats();
  job.panels[0].worth = Worth::parts(1);
  EXPECT_FALSE(plan_roll(job, 0, kOpen, Aim::worth_less_time));
  EXPECT_EQ(planned(job, kOpen).yield, (std::vector<std::int64_t>{7 * 3}));
}

// Where the pattern repeats both ways, it is the fold that decides which way it runs wrong.
TEST(MatchedPlanner, NamesTheWayInWhichTheFoldTurnsThePattern) {
  Job job = seats();
  job.rolls[0].fabric.repeat = {mm(640), mm(500), mm(100), mm(30), false};
  const auto refusal = [&](const FoldWay& way) { return plan_roll(job, 0, way, Aim::most_worth).problem().what; };
  EXPECT_EQ(refusal(kOpenEndToEnd).find("on a ply turned over end to end the pattern runs the other way along, so no"), 0u)
      << refusal(kOpenEndToEnd);
  EXPECT_EQ(refusal(kHalf).find("on a ply turned over by a fold along the roll the pattern runs the other way across, so no"), 0u)
      << refusal(kHalf);
}

// Usable cloth from 10 to 1410; repeats of 500 across begin at 30: seats at 30, 530
// and, ending at 1480, no third. Two in each of the nine rows that fit along.
TEST(MatchedPlanner, MatchesAcrossFromTheFirstRepeatInUsableCloth) {
  Job job = seats();
  job.rolls[0].fabric.repeat = {{}, mm(500), {}, mm(30), false};
  const Plan plan = planned(job, kOpen);
  EXPECT_EQ(plan.yield, (std::vector<std::int64_t>{9 * 2}));
  std::vector<Length> begins;
  for (const PlacedPanel& p : plan.patterns[0].panels) begins.push_back(p.flat.across.from);
  std::sort(begins.begin(), begins.end());
  EXPECT_EQ(begins.front(), mm(30));
  EXPECT_EQ(begins.back(), mm(530));
}

// Centred on 640, a seat of 500 begins 70 after the start of a repeat.
TEST(MatchedPlanner, CentresTheMotifInThePanel) {
  Job job = seats();
  job.panels[0].match = Match::centred;
  const Plan plan = planned(job, kOpen);
  const Length y = plan.patterns[static_cast<std::size_t>(plan.lays[0].pattern)].panels[0].flat.along.from;
  const Length begins = plan.lengths[0].pattern_start(job.losses.allowance) + y;
  EXPECT_EQ(phase_at(begins, mm(100), mm(640)), mm(70));
  EXPECT_EQ(plan.yield[0], 7 * 3);
}

TEST(MatchedPlanner, PlansOnlyWhereClothRepeatsAndAPanelMustMatch) {
  Job job = seats();
  EXPECT_TRUE(needs_matching(job, 0));
  job.panels[0].match = Match::none;
  EXPECT_FALSE(needs_matching(job, 0));
  EXPECT_FALSE(planned(job, kOpen).unmatched);
  job = seats();
  job.rolls[0].fabric.repeat = {};
  EXPECT_FALSE(needs_matching(job, 0));
  EXPECT_EQ(planned(job, kOpen).yield, (std::vector<std::int64_t>{9 * 3}));
}

// A repeat that all sizes along are multiples of, on a roll that begins with one,
// costs nothing.
TEST(MatchedPlanner, LosesNothingWhereTheRepeatDividesAllSizes) {
  Job job = seats();
  job.losses.squaring = job.losses.allowance = Length();
  job.rolls[0].fabric.repeat = {mm(250), {}, {}, {}, false};
  for (const FoldWay& way : {kOpen, kHalf}) {
    const Plan plan = planned(job, way);
    EXPECT_EQ(plan.worth, plan.unmatched->worth) << way_name(way);
    EXPECT_TRUE(plan.cut_out.empty());
  }
}

TEST(MatchedPlanner, ComparesAllWaysAndEveryPlanIsSound) {
  Job job = seats();
  job.panels.push_back({"pouch", mm(200), mm(300), true, true, Worth::whole(1)});
  job.rolls[0].length = mm(3000);
  for (const Aim aim : {Aim::most_worth, Aim::worth_less_time}) {
    const Comparison comparison = compare_ways(job, 0, aim);
    const Worth open = comparison.ways[0].plan->worth;
    for (const WayResult& way : comparison.ways) {
      EXPECT_EQ(way.refused.find("inspection"), std::string::npos) << way.refused;
      if (!way.plan) continue;
      EXPECT_EQ(inspect_plan(job, *way.plan), std::vector<std::string>{}) << way_name(way.way);
      if (aim == Aim::most_worth) {
        EXPECT_LE(way.plan->worth, open) << way_name(way.way);
        EXPECT_LE(way.plan->worth, way.plan->unmatched->worth) << way_name(way.way);
      }
    }
  }
}

// Small whole numbers as units: cloth, repeats and panels thrown.
struct SmallCase {
  Job job;
  int usable = 0, first = 0, tallest = 0, room = 0, from = 0;
};

SmallCase thrown(test::Dice& dice) {
  SmallCase c;
  c.job = seats();
  Fabric& fabric = c.job.rolls[0].fabric;
  fabric.width = Length::units(dice.from_to(8, 13));
  fabric.selvedge = Length::units(dice.from_to(0, 1));
  const int along = dice.from_to(3, 6), across = dice.coin() ? dice.from_to(3, 6) : 0;
  fabric.repeat = {Length::units(along), Length::units(across), Length::units(dice.from_to(0, along - 1)),
                   Length::units(across ? dice.from_to(0, across - 1) : 0), false};
  c.job.rolls[0].length = Length::units(dice.from_to(12, 30));
  c.job.table.length = Length::units(dice.from_to(8, 12));
  c.job.losses.squaring = Length::units(dice.from_to(0, 2));
  c.job.losses.allowance = Length::units(dice.from_to(0, 2));
  c.job.losses.fold_trim = Length::units(1);
  c.job.panels.clear();
  for (int n = dice.from_to(1, 2); n > 0; --n) {
    Panel p = seats().panels[0];
    p.name = std::to_string(n);
    p.across = Length::units(dice.from_to(2, 7));
    p.along = Length::units(dice.from_to(2, 7));
    p.worth = Worth::parts(dice.from_to(1, 30));
    p.match = n == 1 ? (dice.coin() ? Match::start : Match::centred)
                     : std::array{Match::none, Match::start, Match::centred}[static_cast<std::size_t>(dice.from_to(0, 2))];
    c.job.panels.push_back(p);
  }
  return c;
}

int number(Length l) { return static_cast<int>(l.units()); }

// The most that a roll gives, walked unit by unit: at each place a length of every
// size, beginning at a phase that a panel needs or at none.
std::int64_t slow_worth(const Job& job) {
  const Fabric& f = job.rolls[0].fabric;
  const int along = number(f.repeat.along), across = number(f.repeat.across);
  test::SlowRepeat repeat_x{across, {}}, repeat_y{along, {}};
  std::vector<test::SlowMatchedShape> shapes;
  const auto needed = [](Match match, Length size, Length repeat, test::SlowRepeat& kept) {
    const auto phase = matched_phase(match, size, repeat);
    if (phase) kept.kept.push_back(number(*phase));
    return phase ? number(*phase) : test::kLost;
  };
  for (const Panel& p : job.panels)
    shapes.push_back({number(p.across), number(p.along), needed(p.match, p.across, f.repeat.across, repeat_x),
                      needed(p.match, p.along, f.repeat.along, repeat_y), p.worth.parts()});
  const int first = across ? number(phase_at(f.selvedge, f.repeat.start_across, f.repeat.across)) : test::kLost;
  if (across) repeat_x.kept.push_back(first);
  test::SlowMatched cloth(shapes, repeat_x, repeat_y, true);
  const int allowance = number(job.losses.allowance), end = number(job.rolls[0].length - job.losses.squaring);
  std::map<int, std::int64_t> known;
  const std::function<std::int64_t(int)> best = [&](int at) -> std::int64_t {
    if (known.count(at)) return known[at];
    std::int64_t most = at < end ? best(at + 1) : 0;
    const int there = (at + allowance / 2 - number(f.repeat.start_along) + 10 * along) % along;
    const bool kept = std::find(repeat_y.kept.begin(), repeat_y.kept.end(), there) != repeat_y.kept.end();
    for (int size = 1; size <= number(job.table.length) && at + size + allowance <= end; ++size)
      most = std::max(most, cloth.best(first, number(f.usable_width()), kept ? there : test::kLost, size) +
                                best(at + size + allowance));
    return known[at] = most;
  };
  return best(number(job.losses.squaring));
}

TEST(MatchedPlanner, AgreesWithSlowCuttingOfSmallRolls) {
  test::Dice dice(test::first_seed());
  int planned_ones = 0;
  for (int round = 0; round < 150; ++round) {
    const SmallCase c = thrown(dice);
    const auto plan = plan_roll(c.job, 0, kOpen, Aim::most_worth);
    const std::int64_t slow = slow_worth(c.job);
    if (!plan) {
      EXPECT_EQ(slow, 0) << "round " << round << ": " << plan.problem().what;
      continue;
    }
    ++planned_ones;
    EXPECT_TRUE(plan->proof.proved);
    ASSERT_EQ(plan->worth.parts(), slow) << "round " << round;
  }
  EXPECT_GT(planned_ones, 30);
}

TEST(MatchedPlanner, RefusesARollThatItsEndsUseUp) {
  Job job = seats();
  job.losses.squaring = job.rolls[0].length / 2;
  EXPECT_EQ(plan_roll(job, 0, kOpen, Aim::most_worth).problem().what, "the roll is no longer than its end losses");
}

// Seats one wide that cost more time than they are worth; pouches need no match.
TEST(MatchedPlanner, LeavesOutWhatDoesNotPay) {
  Job job = seats();
  job.panels[0].worth = Worth::parts(1);
  EXPECT_EQ(plan_roll(job, 0, kOpen, Aim::worth_less_time).problem().what,
            "no panel that fits is worth the time of cutting it");
  job.panels.push_back({"pouch", mm(200), mm(300), true, true, Worth::whole(1)});
  const Plan plan = planned(job, kOpen, Aim::worth_less_time);
  EXPECT_EQ(plan.yield[0], 0);
  EXPECT_GT(plan.yield[1], 0);
}

// Plans within limits are not searched where panels must match: one that passes them is none.
TEST(MatchedPlanner, IsHeldToTheLimits) {
  Job job = seats();
  job.panels[0].at_most = 21;
  EXPECT_EQ(planned(job, kOpen).yield[0], 21);
  job.panels[0].at_most = 20;
  const auto refused = plan_roll(job, 0, kOpen, Aim::most_worth);
  ASSERT_FALSE(refused);
  EXPECT_NE(refused.problem().what.find("not searched where panels must match"), std::string::npos);
}

// Stopped, and nobody waits: what there is is sound, its bound holds for the whole, and it
// says that it was stopped where there is nothing.
TEST(MatchedPlanner, IsSoundWheneverItIsStopped) {
  Job job = seats();
  job.panels.push_back({"pouch", mm(200), mm(300), true, true, Worth::whole(1)});
  job.panels[1].match = Match::centred;
  const auto search = [&](const std::atomic<bool>* stopped) {
    return MatchedPlanner(job, 0, Aim::most_worth, SearchBudget{2'000'000, stopped}).plan(kHalf);
  };
  test::stop_at_moments(10, search, [&](const Result<Plan>& found, const Result<Plan>& whole) {
    ASSERT_TRUE(whole);
    if (!found) return;
    EXPECT_EQ(inspect_plan(job, *found), std::vector<std::string>());
    EXPECT_GE(found->proof.bound, whole->worth);
    EXPECT_TRUE(!found->proof.proved || found->worth == whole->worth);
  });
}

// On few places, too, what small rolls give is sound, bounded and no more than slow cutting
// gives; proved, it is as much.
TEST(MatchedPlanner, ClaimsNoMoreOfFewStepsThanSlowCuttingGives) {
  int proved = 0, open = 0;
  for (unsigned seed = 0; seed < 80; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    test::Dice dice(seed);
    const SmallCase c = thrown(dice);
    SearchBudget little;
    little.steps = std::int64_t{1} << dice.from_to(0, 12);
    const auto plan = plan_roll(c.job, 0, kOpen, Aim::most_worth, little);
    if (!plan) continue;
    const std::int64_t slow = slow_worth(c.job);
    EXPECT_EQ(inspect_plan(c.job, *plan), std::vector<std::string>());
    ASSERT_LE(plan->worth.parts(), slow);
    ASSERT_GE(plan->proof.bound.parts(), slow);
    if (plan->proof.proved) {
      ASSERT_EQ(plan->worth.parts(), slow);
    }
    ++(plan->proof.proved ? proved : open);
  }
  EXPECT_GT(proved, 5);
  EXPECT_GT(open, 5);
}

}  // namespace
}  // namespace foldyard
