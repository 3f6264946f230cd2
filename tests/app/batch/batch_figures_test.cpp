#include "batch/batch_figures.h"

#include <gtest/gtest.h>

#include "batch_sample.h"

namespace foldyard {
namespace {

// 3 of cloth worth 1000: 0.3 %; 3.01 would be more, so it is told as 0.4 %.
TEST(BatchFigures, RoundsTheGapUp) {
  BatchAnswer answer;
  answer.money.cloth = Worth::whole(1000);
  answer.plan.cost_bound = Worth::whole(900);
  answer.plan.cost = Worth::whole(903);
  EXPECT_EQ(gap_words(answer), "at most 0.3 % too much");
  answer.plan.cost += Worth::parts(100);
  EXPECT_EQ(gap_words(answer), "at most 0.4 % too much");
  answer.plan.proved = true;
  EXPECT_EQ(gap_words(answer), "proved");
}

// Goods that fill what would be left take their worth off the cost, even below
// nothing; the share is of the cloth, as batch_proof_words has it.
TEST(BatchFigures, TheGapIsAShareOfTheClothAsOnPaper) {
  BatchAnswer answer;
  answer.money.cloth = Worth::whole(200);
  answer.plan.cost = Worth::whole(10);
  answer.plan.cost_bound = Worth() - Worth::whole(2);
  EXPECT_EQ(gap_words(answer), "at most 6.0 % too much");
  EXPECT_TRUE(batch_proof_words(answer).contains("6.0 % of that cloth")) << batch_proof_words(answer).toStdString();
}

TEST(BatchFigures, SaysNoGapWhereTheBoundSaysNothing) {
  BatchAnswer answer;
  answer.plan.cost = Worth::whole(5);
  EXPECT_EQ(gap_words(answer), "");  // the cloth costs nothing
  answer.money.cloth = Worth::whole(5);
  answer.plan.filled_bound = Worth::whole(1);
  EXPECT_EQ(gap_words(answer), "");  // not filled
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
