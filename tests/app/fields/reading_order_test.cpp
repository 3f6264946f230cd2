#include "fields/reading_order.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QTextLayout>

namespace foldyard {
namespace {

const QString kSize = QStringLiteral("150 cm × 18.7 m");

// Where a character stands on a line that runs from right to left.
double place_of(const QString& words, QChar letter) {
  QTextLayout layout(words);
  QTextOption option;
  option.setTextDirection(Qt::RightToLeft);
  layout.setTextOption(option);
  layout.beginLayout();
  QTextLine line = layout.createLine();
  line.setLineWidth(1000);
  layout.endLayout();
  return line.cursorToX(static_cast<int>(words.indexOf(letter)));
}

TEST(InOwnOrder, LeavesWordsAloneFromLeftToRight) { EXPECT_EQ(in_own_order(kSize), kSize); }

TEST(InOwnOrder, KeepsTheWidthBeforeTheLengthFromRightToLeft) {
  QApplication::setLayoutDirection(Qt::RightToLeft);
  const QString words = in_own_order(kSize), none = in_own_order({});
  QApplication::setLayoutDirection(Qt::LeftToRight);
  EXPECT_TRUE(none.isEmpty());
  EXPECT_GT(place_of(kSize, QLatin1Char('5')), place_of(kSize, QLatin1Char('c')));  // as it would be: "cm × 18.7 m 150"
  EXPECT_LT(place_of(words, QLatin1Char('5')), place_of(words, QLatin1Char('c')));
}

TEST(InOwnOrder, KeepsTheSignOfAShareBehindItFromRightToLeft) {
  const QString share = QStringLiteral("94.4 %");
  QApplication::setLayoutDirection(Qt::RightToLeft);
  const QString words = in_own_order(share);
  QApplication::setLayoutDirection(Qt::LeftToRight);
  EXPECT_GT(place_of(share, QLatin1Char('9')), place_of(share, QLatin1Char('%')));  // as it would be: "% 94.4"
  EXPECT_LT(place_of(words, QLatin1Char('9')), place_of(words, QLatin1Char('%')));
}

}  // namespace
}  // namespace foldyard
