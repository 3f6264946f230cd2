#include "shelf/roll_list.h"

#include <gtest/gtest.h>

#include <QDrag>
#include <QDropEvent>
#include <QMimeData>
#include <QTest>

#include "shelf_sample.h"
#include "table/roll_drop.h"

namespace foldyard {
namespace {

class RollListTest : public testing::Test {
 protected:
  RollListTest() {
    document.open(sample::shelf_job(), {});
    list.resize(320, 420);
    list.show();
    QObject::connect(&list, &RollList::wanted, [this](int roll) { wanted.push_back(roll); });
    QObject::connect(&list, &RollList::dropped, [this](int roll, int before) { dropped.emplace_back(roll, before); });
  }

  QPoint in_row(int row, bool lower) {
    const QRect place = list.visualRect(filter.index(row, 0));
    return {place.center().x(), lower ? place.bottom() - 3 : place.top() + 3};
  }

  // As the window system sends them.
  bool drop(const QMimeData& held, const QPoint& place) {
    QDragEnterEvent enter(place, Qt::MoveAction, &held, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(list.viewport(), &enter);
    if (!enter.isAccepted()) return false;
    QDragMoveEvent move(place, Qt::MoveAction, &held, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(list.viewport(), &move);
    QDropEvent let_go(QPointF(place), Qt::MoveAction, &held, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(list.viewport(), &let_go);
    return let_go.isAccepted();
  }

  Document document;
  RollModel model{document};
  RollFilter filter{&model};
  RollList list{&filter};
  std::vector<int> wanted;
  std::vector<std::pair<int, int>> dropped;
};

TEST_F(RollListTest, RowsAreLargeEnoughToHit) {
  for (int row = 0; row < filter.rowCount(); ++row) EXPECT_GE(list.visualRect(filter.index(row, 0)).height(), 24);
}

TEST_F(RollListTest, EnterAndDoubleClickAskForTheRoll) {
  list.setCurrentIndex(filter.index(2, 0));
  QTest::keyClick(&list, Qt::Key_Down);
  EXPECT_TRUE(wanted.empty());
  QTest::keyClick(&list, Qt::Key_Return);
  QTest::mouseClick(list.viewport(), Qt::LeftButton, {}, in_row(1, false));
  QTest::mouseDClick(list.viewport(), Qt::LeftButton, {}, in_row(1, false));
  EXPECT_EQ(wanted, (std::vector<int>{3, 1}));
}

TEST_F(RollListTest, EnterInANarrowedListAsksForTheRollThatIsSeen) {
  filter.set_words(QStringLiteral("rust"));
  list.setCurrentIndex(filter.index(0, 0));
  QTest::keyClick(&list, Qt::Key_Enter);
  EXPECT_EQ(wanted, std::vector<int>{3});
}

// The pointer drags the roll it was pressed on, under a picture of its swatch.
TEST_F(RollListTest, ADragHoldsTheRollAndItsPicture) {
  int roll = -1;
  QPixmap picture;
  list.set_drag_starter([&](QDrag* drag, Qt::DropActions) {
    roll = dragged_roll(*drag->mimeData()).value_or(-1);
    picture = drag->pixmap();
    return Qt::IgnoreAction;
  });
  QTest::mousePress(list.viewport(), Qt::LeftButton, {}, in_row(3, false));
  QTest::mouseMove(list.viewport(), in_row(3, false) + QPoint(4, 4));
  QTest::mouseMove(list.viewport(), in_row(3, false) + QPoint(40, 30));
  QTest::mouseRelease(list.viewport(), Qt::LeftButton, {}, in_row(3, false) + QPoint(40, 30));
  EXPECT_EQ(roll, 3);
  EXPECT_FALSE(picture.isNull());
}

TEST_F(RollListTest, ARollLandsBeforeOrBehindTheOneItIsLetGoOn) {
  EXPECT_TRUE(drop(*roll_to_drag(0), in_row(2, false)));
  EXPECT_TRUE(drop(*roll_to_drag(0), in_row(2, true)));
  EXPECT_TRUE(drop(*roll_to_drag(0), in_row(4, true)));
  EXPECT_TRUE(drop(*roll_to_drag(4), in_row(0, false)));
  EXPECT_EQ(dropped, (std::vector<std::pair<int, int>>{{0, 2}, {0, 3}, {0, 5}, {4, 0}}));
}

TEST_F(RollListTest, InANarrowedListItLandsBesideWhatIsSeen) {
  filter.set_words(QStringLiteral("140 cm"));  // Slate and Rust: 1 and 3
  EXPECT_TRUE(drop(*roll_to_drag(1), in_row(1, true)));
  EXPECT_TRUE(drop(*roll_to_drag(3), in_row(0, false)));
  EXPECT_EQ(dropped, (std::vector<std::pair<int, int>>{{1, 4}, {3, 1}}));
}

TEST_F(RollListTest, AnythingElseIsRefused) {
  QMimeData words;
  words.setText(QStringLiteral("roll 1"));
  EXPECT_FALSE(drop(words, in_row(1, false)));
  EXPECT_TRUE(dropped.empty());
}

}  // namespace
}  // namespace foldyard
