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

}  // namespace
}  // namespace foldyard
