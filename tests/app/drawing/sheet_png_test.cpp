#include <gtest/gtest.h>

#include <QImage>

#include "app/drawing/paper_probe.h"
#include "app/drawing/sample_plans.h"

namespace foldyard {
namespace {

TEST(SheetPng, TheSquareMeasures100Millimetres) {
  for (Paper paper : {Paper::a4, Paper::letter}) {
    const Sheet sheet = samples::carriers().sheet(paper);
    const QImage picture = QImage::fromData(sheet_png(sheet, probe::kDotsPerInch));
    const QSizeF square = probe::square_in(picture, sheet.page_size_mm());
    EXPECT_NEAR(square.width(), 100, 0.1);
    EXPECT_NEAR(square.height(), 100, 0.1);
  }
}

TEST(SheetPng, PagesStandBelowEachOtherAndKnowTheirScale) {
  const Sheet sheet = samples::both_edges_in().sheet(Paper::a4);
  const QImage picture = QImage::fromData(sheet_png(sheet, 127));
  // 127 dots an inch are 5 a millimetre.
  EXPECT_EQ(picture.size(), QSize(1050, 1485 * sheet.pages()));
  EXPECT_EQ(picture.dotsPerMeterX(), 5000);
}

TEST(SheetPng, IsTheSameEachTime) {
  const Sheet sheet = samples::fan_of_five().sheet(Paper::letter);
  EXPECT_EQ(sheet_png(sheet, 72), sheet_png(sheet, 72));
}

TEST(SheetPng, RefusesResolutionsNoOneCanMean) {
  const Sheet sheet = samples::carriers().sheet(Paper::a4);
  EXPECT_TRUE(sheet_png(sheet, 0).isEmpty());
  EXPECT_TRUE(sheet_png(sheet, -96).isEmpty());
  EXPECT_TRUE(sheet_png(sheet, 100000).isEmpty());
}

}  // namespace
}  // namespace foldyard
