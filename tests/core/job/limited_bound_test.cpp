#include "job/limited_bound.h"

#include <gtest/gtest.h>

#include "core/support/cushions.h"
#include "core/support/fold_ways.h"
#include "job/sum_up.h"

namespace foldyard {
namespace {

using test::few_cushions;
using test::kHalf;
using test::kOpen;

TEST(BoundInWorth, IsTheGainWhereWorthIsCounted) {
  const Job job = few_cushions();
  const LimitedCase c(job, 0, Aim::most_worth, {}, {});
  EXPECT_EQ(bound_in_worth(c, Worth::whole(26).parts() * c.scale), Worth::whole(26));
  EXPECT_EQ(bound_in_worth(c, Worth::whole(26).parts() * c.scale + c.scale - 1), Worth::whole(26));
}

// A plan's own value, as a bound, is never less than its net worth.
TEST(BoundInWorth, HoldsForThePlanThatReachesIt) {
  const Job job = few_cushions();
  for (const FoldWay& way : {kOpen, kHalf}) {
    const LimitedCase c(job, 0, Aim::worth_less_time, way, {});
    RollPlanner planner(job, 0, Aim::worth_less_time, {});
    const auto plan = planner.plan(way);
    ASSERT_TRUE(plan);
    const Worth bound = bound_in_worth(c, c.value_of(*plan));
    EXPECT_GE(bound, plan->net);
    EXPECT_LE(bound.parts(), plan->net.parts() + 200);
  }
}

}  // namespace
}  // namespace foldyard
