#include "job/most_cutting.h"

#include <gtest/gtest.h>

#include "core/support/cushions.h"
#include "job/plan_roll.h"

namespace foldyard {
namespace {

Job one_roll() {
  Job job;
  job.rolls.emplace_back();
  job.rolls[0].fabric.width = Length::mm(1'400);
  job.rolls[0].length = Length::mm(10'000);
  job.panels.emplace_back();
  job.panels[0].across = Length::mm(100);
  job.panels[0].along = Length::mm(200);
  job.pace = {};
  return job;
}

TEST(MostCutting, IsTheExampleOfItsHeader) {
  Job job = one_roll();
  job.pace.handle = Duration::seconds(5);
  EXPECT_EQ(most_cutting_hours(job), 1);
  job.pace.handle = Duration::seconds(36);  // 700 panels are 7 hours just
  EXPECT_EQ(most_cutting_hours(job), 7);
}

TEST(MostCutting, CountsEachStepAndTheAllowance) {
  Job job = one_roll();
  job.pace.cross_cut = Duration::seconds(36);  // 100 lengths of the short side: 1 h
  EXPECT_EQ(most_cutting_hours(job), 1);
  job.pace.fold = Duration::seconds(36);       // 12 h more
  EXPECT_EQ(most_cutting_hours(job), 13);
  job.pace.lift = Duration::seconds(72);       // 2 h
  EXPECT_EQ(most_cutting_hours(job), 15);
  job.pace.unroll = Duration::seconds(3'600);
  EXPECT_EQ(most_cutting_hours(job), 16);
  job.pace.mark = Duration::seconds(9);        // four sides of 700 panels: 7 h
  EXPECT_EQ(most_cutting_hours(job), 23);
  job.pace.allowance_percent = 100;
  EXPECT_EQ(most_cutting_hours(job), 46);
  job.rolls.push_back(job.rolls[0]);
  EXPECT_EQ(most_cutting_hours(job), 92);
}

// 560 m of edges and 140 m of cross-cuts.
TEST(MostCutting, CountsTheTravelOfTheCutter) {
  Job job = one_roll();
  job.pace.ms_per_metre = 18'000;
  EXPECT_EQ(most_cutting_hours(job), 4);  // 12 600 s are 3.5 h
}

TEST(MostCutting, IsNoLessThanAnyPlanTakes) {
  Job job = test::cushions();
  job.pace.allowance_percent = 15;
  const Comparison comparison = compare_ways(job, 0, Aim::most_worth);
  for (const WayResult& result : comparison.ways)
    if (result.plan) { EXPECT_LE(result.plan->time, Duration::seconds(3'600) * most_cutting_hours(job)); }
}

}  // namespace
}  // namespace foldyard
