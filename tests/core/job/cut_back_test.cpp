#include "job/cut_back.h"

#include <gtest/gtest.h>

#include "core/support/cushions.h"
#include "core/support/planned.h"
#include "inspect/inspect_plan.h"
#include "job/defaults.h"

namespace foldyard {
namespace {

using test::kHalf;

// Cloth 1500 with selvedges of 10 takes three carriers across; a length of 1800
// is two rows of them.
Job carriers_off_the_fold() {
  Job job = default_job();
  job.rolls = {test::cushion_cloth("grey", Length::mm(2000))};
  job.panels = {{"carrier", Length::mm(450), Length::mm(900), false, false, Worth::whole(3)}};
  return job;
}

TEST(CutBack, LeavesWholeTakesUncut) {
  const Job job = carriers_off_the_fold();
  const auto plan = plan_roll(job, 0, kHalf, Aim::most_worth);
  ASSERT_TRUE(plan);
  const Pattern& whole = plan->patterns.front();
  const auto copies = copies_in(whole, 1);
  ASSERT_GE(copies[0], 2);
  for (std::int64_t most = copies[0]; most >= 0; --most) {
    const auto less = cut_back(job, job.rolls[0], whole, {most});
    const std::int64_t kept = most / 2 * 2;  // not on the fold, takes are of two plies
    ASSERT_EQ(less.has_value(), kept > 0);
    if (less) {
      EXPECT_EQ(copies_in(*less, 1)[0], kept);
      EXPECT_LE(less->cuts.size(), whole.cuts.size());
    }
  }
}

TEST(CutBack, DropsATakeThatGivesNoPanel) {
  Job job = carriers_off_the_fold();
  job.panels[0].across = Length::mm(200);  // three beside each other on each side of the fold
  Pattern whole = test::planned(job, kHalf).patterns.front();
  const PlacedPanel first = whole.panels.front();
  ASSERT_NE(whole.panels.back().folded, first.folded);
  std::erase_if(whole.panels, [&](const PlacedPanel& p) { return p.folded == first.folded; });
  const auto less = cut_back(job, job.rolls[0], whole, {kNoLimit});
  ASSERT_TRUE(less);
  EXPECT_EQ(less->panels.size(), whole.panels.size());
  whole.panels.clear();
  EXPECT_FALSE(cut_back(job, job.rolls[0], whole, {kNoLimit}));
}

TEST(CutBack, LeavesAPatternWithinTheLimitsAsItIs) {
  const Job job = carriers_off_the_fold();
  const auto plan = plan_roll(job, 0, {}, Aim::most_worth);
  ASSERT_TRUE(plan);
  const auto same = cut_back(job, job.rolls[0], plan->patterns.front(), {kNoLimit});
  ASSERT_TRUE(same);
  EXPECT_EQ(same->panels, plan->patterns.front().panels);
  EXPECT_EQ(same->travel, plan->patterns.front().travel);
}

TEST(CutBack, ReadsTheLimitsOfAJob) {
  Job job = carriers_off_the_fold();
  EXPECT_EQ(limits_of(job), std::vector<std::int64_t>{kNoLimit});
  job.panels[0].at_most = 4;
  EXPECT_EQ(limits_of(job), std::vector<std::int64_t>{4});
  EXPECT_TRUE(is_within({4}, limits_of(job)));
  EXPECT_FALSE(is_within({5}, limits_of(job)));
}

}  // namespace
}  // namespace foldyard
