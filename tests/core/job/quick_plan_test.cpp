#include "job/quick_plan.h"

#include <gtest/gtest.h>

#include "core/support/slow_roll.h"
#include "core/support/way_title.h"
#include "inspect/inspect_plan.h"
#include "job/defaults.h"

namespace foldyard {
namespace {

Job six_panels() {
  Job job = default_job();
  job.rolls = {{"blue", default_fabric(), Length::mm(4'000)}};
  for (int i = 0; i < 6; ++i)
    job.panels.push_back({std::string(1, static_cast<char>('a' + i)), Length::mm(250 + 150 * i), Length::mm(1'000 - 150 * i), i % 2 == 0,
                          i % 3 != 0, Worth::whole(1 + i)});
  return job;
}

// What a plan says of the whole job is inspected like any other, with a bound
// that holds for any plan: the most there is, all of it.
std::vector<std::string> findings(const Job& job, Plan plan) {
  plan.proof.bound = Worth::whole(1'000'000);
  return inspect_plan(job, plan);
}

class QuickPlans : public testing::TestWithParam<FoldWay> {};

TEST_P(QuickPlans, ArePlansOfTheWholeJob) {
  const Job job = six_panels();
  for (const Aim aim : {Aim::most_worth, Aim::worth_less_time}) {
    const Result<Plan> plan = QuickPlanner(job, 0, aim).plan(GetParam());
    const Result<Plan> best = plan_roll(job, 0, GetParam(), aim);
    ASSERT_EQ(static_cast<bool>(plan), static_cast<bool>(best));
    if (!plan) continue;
    EXPECT_EQ(findings(job, *plan), std::vector<std::string>());
    EXPECT_EQ(plan->yield.size(), job.panels.size());
    EXPECT_FALSE(plan->proof.proved);
    if (aim == Aim::most_worth) {
      EXPECT_LE(plan->worth, best->worth);
    }
  }
}

TEST_P(QuickPlans, OfSmallJobsPassInspection) {
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + 30 && !HasFailure(); ++seed) {
    const test::SmallRoll r = test::throw_small_roll(seed, true);
    SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed) + ": " + test::text(r.cloth));
    const Job job = test::job_of(r, 60);
    const Result<Plan> plan = QuickPlanner(job, 0, Aim::most_worth).plan(GetParam());
    if (plan) {
      EXPECT_EQ(findings(job, *plan), std::vector<std::string>());
    }
  }
}

INSTANTIATE_TEST_SUITE_P(QuickPlan, QuickPlans, testing::ValuesIn(all_ways(6)), test::way_title);

// The seventh panel is not among the first six, but worth far more for its area.
TEST(QuickPlan, KeepsThePanelWorthMost) {
  Job job = six_panels();
  job.panels.push_back({"gold", Length::mm(100), Length::mm(100), false, false, Worth::whole(1'000)});
  const Result<Plan> plan = QuickPlanner(job, 0, Aim::most_worth).plan(FoldWay{});
  ASSERT_TRUE(plan);
  EXPECT_GT(plan->yield.back(), 0);
}

TEST(QuickPlan, RefusesWhereNoPanelFits) {
  Job job = six_panels();
  for (Panel& p : job.panels) p.across = p.along = Length::mm(9'000);
  EXPECT_FALSE(QuickPlanner(job, 0, Aim::most_worth).plan(FoldWay{}));
  // Turned they would be narrow enough and are too long, or the other way round.
  for (Panel& p : job.panels) p.may_turn = true, p.across = Length::mm(900'000), p.along = Length::mm(500);
  EXPECT_FALSE(QuickPlanner(job, 0, Aim::most_worth).plan(FoldWay{}));
  for (Panel& p : job.panels) p.across = Length::mm(500), p.along = Length::mm(900'000);
  EXPECT_FALSE(QuickPlanner(job, 0, Aim::most_worth).plan(FoldWay{}));
}

}  // namespace
}  // namespace foldyard
