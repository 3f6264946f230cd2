#include "drawing/copied_picture.h"

#include <gtest/gtest.h>

#include "app/drawing/paper_probe.h"
#include "app/drawing/sample_plans.h"

namespace foldyard {
namespace {

double share_of_ink(const QImage& image) {
  qint64 dark = 0;
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x) dark += qGray(image.pixel(x, y)) < 128;
  return double(dark) / (double(image.width()) * image.height());
}

TEST(CopiedPicture, IsDrawnForEveryPatternAndTheRoll) {
  for (const samples::Sample& sample : samples::all())
    for (int pattern = -1; pattern < static_cast<int>(sample.plan().patterns.size()); ++pattern) {
      const CopiedPicture picture{sample.job, sample.plan(), pattern};
      const QImage image = picture.image(96);
      EXPECT_NEAR(image.width(), picture.size_mm().width() * 96 / 25.4, 1);
      EXPECT_NEAR(image.height(), picture.size_mm().height() * 96 / 25.4, 1);
      EXPECT_GT(share_of_ink(image), 0.002);
      EXPECT_EQ(qGray(image.pixel(1, 1)), 255);
    }
}

TEST(CopiedPicture, ShowsTheSameAsSvg) {
  const samples::Sample sample = samples::carriers();
  const CopiedPicture picture{sample.job, sample.plan(), 0};
  const QImage svg = probe::svg_picture(picture.svg());
  EXPECT_NEAR(svg.width(), picture.size_mm().width() * probe::kDotsPerMm, 1);
  EXPECT_NEAR(share_of_ink(svg), share_of_ink(picture.image(254)), 0.004);
}

}  // namespace
}  // namespace foldyard
