#include "batch/left_out.h"

#include <gtest/gtest.h>

#include "core/support/order_job.h"

namespace foldyard {
namespace {

TEST(LeftOut, TakesRollsOutByName) {
  const Job job = test::order_job();
  const RollsIn in = without_rolls(job, {"moss 2", "no such roll"});
  ASSERT_EQ(in.job.rolls.size(), 2u);
  EXPECT_EQ(in.job.rolls[1].name, "sand 1");
  EXPECT_EQ(in.places, (std::vector<int>{0, 2}));
  EXPECT_EQ(in.job.order, job.order);
}

TEST(LeftOut, TellsThePlanInTheWholeJob) {
  BatchPlan plan;
  plan.rolls.resize(2);
  plan.rolls[0].roll = 0;
  plan.rolls[1].roll = 1;
  plan.lays = {{{{1, 0}}}};
  const BatchPlan whole = in_whole_job(plan, {0, 2});
  EXPECT_EQ(whole.rolls[0].roll, 0);
  EXPECT_EQ(whole.rolls[1].roll, 2);
  EXPECT_EQ(whole.lays, plan.lays);  // they count the plan's rolls
}

}  // namespace
}  // namespace foldyard
