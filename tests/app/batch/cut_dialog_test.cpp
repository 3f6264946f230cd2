#include "batch/cut_dialog.h"

#include <gtest/gtest.h>

#include "batch_sample.h"
#include "job/check_job.h"

namespace foldyard {
namespace {

struct CutDialogTest : testing::Test {
  void untick_all_but(int lay) {
    for (int row = 0; row < dialog.lays()->rowCount(); ++row)
      if (row != lay) dialog.lays()->setData(dialog.lays()->index(row, 0), Qt::Unchecked, Qt::CheckStateRole);
  }
  static bool fill_in(FillInModel* model, int row, const QString& text) {
    return model->setData(model->index(row, model->fill_in_column()), text, Qt::EditRole);
  }

  BatchAnswerPtr answer = sample::answer_of(test::order_job());
  CutDialog dialog{answer};
};

std::int64_t on_hand(const Job& job) {
  std::int64_t panels = 0;
  for (const CutPanels& cut : job.on_hand) panels += cut.count;
  return panels;
}

TEST_F(CutDialogTest, MarksAllAsPlannedAtFirst) {
  ASSERT_TRUE(dialog.confirmer()->isEnabled()) << dialog.reason().toStdString();
  const CutReport all = all_cut(answer->plan, dialog.job().history.back().when);
  EXPECT_EQ(dialog.job(), *mark_cut(answer->job, answer->plan, all));
  EXPECT_FALSE(check_job(dialog.job()));
}

TEST_F(CutDialogTest, MarksTheLaysThatAreTicked) {
  untick_all_but(0);
  EXPECT_EQ(dialog.job().history.back().lays, 1);
  EXPECT_EQ(dialog.words(), "mark a lay as cut");
}

TEST_F(CutDialogTest, RefusesNoLay) {
  untick_all_but(-1);
  EXPECT_FALSE(dialog.confirmer()->isEnabled());
  EXPECT_EQ(dialog.reason(), "no lay is marked as cut; name at least one.");
}

TEST_F(CutDialogTest, SpoiltPanelsAreNotOnHand) {
  const auto before = on_hand(dialog.job());
  EXPECT_TRUE(fill_in(dialog.spoilt(), 0, "2"));
  ASSERT_TRUE(dialog.confirmer()->isEnabled());
  EXPECT_EQ(on_hand(dialog.job()), before - 2);
}

TEST_F(CutDialogTest, RefusesMoreSpoiltThanCut) {
  fill_in(dialog.spoilt(), 0, "9999");
  EXPECT_FALSE(dialog.confirmer()->isEnabled());
  EXPECT_TRUE(dialog.reason().contains("9999")) << dialog.reason().toStdString();
  fill_in(dialog.spoilt(), 0, "some");
  EXPECT_FALSE(dialog.spoilt()->index(0, dialog.spoilt()->fill_in_column()).data(kReasonRole).toString().isEmpty());
  fill_in(dialog.spoilt(), 0, "");
  EXPECT_TRUE(dialog.confirmer()->isEnabled());
}

TEST_F(CutDialogTest, TakesWhatWasMeasured) {
  untick_all_but(0);
  ASSERT_GT(dialog.left()->rowCount(), 0);
  const auto roll = dialog.left()->rows()[0].key.toULongLong();
  EXPECT_TRUE(fill_in(dialog.left(), 0, "123 cm"));
  ASSERT_TRUE(dialog.confirmer()->isEnabled()) << dialog.reason().toStdString();
  EXPECT_EQ(dialog.job().rolls[roll].length, Length::mm(1230));
  fill_in(dialog.left(), 0, "900 m");
  EXPECT_FALSE(dialog.confirmer()->isEnabled());
}

}  // namespace
}  // namespace foldyard
