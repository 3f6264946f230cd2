#include "job/limited_way.h"

#include <gtest/gtest.h>

#include "core/support/cushions.h"
#include "core/support/fold_ways.h"
#include "inspect/inspect_plan.h"

namespace foldyard {
namespace {

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

}  // namespace
}  // namespace foldyard
