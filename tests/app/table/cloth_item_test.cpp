#include "table/cloth_item.h"

#include <gtest/gtest.h>

#include <QPainter>
#include <QStyleOptionGraphicsItem>

#include "laid_sample.h"
#include "laid_squares.h"
#include "stroke_counter.h"

namespace foldyard {
namespace {

using sample::StrokeCount;

// The usable cloth takes so many pixels; shown: the part of the cloth in mm.
StrokeCount painted(ClothItem& item, double pixels, const QRectF& shown) {
  sample::StrokeCounter device;
  QPainter painter(&device);
  const double scale = pixels / sample::kSquaresUsable.in_mm();
  painter.setWorldTransform(QTransform::fromScale(scale, scale));
  QStyleOptionGraphicsItem option;
  option.exposedRect = shown;
  item.paint(&painter, &option, nullptr);
  painter.end();
  return device.count();
}

StrokeCount painted(int n, double pixels) {
  ClothItem item(Side::flat);
  item.show(sample::squares(n));
  return painted(item, pixels, item.boundingRect());
}

// An outlined panel that is small is one ground on another. Besides its panels a
// cloth has the shadow, the weave and its selvedges.
constexpr int kOwn = 16;

TEST(ClothItem, LargePanelsHaveOutlineTagAndWords) {
  const StrokeCount count = painted(10, 1480);  // 148 px each
  EXPECT_EQ(count.outlines, 100);
  EXPECT_EQ(count.tags, 100);
  EXPECT_EQ(count.words, 200);  // name and size
}

TEST(ClothItem, ASizeThatIsTooLongIsLeftOutAndTheNameStays) {
  const StrokeCount count = painted(10, 740);  // 74 px: too few for "14.8 × 14.8 cm"
  EXPECT_EQ(count.tags, 100);
  EXPECT_EQ(count.words, 100);
}

TEST(ClothItem, WordsGoBeforeTheTagAndTheTagBeforeTheOutline) {
  const StrokeCount no_words = painted(32, 800);  // 25 px
  EXPECT_EQ(no_words.words, 0);
  EXPECT_EQ(no_words.tags, 1024);
  EXPECT_EQ(no_words.outlines, 1024);
  const StrokeCount outline = painted(32, 480);  // 15 px
  EXPECT_EQ(outline.words + outline.tags + outline.outlines, 0);
  EXPECT_GE(outline.grounds, 2 * 1024);
}

TEST(ClothItem, TenThousandPanelsAreGroundsWithAnOutlineFromFourPixelsOn) {
  const StrokeCount seven = painted(100, 740), three = painted(100, 300);
  for (const StrokeCount& count : {seven, three}) EXPECT_EQ(count.words + count.tags + count.outlines, 0);
  EXPECT_GE(seven.grounds, 20'000);
  EXPECT_LE(seven.grounds, 20'000 + kOwn);
  EXPECT_GE(three.grounds, 10'000);
  EXPECT_LE(three.grounds, 10'000 + kOwn);
}

TEST(ClothItem, OnlyPanelsInSightArePainted) {
  ClothItem item(Side::folded);
  item.show(sample::squares(100));
  // From inside the third panel across and along to inside the seventh: five of each.
  const double side = 14.8, from = 10 + 2.5 * side, to = 10 + 6.5 * side;
  const StrokeCount count = painted(item, 1480, QRectF(QPointF(from, -to + 10), QPointF(to, -from + 10)));
  EXPECT_GE(count.grounds, 2 * 25);
  EXPECT_LE(count.grounds, 2 * 25 + kOwn);
}

TEST(ClothItem, ALitPanelStandsOutAtEverySize) {
  ClothItem item(Side::flat);
  const LaidClothPtr cloth = sample::squares(100);
  item.show(cloth);
  QImage plain(1600, 1600, QImage::Format_RGB32), lit = plain;
  const auto paint_on = [&](QImage& image) {
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.translate(0, 1600);
    QStyleOptionGraphicsItem option;
    option.exposedRect = item.boundingRect();
    item.paint(&painter, &option, nullptr);
  };
  paint_on(plain);
  item.light(cloth->patch_at(Length::mm(15), Length::mm(5)));
  paint_on(lit);
  EXPECT_NE(plain, lit);
}

}  // namespace
}  // namespace foldyard
