#include "fields/trade_icon.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QDir>
#include <QImage>
#include <QPalette>
#include <QPixmap>

namespace foldyard {
namespace {

QImage drawn(TradeIcon icon, QIcon::Mode mode = QIcon::Normal, int size = 24) {
  return trade_icon(icon).pixmap(QSize(size, size), mode).toImage().convertToFormat(QImage::Format_ARGB32);
}

// Of all that is drawn fully.
QSet<QRgb> inks(const QImage& image) {
  QSet<QRgb> found;
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x)
      if (qAlpha(image.pixel(x, y)) == 255) found.insert(image.pixel(x, y));
  return found;
}

TEST(TradeIconTest, EveryIconIsDrawnAndNoTwoAreAlike) {
  std::vector<QImage> seen;
  for (int i = 0; i < kTradeIcons; ++i) {
    const QImage image = drawn(static_cast<TradeIcon>(i), QIcon::Normal, 48);
    EXPECT_FALSE(inks(image).isEmpty()) << i;
    for (const QImage& other : seen) EXPECT_NE(image, other) << i;
    seen.push_back(image);
  }
}

TEST(TradeIconTest, EveryDrawingHasItsIcon) {
  EXPECT_EQ(QDir(FOLDYARD_SOURCE_DIR "/resources/icons").entryList({"*.svg"}).size(), kTradeIcons);
}

TEST(TradeIconTest, FollowsTheInkOfThePalette) {
  const QPalette before = QApplication::palette();
  QPalette palette = before;
  palette.setColor(QPalette::Active, QPalette::ButtonText, QColor(10, 20, 30));
  palette.setColor(QPalette::Disabled, QPalette::ButtonText, QColor(70, 80, 90));
  palette.setColor(QPalette::Active, QPalette::HighlightedText, QColor(240, 241, 242));
  QApplication::setPalette(palette);
  EXPECT_EQ(inks(drawn(TradeIcon::paper)), QSet<QRgb>{qRgb(10, 20, 30)});
  EXPECT_EQ(inks(drawn(TradeIcon::paper, QIcon::Disabled)), QSet<QRgb>{qRgb(70, 80, 90)});
  EXPECT_EQ(inks(drawn(TradeIcon::paper, QIcon::Active)), QSet<QRgb>{qRgb(240, 241, 242)});
  const QPixmap focused = trade_icon(TradeIcon::paper, IconPlace::button).pixmap(QSize(24, 24), QIcon::Active);
  EXPECT_EQ(inks(focused.toImage().convertToFormat(QImage::Format_ARGB32)), QSet<QRgb>{qRgb(10, 20, 30)});
  QApplication::setPalette(before);
}

TEST(TradeIconTest, IsAsSharpAsTheScreen) {
  EXPECT_EQ(drawn(TradeIcon::cut, QIcon::Normal, 96).size(), QSize(96, 96));
}

}  // namespace
}  // namespace foldyard
