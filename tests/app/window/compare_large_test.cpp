#include "window/compare_large.h"

#include <gtest/gtest.h>

#include <QTest>

#include "sample.h"
#include "window/main_window.h"

namespace foldyard {
namespace {

class CompareLargeTest : public testing::Test {
 protected:
  CompareLargeTest() {
    window.resize(1200, 860);
    window.show();
    window.document().open(sample::job(), {});
    EXPECT_TRUE(sample::waited_for([this] { return !window.planner().is_busy() && window.way_table()->row() >= 0; }, 60000));
  }

  CompareLarge& compare() { return *window.compare_large(); }
  WayCards* cards() { return window.way_cards(); }
  int refused_row() {
    for (int row = 0; row < window.way_table()->ways()->rowCount(); ++row)
      if (!window.way_table()->ways()->plan(row)) return row;
    return -1;
  }
  void press_c(int row) {
    cards()->setCurrentIndex(cards()->model()->index(row, 0));
    QTest::keyClick(cards(), Qt::Key_C);
  }

  MainWindow window;
};

TEST_F(CompareLargeTest, ShowsTwoThatArePinnedByKeyAndGoesBack) {
  press_c(0);
  EXPECT_FALSE(compare().is_shown());
  EXPECT_FALSE(compare().button()->isEnabled());
  press_c(1);
  EXPECT_TRUE(compare().is_shown());
  EXPECT_EQ(compare().page()->count(), 2);
  compare().button()->click();
  EXPECT_FALSE(compare().is_shown());
  compare().button()->click();
  EXPECT_TRUE(compare().is_shown());
  QTest::keyClick(compare().page(), Qt::Key_Escape);
  EXPECT_FALSE(compare().is_shown());
  press_c(1);  // out again
  EXPECT_FALSE(compare().button()->isEnabled());
}

TEST_F(CompareLargeTest, PinsByThePinOnTheCard) {
  for (const int row : {0, 2}) {
    cards()->scrollTo(cards()->model()->index(row, 0));
    QTest::mouseClick(cards()->viewport(), Qt::LeftButton, {}, cards()->pin_box(row).center());
    EXPECT_TRUE(cards()->is_pinned(row));
  }
  EXPECT_TRUE(compare().is_shown());
  EXPECT_EQ(window.way_table()->row(), 0);  // what is chosen stays
}

TEST_F(CompareLargeTest, ShowsAllAtOneScaleWithDifferencesToTheFirst) {
  for (const int row : {0, 1, 2}) compare().toggle(row);
  SideBySide* page = compare().page();
  ASSERT_EQ(page->count(), 3);
  for (int i = 0; i < 3; ++i) {
    EXPECT_DOUBLE_EQ(page->cloth(i)->scale(), page->cloth(0)->scale());
    EXPECT_FALSE(page->cloth(i)->accessibleName().isEmpty());
    EXPECT_TRUE(page->figures(i).contains("panels"));
    EXPECT_LE(page->cloth(i)->sceneRect().width() * page->cloth(i)->scale(), page->cloth(i)->viewport()->width() + 1);
  }
  const WayModel& ways = *window.way_table()->ways();
  const auto differ = differences(sample::job(), *ways.plan(1), *ways.plan(0));
  EXPECT_FALSE(page->figures(0).contains("("));
  EXPECT_TRUE(page->figures(1).contains(differ[0])) << page->figures(1).toStdString();
}

TEST_F(CompareLargeTest, AFourthLetsTheFirstGo) {
  for (const int row : {0, 1, 2, 3}) compare().toggle(row);
  EXPECT_EQ(compare().pinned()->rows(), (std::vector<int>{1, 2, 3}));
}

TEST_F(CompareLargeTest, ARefusedWayIsNotPinned) {
  Job job = sample::job();
  job.rolls[0].fabric.nap = Nap::one_way;  // end to end it would lie against the nap
  window.document().open(job, {});
  ASSERT_TRUE(sample::waited_for([this] { return !window.planner().is_busy(); }, 60000));
  ASSERT_GE(refused_row(), 0);
  compare().toggle(refused_row());
  EXPECT_TRUE(compare().pinned()->rows().empty());
  EXPECT_FALSE(cards()->is_pinned(refused_row()));
}

TEST_F(CompareLargeTest, KeepsWhatIsPinnedWhenTheJobChanges) {
  compare().toggle(0);
  compare().toggle(1);
  Job job = sample::job();
  job.rolls[0].length = Length::mm(7000);
  ASSERT_FALSE(window.document().edit(job, "Change the length"));
  ASSERT_TRUE(sample::waited_for([this] { return !window.planner().is_busy(); }, 60000));
  EXPECT_TRUE(compare().is_shown());
  EXPECT_EQ(compare().pinned()->rows().size(), 2u);
}

TEST_F(CompareLargeTest, ItsMenuSpeaksOfTheChosenWay) {
  QMenu menu;
  compare().fill(&menu);
  ASSERT_EQ(menu.actions().size(), 2);
  menu.actions()[0]->trigger();
  EXPECT_TRUE(compare().pinned()->has(window.way_table()->row()));
  EXPECT_FALSE(menu.actions()[1]->isEnabled());
}

}  // namespace
}  // namespace foldyard
