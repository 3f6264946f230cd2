#include "window/frontier_view.h"

#include <gtest/gtest.h>

#include <QTest>

#include "sample.h"

namespace foldyard {
namespace {

// Open cloth uses more of the roll and takes longer than folded cloth.
AnswerPtr answer() {
  Answer answer = *sample::answer();
  answer.comparison.ways[0].plan->used = Length::mm(1500) * Length::mm(4000);
  answer.comparison.ways[2].plan->used = Length::mm(1500) * Length::mm(3600);
  return std::make_shared<const Answer>(answer);
}

struct FrontierViewTest : testing::Test {
  FrontierViewTest() {
    table.show_answer(answer());
    view.resize(500, 200);
    view.show();
  }
  WayTable table;
  FrontierView view{&table};
};

TEST_F(FrontierViewTest, MoreMinutesLieToTheRightAndMoreClothAbove) {
  const auto open = view.point(0), folded = view.point(1);
  ASSERT_TRUE(open && folded);
  EXPECT_GT(open->x(), folded->x());
  EXPECT_LT(open->y(), folded->y());
  EXPECT_FALSE(view.point(2));  // refused
  for (const auto& point : {*open, *folded}) EXPECT_TRUE(QRectF(view.rect()).contains(point));
}

TEST_F(FrontierViewTest, AClickOnAPointChoosesItsWay) {
  ASSERT_EQ(table.row(), 0);
  QTest::mouseClick(&view, Qt::LeftButton, {}, view.point(1)->toPoint());
  EXPECT_EQ(table.row(), 1);
  QTest::mouseClick(&view, Qt::LeftButton, {}, QPoint(250, 5));
  EXPECT_EQ(table.row(), 1);
}

// A plan that uses less of the cloth and takes longer is on no frontier.
TEST_F(FrontierViewTest, LeavesOutWhatIsBeatenInBoth) {
  Answer beaten = *answer();
  beaten.comparison.ways[2].plan->time = Duration::seconds(1300);
  table.show_answer(std::make_shared<const Answer>(beaten));
  QTest::keyClick(&view, Qt::Key_Right);
  EXPECT_EQ(table.row(), 0);
  QTest::keyClick(&view, Qt::Key_Left);
  EXPECT_EQ(table.row(), 0);
}

TEST_F(FrontierViewTest, KeysGoAlongTheFrontierAndSayWhere) {
  QTest::keyClick(&view, Qt::Key_Left);
  EXPECT_EQ(table.row(), 1);
  EXPECT_TRUE(view.accessibleDescription().contains(QStringLiteral("12 min")));
  QTest::keyClick(&view, Qt::Key_Left);
  EXPECT_EQ(table.row(), 1);
  QTest::keyClick(&view, Qt::Key_Right);
  EXPECT_EQ(table.row(), 0);
  EXPECT_FALSE(view.grab().isNull());
}

TEST_F(FrontierViewTest, UpAndDownReachEveryPoint) {
  Answer beaten = *answer();
  beaten.comparison.ways[2].plan->time = Duration::seconds(1300);  // on no frontier
  table.show_answer(std::make_shared<const Answer>(beaten));
  QTest::keyClick(&view, Qt::Key_Down);
  EXPECT_EQ(table.row(), 1);
  QTest::keyClick(&view, Qt::Key_Up);
  EXPECT_EQ(table.row(), 0);
}

TEST_F(FrontierViewTest, APlanByHandIsAMarkOfItsOwn) {
  EXPECT_FALSE(view.hand_point(1));
  Plan by_hand = *table.ways()->plan(1);
  by_hand.used = Length::mm(1500) * Length::mm(3000);
  view.set_hand_plans([&](int row) { return row == 1 ? &by_hand : nullptr; });
  const auto mark = view.hand_point(1);
  ASSERT_TRUE(mark);
  EXPECT_GT(mark->y(), view.point(1)->y());
  EXPECT_TRUE(QRectF(view.rect()).contains(*mark));
  QTest::mouseClick(&view, Qt::LeftButton, {}, mark->toPoint());
  EXPECT_EQ(table.row(), 1);
  view.describe();
  EXPECT_TRUE(view.accessibleDescription().contains("by hand 60.0 %")) << view.accessibleDescription().toStdString();
}

}  // namespace
}  // namespace foldyard
