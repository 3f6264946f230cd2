#include "job/limited_way.h"

#include <gtest/gtest.h>

#include "core/support/borne_out.h"
#include "core/support/cushions.h"
#include "core/support/dice.h"
#include "core/support/fold_ways.h"
#include "core/support/planned.h"
#include "core/support/slow_roll.h"
#include "core/support/stopped_after.h"
#include "inspect/inspect_plan.h"
#include "job/limits.h"

namespace foldyard {
namespace {

using test::aimed_worth;
using test::few_cushions;
using test::kHalf;
using test::kOpen;

TEST(LimitedWay, ProvesAPlanThatCutsAllThatIsWanted) {
  const Job job = few_cushions();
  for (const FoldWay& way : {kOpen, kHalf}) {
    const auto plan = LimitedWay(job, 0, Aim::most_worth, way, {}, {}).run(10);
    ASSERT_TRUE(plan) << way_key(way);
    EXPECT_EQ(plan->yield, (std::vector<std::int64_t>{7, 5}));
    EXPECT_TRUE(plan->proof.proved);
    EXPECT_EQ(inspect_plan(job, *plan), std::vector<std::string>());
  }
}

TEST(LimitedWay, FoldsNothingThatGivesMoreThanIsWanted) {
  Job job = few_cushions();
  for (Panel& p : job.panels) p.on_fold = false, p.at_most = 1;
  const auto plan = LimitedWay(job, 0, Aim::most_worth, kHalf, {}, {}).run(10);
  ASSERT_FALSE(plan);
  EXPECT_EQ(plan.problem().what, "within the limits on copies no panel can be cut so");
}

TEST(LimitedWay, StopsWhenItIsCancelled) {
  const Job job = few_cushions();
  std::atomic<bool> stop = true;
  const auto plan = LimitedWay(job, 0, Aim::most_worth, FoldWay{}, {40'000'000, &stop}, {}).run(10);
  EXPECT_FALSE(plan);
}

TEST(LimitedWay, BoundsWhatFewStepsCannotProve) {
  Job job = few_cushions();
  job.panels[0].at_most = 5;
  job.panels[1].at_most.reset();
  const auto full = LimitedWay(job, 0, Aim::most_worth, FoldWay{}, {}, {}).run(30);
  SearchBudget little;
  little.steps = 200;
  const auto cut_short = LimitedWay(job, 0, Aim::most_worth, FoldWay{}, little, {}).run(1);
  ASSERT_TRUE(full);
  ASSERT_TRUE(cut_short);
  EXPECT_LE(full->worth, cut_short->proof.bound);
  EXPECT_LE(cut_short->worth, full->worth);
}

// Through both plies a take is two of what one is wanted of.
Job single_cushions() {
  Job job = few_cushions();
  for (Panel& p : job.panels) p.on_fold = false, p.at_most = 1;
  return job;
}

TEST(LimitedWay, SaysWhyNothingIsCut) {
  const Job job = single_cushions();
  SearchBudget little;
  little.steps = 3'000;
  EXPECT_EQ(LimitedWay(job, 0, Aim::worth_less_time, kHalf, little, {}).run(10).problem().what,
            "within the limits on copies no panel was found that is worth the time of cutting it");
  EXPECT_EQ(LimitedWay(job, 0, Aim::most_worth, kHalf, little, {}).run(1).problem().what,
            "no way was found to cut within the limits on copies");
}

TEST(LimitedWay, PassesOnWhyTheClothCannotBeFoldedSo) {
  Job job = few_cushions();
  job.rolls[0].fabric.nap = Nap::one_way;
  const auto plan = LimitedWay(job, 0, Aim::most_worth, test::kOpenEndToEnd, {}, {}).run(10);
  ASSERT_FALSE(plan);
  EXPECT_NE(plan.problem().what.find("one-way"), std::string::npos);
}

// So many panels with so large limits that no enumeration can count them: what prices leave
// between plan and bound stays open.
TEST(LimitedWay, BoundsWhatCannotBeCounted) {
  Job job = test::cushions();
  job.panels.clear();
  for (int i = 0; i < 40; ++i)
    job.panels.push_back({"panel " + std::to_string(i), Length::mm(300 + 100 * (i % 3)),
                          Length::mm(350 + 150 * (i % 4)), false, true, Worth::parts(60'000 - 1'000 * i),
                          limits::kAtMost.most});
  for (int i = 0; i < 9; ++i) job.panels[static_cast<std::size_t>(i)].at_most = 1 + i % 2;
  const auto plan = LimitedWay(job, 0, Aim::most_worth, kOpen, {}, {}).run(4);
  ASSERT_TRUE(plan) << plan.problem().sentence();
  EXPECT_FALSE(plan->proof.proved);
  EXPECT_LT(plan->worth, plan->proof.bound);
  EXPECT_EQ(plan->proof.note.find("this is the best found within the limits on copies"), 0u) << plan->proof.note;
  EXPECT_EQ(inspect_plan(job, *plan), std::vector<std::string>());
  for (std::size_t p = 0; p < 9; ++p) EXPECT_LE(plan->yield[p], *job.panels[p].at_most);
}

TEST(LimitedWay, IsSoundWheneverItIsStopped) {
  const Job job = few_cushions();
  for (const Aim aim : {Aim::most_worth, Aim::worth_less_time}) {
    const auto search = [&](const std::atomic<bool>* stopped) {
      return LimitedWay(job, 0, aim, kHalf, SearchBudget{100'000, stopped}, {}).run(12);
    };
    test::stop_at_moments(10, search, [&](const Result<Plan>& found, const Result<Plan>& whole) {
      test::expect_sound_or_stopped(job, found, whole);
    });
  }
}

void expect_limits_kept(const Job& job, const Result<Plan>& plan) {
  if (!plan) return;
  EXPECT_EQ(inspect_plan(job, *plan), std::vector<std::string>());
  EXPECT_LE(aimed_worth(*plan), plan->proof.bound.parts());
  for (std::size_t p = 0; p < job.panels.size(); ++p) {
    EXPECT_LE(plan->yield[p], job.panels[p].at_most.value_or(plan->yield[p]));
  }
}

// Small random rolls with limits: the bound of a search cut short holds for the whole one, and
// what it proves is no less. Net worth is rounded to a part.
TEST(LimitedWay, ClaimsNoMoreOfFewStepsThanAllBearOut) {
  int both = 0;
  const std::vector<FoldWay> ways = all_ways(4);
  for (unsigned seed = 0; seed < 60 && !testing::Test::HasFailure(); ++seed) {
    test::Dice dice(seed);
    Job job = test::job_of(test::throw_small_roll(seed, true), 60);
    for (Panel& p : job.panels)
      if (dice.from_to(0, 2) > 0) p.at_most = dice.from_to(1, 7);
    const Aim aim = dice.coin() ? Aim::most_worth : Aim::worth_less_time;
    const FoldWay& way = ways[static_cast<std::size_t>(dice.from_to(0, static_cast<int>(ways.size()) - 1))];
    SCOPED_TRACE("seed " + std::to_string(seed) + ", " + way_key(way));
    SearchBudget much, little;
    much.steps = 4'000'000;
    little.steps = std::int64_t{1} << dice.from_to(0, 18);
    const auto all = LimitedWay(job, 0, aim, way, much, {}).run(12);
    const auto few = LimitedWay(job, 0, aim, way, little, {}).run(dice.from_to(1, 12));
    expect_limits_kept(job, all);
    expect_limits_kept(job, few);
    if (!all || !few) continue;
    ++both;
    test::expect_borne_out(*few, *all);
  }
  EXPECT_GT(both, 10);
}

}  // namespace
}  // namespace foldyard
