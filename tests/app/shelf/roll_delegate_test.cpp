#include "shelf/roll_delegate.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>

#include <set>

#include "shelf/mark_signs.h"
#include "shelf/swatch.h"
#include "shelf_sample.h"

namespace foldyard {
namespace {

class RollDelegateTest : public testing::Test {
 protected:
  RollDelegateTest() { document.open(sample::shelf_job(), {}); }

  QImage painted(int row, QStyle::State state = QStyle::State_Enabled, double scale = 1) {
    QImage image(QSize(320, 70) * scale, QImage::Format_RGB32);
    image.setDevicePixelRatio(scale);
    image.fill(Qt::white);
    QPainter painter(&image);
    QStyleOptionViewItem option;
    option.rect = QRect(0, 0, 320, 70);
    option.state = state;
    delegate.paint(&painter, option, model.index(row, 0));
    return image;
  }

  Document document;
  RollModel model{document};
  RollDelegate delegate{model};
};

// 150, 140 and 75 cm: the tape of the widest fills its room.
TEST_F(RollDelegateTest, TapesAreToOneScale) {
  EXPECT_DOUBLE_EQ(delegate.tape_length(model.roll(0), 120), 120);
  EXPECT_DOUBLE_EQ(delegate.tape_length(model.roll(1), 120), 112);
  EXPECT_DOUBLE_EQ(delegate.tape_length(model.roll(4), 120), 60);
}

TEST_F(RollDelegateTest, WhatIsChosenAndWhatLiesOnTheTableIsSeen) {
  const QImage plain = painted(0);
  const QImage chosen = painted(0, QStyle::State_Enabled | QStyle::State_Selected);
  model.set_on_table(0);
  const QImage laid = painted(0);
  EXPECT_NE(plain, chosen);
  EXPECT_NE(plain, laid);
  EXPECT_NE(chosen, laid);
}

TEST_F(RollDelegateTest, PaintsEveryRollAtAnyScale) {
  for (int row = 0; row < model.rowCount(); ++row)
    for (const double scale : {1.0, 1.25, 2.0}) EXPECT_NE(painted(row, QStyle::State_Enabled, scale), QImage());
  EXPECT_NE(painted(0), painted(2));
}

// No two signs are the same picture, and a turned nap is another than a straight one.
TEST(MarkSigns, EachHasAShapeOfItsOwn) {
  const Roll fern = sample::shelf_job().rolls[2];
  Roll upright = fern;
  upright.fabric.railroaded = false;
  std::set<QByteArray> pictures;
  const auto add = [&](const Roll& roll, RollMark mark) {
    QImage image(16, 16, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    paint_mark(painter, QRectF(0, 0, 16, 16), roll, mark, Qt::black);
    painter.end();
    pictures.insert(QByteArray(reinterpret_cast<const char*>(image.constBits()), image.sizeInBytes()));
  };
  for (const auto mark : {RollMark::nap, RollMark::railroaded, RollMark::repeat, RollMark::shrinkage, RollMark::flaws}) add(fern, mark);
  add(upright, RollMark::nap);
  EXPECT_EQ(pictures.size(), 6u);
}

TEST(Swatch, HasTheColourOfItsCloth) {
  QImage image(60, 60, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  paint_swatch(painter, QRectF(0, 0, 60, 60), "#a8582f", Qt::black);
  painter.end();
  int same = 0;
  for (int y = 10; y < 40; ++y)
    for (int x = 10; x < 50; ++x) same += image.pixelColor(x, y) == QColor("#a8582f");
  EXPECT_GT(same, 100);
}

}  // namespace
}  // namespace foldyard
