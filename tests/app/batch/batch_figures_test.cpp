#include "batch/batch_figures.h"

#include <gtest/gtest.h>

#include "batch_sample.h"

namespace foldyard {
namespace {

// Bound 1000, cost 1003: 0.3 %; 1003.01 would be more, so it is told as 0.4 %.
TEST(BatchFigures, RoundsTheGapUp) {
  BatchPlan plan;
  plan.cost_bound = Worth::whole(1000);
  plan.cost = Worth::whole(1003);
  EXPECT_EQ(gap_words(plan), "at most 0.3 % too much");
  plan.cost += Worth::parts(100);
  EXPECT_EQ(gap_words(plan), "at most 0.4 % too much");
  plan.proved = true;
  EXPECT_EQ(gap_words(plan), "proved");
}

TEST(BatchFigures, SaysNoGapWhereTheBoundSaysNothing) {
  BatchPlan plan;
  plan.cost = Worth::whole(5);
  EXPECT_EQ(gap_words(plan), "");  // the bound is 0
  plan.cost_bound = Worth::whole(4);
  plan.filled_bound = Worth::whole(1);
  EXPECT_EQ(gap_words(plan), "");  // not filled
}

TEST(BatchFigures, CountsPiecesOfThoseAskedFor) {
  BatchFigures figures;
  EXPECT_TRUE(figures.isHidden());
  BatchAnswer answer;
  answer.job = test::order_job();
  answer.plan.made = {{0, "moss", 7}, {0, "sand", 3}, {1, "sand", 9}};
  figures.show_answer(&answer);
  EXPECT_EQ(figures.text(BatchFigures::pieces), "18 of 20");  // 10 of 12, 8 of 8
  EXPECT_EQ(figures.words(BatchFigures::pieces), "pieces, and 1 more");
  figures.show_answer(nullptr);
  EXPECT_TRUE(figures.isHidden());
}

}  // namespace
}  // namespace foldyard
