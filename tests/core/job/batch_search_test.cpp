#include "job/batch_search.h"

#include <gtest/gtest.h>

#include "core/support/few_rounds.h"
#include "core/support/order_job.h"

namespace foldyard {
namespace {

using test::few_rounds;

TEST(BatchSearch, BettersItsPlanAndKeepsItsBounds) {
  const Job job = test::order_job();
  const Result<BatchCase> c = batch_case(job);
  std::vector<OrderScore> scores;
  BatchSearch* search = nullptr;
  BatchSearch run(job, *c, few_rounds(60), [&] { scores.push_back(search->score()); });
  search = &run;
  EXPECT_FALSE(run.is_proved());
  run.run();
  ASSERT_FALSE(scores.empty());
  for (std::size_t i = 1; i < scores.size(); ++i) EXPECT_TRUE(is_better(c->order, scores[i], scores[i - 1]));
  EXPECT_EQ(run.score().filled, 10'000 * (12 * 20 + 8 * 9));
  EXPECT_EQ(run.bounds().filled, run.score().filled);
  ASSERT_TRUE(run.bounds().has_cost);
  EXPECT_LE(run.bounds().cost, run.score().cost);
  // A tenth is far more than rounding costs here.
  EXPECT_GE(run.bounds().cost, run.score().cost / 10 * 8);
}

TEST(BatchSearch, BoundsWhatCanBeFilledWhereClothIsShort) {
  Job job = test::order_job();
  job.order.lines[0].must = 400;
  const Result<BatchCase> c = batch_case(job);
  BatchSearch run(job, *c, few_rounds(20), {});
  run.run();
  EXPECT_GT(run.score().filled, 0);
  EXPECT_GE(run.bounds().filled, run.score().filled);
  // By area: 7.8 + 4.8 + 5.8 m of 1.38 m hold no more than 51 carriers of 0.497 m².
  EXPECT_LE(run.bounds().filled, 10'000 * (51 * 20 + 8 * 9));
}

// Stopped as soon as a plan is found, a second, a third …: the plan stays what it was, and no
// bound is above what the whole search reaches.
TEST(BatchSearch, IsSoundWhereverItIsStopped) {
  Job job = test::order_job();
  job.order.lines[0].must = 30;
  const Result<BatchCase> c = batch_case(job);
  BatchSearch whole(job, *c, few_rounds(20), {});
  whole.run();
  for (int plans = 1; plans <= 4; ++plans) {
    std::atomic<bool> stopped = false;
    int found = 0;
    BatchBudget budget = few_rounds(20);
    budget.cancelled = &stopped;
    BatchSearch run(job, *c, budget, [&] { stopped = ++found >= plans; });
    run.run();
    EXPECT_FALSE(is_better(c->order, run.score(), whole.score())) << plans;
    EXPECT_GE(run.bounds().filled, whole.score().filled) << plans;
    if (run.bounds().has_cost) {
      EXPECT_LE(run.bounds().cost, whole.score().cost) << plans;
    }
  }
}

TEST(BatchSearch, FindsNothingButTheEmptyPlanWhereItIsStoppedAtOnce) {
  const Job job = test::order_job();
  const Result<BatchCase> c = batch_case(job);
  const std::atomic<bool> stopped = true;
  BatchBudget budget = few_rounds(20);
  budget.cancelled = &stopped;
  BatchSearch run(job, *c, budget, {});
  run.run();
  EXPECT_FALSE(run.is_proved());
  EXPECT_EQ(run.bounds().filled, 10'000 * (12 * 20 + 8 * 9));
}

// Rolls of two widths are two kinds, and a rule asks for more printed pouches than the
// printed cloth holds.
TEST(BatchSearch, BoundsAnOrderWhoseRuleCannotBeKept) {
  Job job = test::order_job();
  job.rolls[1].fabric.width = Length::mm(1500);
  job.rolls[2].length = Length::mm(900);
  job.order.lines[1] = {1, 30, 0, {}, 0, {{"printed", 25, {}}}};
  const Result<BatchCase> c = batch_case(job);
  ASSERT_TRUE(c) << c.problem().sentence();
  BatchSearch run(job, *c, few_rounds(4), {});
  run.run();
  EXPECT_GT(run.score().short_of_rules, 0);
  EXPECT_FALSE(run.is_proved());
  EXPECT_GE(run.bounds().filled, run.score().filled);
  // 0.66 m of 1.38 m hold no more than 7 fronts of 0.12 m², so 3 pouches.
  const OrderState& best = run.best();
  const auto sand = std::find(c->order.cloths.begin(), c->order.cloths.end(), "sand") - c->order.cloths.begin();
  EXPECT_LE(best.pieces[1][static_cast<std::size_t>(sand)], 3);
}

// Where cloth is short, rules or none, the bound on what is served is no more than it costs.
TEST(BatchSearch, BoundsTheCostOfWhatItServesWhereClothIsShort) {
  Job job = test::order_job();
  job.rolls.pop_back();
  job.rolls[0].length = job.rolls[1].length = Length::mm(1'500);
  job.order.lines = {{0, 30, 0, {}, 0, {{"moss", 2, {}}}}};
  const Result<BatchCase> c = batch_case(job);
  ASSERT_TRUE(c) << c.problem().sentence();
  BatchSearch run(job, *c, few_rounds(4), {});
  run.run();
  EXPECT_LT(run.score().filled, run.bounds().filled);
  EXPECT_EQ(run.score().short_of_rules, 0);
  ASSERT_TRUE(run.bounds().served_cost);
  EXPECT_LE(*run.bounds().served_cost, run.score().cost);
}

}  // namespace
}  // namespace foldyard
