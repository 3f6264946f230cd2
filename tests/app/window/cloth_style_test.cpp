#include "window/cloth_style.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>
#include <QStyleOption>

#include "window/window_colours.h"

namespace foldyard {
namespace {

QImage box(Shade shade, QStyle::State state) {
  QImage image(21, 21, QImage::Format_RGB32);
  image.fill(window_colours(shade).linen);
  QPainter painter(&image);
  QStyleOption option;
  option.rect = image.rect();
  option.palette = window_palette(shade);
  option.state = state;
  ClothStyle().drawPrimitive(QStyle::PE_IndicatorCheckBox, &option, &painter, nullptr);
  return image;
}

int pixels_of(const QImage& image, const QColor& colour) {
  int count = 0;
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x) count += image.pixelColor(x, y) == colour;
  return count;
}

TEST(ClothStyle, OutlinesACheckBoxAndMarksACheckedOne) {
  for (const auto shade : {Shade::light, Shade::dark}) {
    const auto& colours = window_colours(shade);
    EXPECT_GT(pixels_of(box(shade, QStyle::State_Off), colours.field), 100);  // of 15 × 15
    EXPECT_EQ(pixels_of(box(shade, QStyle::State_Off), colours.chalk), 0);
    EXPECT_GT(pixels_of(box(shade, QStyle::State_On), colours.chalk), 3);
  }
}

TEST(ClothStyle, GivesACheckBoxRoomForItsWholeOutline) {
  ClothStyle style;
  const int side = style.pixelMetric(QStyle::PM_IndicatorWidth);
  EXPECT_EQ(style.pixelMetric(QStyle::PM_IndicatorHeight), side);
  EXPECT_GE(side, 15 + 2);
}

TEST(ClothStyle, PutsNoPicturesOnTheButtonsOfDialogs) {
  EXPECT_EQ(ClothStyle().styleHint(QStyle::SH_DialogButtonBox_ButtonsHaveIcons), 0);
}

}  // namespace
}  // namespace foldyard
