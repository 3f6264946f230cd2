#include "job/limited_pool.h"

#include <gtest/gtest.h>

#include "core/support/cushions.h"
#include "inspect/inspect_plan.h"
#include "job/defaults.h"

namespace foldyard {
namespace {

Job few_carriers(std::int64_t most) {
  Job job = default_job();
  job.rolls = {test::cushion_cloth("grey", Length::mm(4000))};
  job.panels = {{"carrier", Length::mm(450), Length::mm(900), false, true, Worth::whole(3), most}};
  return job;
}

// Patterns of a plan without limits, laid again within them.
TEST(LimitedPool, LaysPatternsWithinTheLimits) {
  const auto whole = plan_roll(few_carriers(1000), 0, {}, Aim::most_worth);
  ASSERT_TRUE(whole);
  for (std::int64_t most : {0, 1, 4, 7}) {
    const Job job = few_carriers(most);
    const LimitedCase c(job, 0, Aim::most_worth, FoldWay{}, {});
    LimitedPool pool(c);
    for (const Pattern& p : whole->patterns) pool.add(p);
    pool.improve({0}, 10'000);
    EXPECT_EQ(pool.has_plan(), most > 0);
    if (!pool.has_plan()) continue;
    EXPECT_EQ(pool.best().yield[0], most);
    EXPECT_EQ(pool.value(), most * Worth::whole(3).parts() * c.scale);
    Plan plan = pool.best();
    plan.proof.bound = plan.worth;
    EXPECT_EQ(inspect_plan(job, plan), std::vector<std::string>());
  }
}

TEST(LimitedCase, CountsAPlanAsItsAimDoes) {
  const Job job = few_carriers(5);
  const auto plan = plan_roll(few_carriers(1000), 0, {}, Aim::worth_less_time);
  ASSERT_TRUE(plan);
  const LimitedCase by_worth(job, 0, Aim::most_worth, FoldWay{}, {});
  EXPECT_EQ(by_worth.value_of(*plan), plan->worth.parts() * by_worth.scale);
  // In ticks of basic time; unrolling is the same for every plan and left out.
  const LimitedCase by_time(job, 0, Aim::worth_less_time, FoldWay{}, {});
  const double hour = static_cast<double>(Duration::seconds(3600).ticks());
  const double with_allowance = 1 + job.pace.allowance_percent / 100.0;
  const double net = (static_cast<double>(by_time.value_of(*plan)) - static_cast<double>(job.pace.unroll.ticks())) *
                     with_allowance * static_cast<double>(job.pace.rate.parts()) / hour;
  EXPECT_NEAR(net, static_cast<double>(plan->net.parts()), 2);
}

}  // namespace
}  // namespace foldyard
