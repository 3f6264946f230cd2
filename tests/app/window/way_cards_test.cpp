#include "window/way_cards.h"

#include <gtest/gtest.h>

#include <QTest>

#include "job/plan_roll.h"
#include "sample.h"

namespace foldyard {
namespace {

struct WayCardsTest : testing::Test {
  WayCardsTest() {
    table.show_answer(answer);
    cards.show_answer(answer);
  }
  AnswerPtr answer = sample::planned();
  WayTable table;
  WayCards cards{&table};
};

TEST_F(WayCardsTest, HasACardForEachWayAndClothWhereThereIsAPlan) {
  ASSERT_EQ(cards.model()->rowCount(), static_cast<int>(answer->comparison.ways.size()));
  for (int row = 0; row < cards.model()->rowCount(); ++row)
    EXPECT_EQ(cards.cloth(row) != nullptr, table.ways()->plan(row) != nullptr) << row;
  EXPECT_EQ(cards.cloth(1000), nullptr);
}

TEST_F(WayCardsTest, EveryClothFitsItsCardAtOneScale) {
  for (int row = 0; row < cards.model()->rowCount(); ++row) {
    if (!cards.cloth(row)) continue;
    EXPECT_LE(cards.cloth(row)->folded().along.to.in_mm() * cards.pixels_per_mm(), 128.001);
    EXPECT_LE(cards.cloth(row)->folded().across.to.in_mm() * cards.pixels_per_mm(), 84.001);
  }
}

TEST_F(WayCardsTest, SharesItsChoiceWithTheTable) {
  cards.show();
  QTest::keyClick(&cards, Qt::Key_Right);
  EXPECT_EQ(table.row(), 1);
  table.setCurrentIndex(table.ways()->index(3, 0));
  EXPECT_EQ(cards.currentIndex().row(), 3);
}

TEST_F(WayCardsTest, PaintsAlsoWhileAnswersChange) {
  cards.resize(900, cards.height());
  cards.show();
  EXPECT_FALSE(cards.grab().isNull());
  table.show_answer(sample::answer());
  EXPECT_FALSE(cards.grab().isNull());
  cards.show_answer(sample::answer());
  EXPECT_FALSE(cards.grab().isNull());
}

}  // namespace
}  // namespace foldyard
