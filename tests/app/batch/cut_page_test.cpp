#include "batch/cut_page.h"

#include <gtest/gtest.h>

#include "batch/cut_history.h"
#include "batch/hand_lists.h"
#include "batch/hand_page.h"
#include "batch/pin_edits.h"
#include "batch_sample.h"
#include "job/mark_cut.h"
#include "support/strict_tester.h"

namespace foldyard {
namespace {

Job cut_job() {
  Job job = test::order_job();
  job.history = {{"Monday", 2, {{0, "moss", {}, 6}}},
                 {"Tuesday", 1, {{2, "sand", {"printed"}, 4}}, {{0, "sand", {"printed"}, 1}},
                  {{"sand 1", Length::mm(1'500), Length::mm(2'000)}, {"sand 2", Length::mm(900), Length()}}}};
  job.on_hand = {{0, "moss", {}, 6}, {2, "sand", {"printed"}, 4}};
  return job;
}

TEST(CutHistory, SaysWhenAndWhat) {
  const auto rows = history_rows(cut_job());
  ASSERT_EQ(rows.size(), 2u);
  ASSERT_EQ(rows[0].size(), history_head().size());
  EXPECT_EQ(rows[0][0], "Tuesday");  // the last first
  EXPECT_EQ(rows[0][2], "4 × front of sand");
  EXPECT_EQ(rows[0][3], "1 × body of sand");
  EXPECT_EQ(rows[0][4], "sand 1: 150 cm cut off, 200 cm left\nsand 2: 90 cm cut off, none left");
  EXPECT_EQ(rows[1], (QStringList{"Monday", "2", "6 × body of moss", "", ""}));
}

TEST(CutPage, FollowsWhatIsMarkedAndUndone) {
  Document document;
  const BatchAnswerPtr answer = sample::answer_of(test::order_job());
  document.open(answer->job, {});
  CutPage page(document);
  StrictTester history(page.history()), on_hand(page.on_hand()->model());
  EXPECT_EQ(page.history()->rowCount(), 0);
  const auto next = mark_cut(answer->job, answer->plan, all_cut(answer->plan, "Monday"));
  ASSERT_TRUE(next);
  EXPECT_FALSE(document.edit(*next, "mark"));
  EXPECT_EQ(page.history()->rowCount(), 1);
  EXPECT_EQ(page.history()->index(0, 0).data().toString(), "Monday");
  EXPECT_EQ(page.on_hand()->model()->rowCount(), static_cast<int>(next->on_hand.size()));
  document.history().undo();
  EXPECT_EQ(page.history()->rowCount(), 0);
}

TEST(CutPage, WhatIsOnHandCanBeCountedAnew) {
  Document document;
  document.open(cut_job(), {});
  CutPage page(document);
  auto* model = page.on_hand()->model();
  EXPECT_TRUE(model->setData(model->index(0, static_cast<int>(OnHandColumn::count)), "5", Qt::EditRole));
  EXPECT_EQ(document.job().on_hand[0].count, 5);
  EXPECT_FALSE(model->setData(model->index(0, static_cast<int>(OnHandColumn::count)), "0", Qt::EditRole));
  page.on_hand()->table()->choose(1);
  page.on_hand()->taker()->click();
  EXPECT_EQ(document.job().on_hand.size(), 1u);
  while (document.history().canUndo()) document.history().undo();
  EXPECT_EQ(document.job(), cut_job());
}

TEST(HandPage, KeptLengthsAreCountedAndLetGo) {
  const BatchAnswerPtr answer = sample::answer_of(test::order_job());
  const Job kept = with_lay_kept(answer->job, answer->plan, 0);
  Document document;
  document.open(kept, {});
  HandPage page(document);
  StrictTester tester(page.kept()->model()), aims(page.aims()->model());
  auto* model = page.kept()->model();
  ASSERT_GE(model->rowCount(), 1);
  EXPECT_FALSE(model->index(0, static_cast<int>(KeptColumn::gives)).data().toString().isEmpty());
  EXPECT_FALSE(model->setData(model->index(0, static_cast<int>(KeptColumn::count)), "0", Qt::EditRole));
  const int rows = model->rowCount();
  page.kept()->table()->choose(0);
  page.kept()->taker()->click();
  EXPECT_EQ(model->rowCount(), rows - 1);
  document.history().undo();
  EXPECT_EQ(document.job(), kept);
}

TEST(HandPage, AimsAreMoved) {
  Document document;
  document.open(test::order_job(), {});
  HandPage page(document);
  page.aims()->table()->choose(2);
  page.aims()->upper()->click();
  EXPECT_EQ(document.job().order.aims, (std::vector<BatchAim>{BatchAim::cloth, BatchAim::minutes, BatchAim::lifts, BatchAim::remnants}));
  EXPECT_EQ(page.aims()->row(), 1);
  EXPECT_EQ(document.history().undoText(), "move the aim “Least time at the cutting table”");
  document.history().undo();
  EXPECT_EQ(document.job(), test::order_job());
}

}  // namespace
}  // namespace foldyard
