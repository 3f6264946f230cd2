#include "job/yield_range.h"

#include <gtest/gtest.h>

#include "core/support/dice.h"
#include "core/support/fold_ways.h"
#include "core/support/stopped_after.h"
#include "job/defaults.h"

namespace foldyard {
namespace {

using test::Dice;
using test::kHalf;
using test::kOpen;

Panel panel(const std::string& name, int across, int along, int worth) {
  Panel p;
  p.name = name;
  p.across = Length::mm(across);
  p.along = Length::mm(along);
  p.worth = Worth::whole(worth);
  return p;
}

// A roll 1 m wide of 100 g/m² weighs 1 g for 10 mm: `grams` with their give.
Job weighed_job(int grams, int give) {
  Job job = default_job();
  Roll roll{"weighed", default_fabric(), Length::mm(10 * (grams - give))};
  roll.fabric.width = Length::mm(1000);
  roll.fabric.selvedge = Length();
  roll.measured = ByWeight{{grams, give}, {0, 0}, {1000, 0}};
  job.rolls = {roll};
  job.panels = {panel("large", 1000, 300, 9)};
  job.losses.squaring = job.losses.allowance = Length();
  return job;
}

Job mixed_job(int grams, int give) {
  Job job = weighed_job(grams, give);
  job.panels = {panel("large", 480, 710, 9), panel("middle", 330, 420, 5), panel("small", 230, 190, 2)};
  job.losses.squaring = Length::mm(30);
  job.losses.allowance = Length::mm(10);
  return job;
}

Job at_length(Job job, Length length) {
  job.rolls[0].length = length;
  return job;
}

std::optional<Plan> best(const Job& job, Length length, const FoldWay& way, Aim aim) {
  const Result<Plan> plan = plan_roll(at_length(job, length), 0, way, aim);
  return plan ? std::optional<Plan>(*plan) : std::nullopt;
}

const LengthStep& step_at(const LengthSteps& steps, Length length) {
  const LengthStep* last = &steps.steps.front();
  for (const LengthStep& step : steps.steps)
    if (step.from <= length) last = &step;
  return *last;
}

// 75 ± 25 g are 50 to 100 cm; panels of 30 cm fill the width.
TEST(YieldRange, HasTheHeadersExample) {
  const YieldRange range = yield_range(weighed_job(75, 25), 0, kOpen, Aim::most_worth).value();
  EXPECT_EQ(range.estimate, (LengthEstimate{Length::mm(500), Length::mm(750), Length::mm(1000)}));
  EXPECT_EQ(range.first.yield, std::vector<std::int64_t>{1});
  EXPECT_EQ(range.likely.yield, std::vector<std::int64_t>{2});
  EXPECT_EQ(range.yield, (std::vector<CountRange>{{1, 2, 3}}));
  ASSERT_EQ(range.steps.steps.size(), 3u);
  EXPECT_EQ(range.steps.steps[1].from, Length::mm(600));
  EXPECT_EQ(range.steps.steps[2].from, Length::mm(900));
  ASSERT_EQ(range.further.steps.size(), 3u);
  EXPECT_FALSE(range.further.steps[0].plan);
  EXPECT_EQ(range.further.steps[1].from, Length::mm(300));
  EXPECT_EQ(range.further.steps[1].plan->yield, std::vector<std::int64_t>{1});
  EXPECT_EQ(range.further.steps[2].from, Length::mm(600));
  EXPECT_EQ(range.most_lost, Worth());
  EXPECT_TRUE(range.proved);
}

class Ranges : public testing::TestWithParam<std::pair<FoldWay, Aim>> {};

// Each step is reached at its length and not one unit before, and nothing rises between.
TEST_P(Ranges, StepExactlyWhereTheBestPlanGetsBetter) {
  const auto [way, aim] = GetParam();
  const Job job = mixed_job(260, 30);
  const YieldRange range = yield_range(job, 0, way, aim).value();
  ASSERT_TRUE(range.proved);
  ASSERT_GE(range.steps.steps.size(), 3u);
  for (std::size_t i = 1; i < range.steps.steps.size(); ++i) {
    const LengthStep& step = range.steps.steps[i];
    EXPECT_EQ(value_of(best(job, step.from, way, aim)), value_of(step.plan));
    EXPECT_LT(value_of(best(job, step.from - Length::units(1), way, aim)), value_of(step.plan));
    if (range.steps.is_all) {
      EXPECT_EQ(value_of(best(job, step.from - Length::units(1), way, aim)),
                value_of(range.steps.steps[i - 1].plan));
    }
  }
}

// Whatever the roll turns out to be: what the order says can be cut from it, and
// it loses no more than it says against having known.
TEST_P(Ranges, OrderCanBeCutFromAnyLengthAndLosesNoMoreThanItSays) {
  const auto [way, aim] = GetParam();
  const Job job = mixed_job(230, 14);
  const YieldRange range = yield_range(job, 0, way, aim).value();
  ASSERT_TRUE(range.most_lost);
  Dice dice(test::first_seed());
  for (int n = 0; n < 25; ++n) {
    const Length found = Length::units(dice.from_to(static_cast<int>(range.estimate.least.units()),
                                                    static_cast<int>(range.estimate.most.units())));
    const Length goes_on = found - range.first.remnant.from;
    const LengthStep& more = step_at(range.further, goes_on);
    Length needed = range.first.remnant.from + job.losses.squaring;
    if (more.plan) needed += more.plan->remnant.from - job.losses.squaring;
    EXPECT_LE(needed, found);
    const Worth so = value_of(range.first) + value_of(more.plan), known = value_of(best(job, found, way, aim));
    EXPECT_LE(known - so, *range.most_lost) << found.units();
    if (aim == Aim::most_worth) {
      EXPECT_LE(so, known) << found.units();
    }
  }
}

TEST_P(Ranges, HoldTheYieldOfEveryLengthTheyStepTo) {
  const auto [way, aim] = GetParam();
  const YieldRange range = yield_range(mixed_job(260, 30), 0, way, aim).value();
  for (const LengthStep& step : range.steps.steps)
    for (std::size_t i = 0; i < range.yield.size(); ++i) {
      EXPECT_LE(range.yield[i].least, step.plan->yield[i]);
      EXPECT_GE(range.yield[i].most, step.plan->yield[i]);
    }
}

INSTANTIATE_TEST_SUITE_P(OpenAndInHalf, Ranges,
                         testing::Values(std::pair{kOpen, Aim::most_worth}, std::pair{kHalf, Aim::most_worth},
                                         std::pair{kHalf, Aim::worth_less_time}));

TEST(YieldRange, IsRefusedWhereTheLengthIsNoEstimate) {
  Job job = weighed_job(75, 25);
  job.rolls[0].is_found = true;
  EXPECT_FALSE(yield_range(job, 0, kOpen, Aim::most_worth));
  job.rolls[0].measured.reset();
  EXPECT_FALSE(yield_range(job, 0, kOpen, Aim::most_worth));
}

TEST(YieldRange, IsRefusedWhereTheLeastLengthGivesNothing) {
  EXPECT_TRUE(yield_range(weighed_job(75, 45), 0, kOpen, Aim::most_worth));  // from 30 cm
  EXPECT_FALSE(yield_range(weighed_job(75, 46), 0, kOpen, Aim::most_worth));
}

TEST(YieldRange, IsRefusedWhereTheMeasureIs) {
  Job job = weighed_job(75, 25);
  job.rolls[0].measured = ByWeight{{75, 25}, {900, 0}, {1000, 0}};  // the tube weighs more
  const auto refused = yield_range(job, 0, kOpen, Aim::most_worth);
  ASSERT_FALSE(refused);
  EXPECT_NE(refused.problem().where, "");
}

// One large panel is wanted, and the least length gives it: nothing further is to be cut.
TEST(YieldRange, EndsWhereAllThatIsWantedIsCut) {
  Job job = weighed_job(75, 25);
  job.panels[0].at_most = 1;
  const YieldRange range = yield_range(job, 0, kOpen, Aim::most_worth).value();
  EXPECT_EQ(range.yield, (std::vector<CountRange>{{1, 1, 1}}));
  for (const LengthStep& step : range.further.steps) EXPECT_FALSE(step.plan);
  EXPECT_EQ(range.most_lost, Worth());
  EXPECT_TRUE(range.proved);
}

// Two are, of three that the most length gives: one more goes on from 30 cm, and no more.
TEST(YieldRange, GoesNoFurtherThanIsWanted) {
  Job job = weighed_job(75, 25);
  job.panels[0].at_most = 2;
  const YieldRange range = yield_range(job, 0, kOpen, Aim::most_worth).value();
  EXPECT_EQ(range.yield, (std::vector<CountRange>{{1, 2, 2}}));
  ASSERT_EQ(range.further.steps.size(), 2u);
  EXPECT_EQ(range.further.steps[1].from, Length::mm(300));
}

TEST(YieldRange, IsWholeOrRefusedWheneverItIsStopped) {
  const Job job = mixed_job(230, 14);
  const auto search = [&](const std::atomic<bool>* stopped) {
    return yield_range(job, 0, kOpen, Aim::most_worth, SearchBudget{40'000'000, stopped});
  };
  test::stop_at_moments(8, search, [&](const Result<YieldRange>& found, const Result<YieldRange>& whole) {
    ASSERT_TRUE(whole);
    EXPECT_FALSE(found && !(*found == *whole));
    if (!found) {
      EXPECT_FALSE(found.problem().what.empty());
    }
  });
}

TEST(YieldRange, IsRefusedOnceStopped) {
  const std::atomic<bool> stopped = true;
  SearchBudget budget;
  budget.cancelled = &stopped;
  EXPECT_FALSE(yield_range(weighed_job(75, 25), 0, kOpen, Aim::most_worth, budget));
}

// 30 cm gone of 100: a flaw from 20 to 40 is now before 10, one from 50 to 60 at 20
// to 30, one before 30 gone; repeats that began at 10, 74 … now begin at 44.
TEST(RestOfRoll, KeepsFlawsAndRepeatsWhereTheyLieOnTheCloth) {
  Job job = weighed_job(75, 25);
  const auto flaw = [](int from, int to) {
    return Flaw{{Length::mm(from), Length::mm(to)}, {Length(), Length::mm(50)}, ""};
  };
  job.rolls[0].flaws = {flaw(100, 200), flaw(200, 400), flaw(500, 600), flaw(950, 990)};
  job.rolls[0].fabric.repeat.along = Length::mm(640);
  job.rolls[0].fabric.repeat.start_along = Length::mm(100);
  job.panels[0].at_most = 3;
  Plan plan;
  plan.remnant = {Length::mm(300), Length::mm(500)};
  plan.yield = {2};
  const Job rest = rest_of_roll(job, plan, Length::mm(960));
  EXPECT_EQ(rest.rolls[0].length, Length::mm(660));
  EXPECT_EQ(rest.rolls[0].flaws, (std::vector<Flaw>{flaw(0, 100), flaw(200, 300), flaw(650, 660)}));
  EXPECT_EQ(rest.rolls[0].fabric.repeat.start_along, Length::mm(440));
  EXPECT_EQ(rest.panels[0].at_most, 1);
  EXPECT_EQ(rest.pace.unroll, Duration());
}

// Squared once already: 3 cm of the new free end stand for what is gone.
TEST(RestOfRoll, GivesTheSquaredEndBack) {
  Job job = weighed_job(75, 25);
  job.losses.squaring = Length::mm(30);
  Plan plan;
  plan.remnant = {Length::mm(330), Length::mm(470)};
  plan.yield = {1};
  EXPECT_EQ(rest_of_roll(job, plan, Length::mm(960)).rolls[0].length, Length::mm(660));
}

// A repeat that begins further on than one of it before the cut: 64 cm from 10 cm on, 30 cm
// gone, begin at 44; from 50 cm on, at 20.
TEST(RestOfRoll, CountsRepeatsFromTheNewEnd) {
  Job job = weighed_job(75, 25);
  job.rolls[0].fabric.repeat.along = Length::mm(640);
  Plan plan;
  plan.remnant = {Length::mm(300), Length::mm(500)};
  plan.yield = {0};
  for (const auto& [before, after] : {std::pair{100, 440}, {500, 200}, {300, 0}}) {
    job.rolls[0].fabric.repeat.start_along = Length::mm(before);
    EXPECT_EQ(rest_of_roll(job, plan, Length::mm(960)).rolls[0].fabric.repeat.start_along, Length::mm(after));
  }
}

// Panels 5 mm high get better a hundred times between 50 and 100 cm, more often than is told.
TEST(YieldRange, SaysNothingOfWhatIsLostWhereNotEveryStepIsKnown) {
  Job job = weighed_job(75, 25);
  job.panels = {panel("ribbon", 1000, 5, 1)};
  const YieldRange range = yield_range(job, 0, kOpen, Aim::most_worth).value();
  EXPECT_FALSE(range.steps.is_all);
  EXPECT_FALSE(range.most_lost);
  EXPECT_EQ(range.yield, (std::vector<CountRange>{{100, 150, 200}}));
}

}  // namespace
}  // namespace foldyard
