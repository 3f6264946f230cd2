#include "window/way_model.h"

#include <gtest/gtest.h>

#include "sample.h"
#include "support/strict_tester.h"

namespace foldyard {
namespace {

class WayModelTest : public testing::Test {
 protected:
  WayModelTest() { model.show(sample::answer()); }
  QString shown(int row, int column) { return model.index(row, column).data().toString(); }

  WayModel model;
  StrictTester tester{&model};
};

TEST_F(WayModelTest, RanksThePlansAndPutsRefusedWaysLast) {
  ASSERT_EQ(model.rowCount(), 3);
  EXPECT_EQ(model.way_index(0), 0);
  EXPECT_EQ(model.way_index(1), 2);
  EXPECT_EQ(model.way_index(2), 1);
  EXPECT_EQ(model.plan(2), nullptr);
  EXPECT_EQ(shown(2, WayModel::panels), "4 plies are too thick");
}

TEST_F(WayModelTest, ShowsTheFiguresOfAPlan) {
  EXPECT_EQ(shown(0, WayModel::panels), "4");  // 3 + 1
  EXPECT_EQ(shown(0, WayModel::worth), "29.00");
  EXPECT_EQ(shown(0, WayModel::cuts), "9");
  EXPECT_EQ(shown(0, WayModel::lift), "12");  // single plies, at most twelve
  EXPECT_EQ(shown(1, WayModel::lift), "6");
  EXPECT_EQ(shown(0, WayModel::time), "20 min");  // 1200 s
  EXPECT_EQ(shown(0, WayModel::proof), "proved");
  EXPECT_EQ(shown(1, WayModel::proof), "bound 29.00");
}

TEST_F(WayModelTest, TellsTheWholeStoryToAScreenReader) {
  EXPECT_EQ(model.index(0, WayModel::cuts).data(Qt::AccessibleTextRole).toString(), "Cuts 9");
  EXPECT_TRUE(model.index(0, 0).data(Qt::AccessibleDescriptionRole).toString().contains("Carrier"));
  EXPECT_TRUE(model.index(2, 0).data(Qt::AccessibleDescriptionRole).toString().contains("too thick"));
}

TEST_F(WayModelTest, FindsTheRowOfAWay) {
  EXPECT_EQ(model.row_of({FoldKind::quarters, 4, false, true}), 2);
  EXPECT_EQ(model.row_of({FoldKind::fan, 5, false, true}), -1);
}

TEST(WayModel, IsEmptyBeforeTheFirstAnswer) {
  WayModel model;
  StrictTester tester(&model);
  EXPECT_EQ(model.rowCount(), 0);
}

}  // namespace
}  // namespace foldyard
