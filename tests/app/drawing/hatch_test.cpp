#include "drawing/hatch.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace foldyard {
namespace {

constexpr Hatch kAll[] = {Hatch::none,    Hatch::rising,  Hatch::falling, Hatch::level,
                          Hatch::upright, Hatch::crossed, Hatch::squared, Hatch::rising_dense};

bool holds(const QRectF& rect, const QPointF& p) {
  return rect.adjusted(-1e-9, -1e-9, 1e-9, 1e-9).contains(p);
}

TEST(Hatch, LinesStayInsideTheRectangle) {
  const unsigned seed = 20240601;
  std::mt19937 random(seed);
  std::uniform_real_distribution<double> size(0.01, 60);
  for (int i = 0; i < 200; ++i) {
    const QRectF rect(size(random), -size(random), size(random), size(random));
    for (Hatch hatch : kAll)
      for (const QLineF& line : hatch_lines(rect, hatch, 2))
        EXPECT_TRUE(holds(rect, line.p1()) && holds(rect, line.p2())) << "seed " << seed;
  }
}

TEST(Hatch, NothingForNothing) {
  EXPECT_TRUE(hatch_lines(QRectF(), Hatch::rising, 2).empty());
  EXPECT_TRUE(hatch_lines(QRectF(0, 0, 5, 5), Hatch::rising, 0).empty());
  EXPECT_TRUE(hatch_lines(QRectF(0, 0, 5, 5), Hatch::none, 1).empty());
}

TEST(Hatch, LevelLinesAreTheirSpacingApart) {
  // 10 mm high, 2 mm apart, the first half a spacing from the edge: 1, 3, 5, 7, 9.
  const auto lines = hatch_lines(QRectF(0, 0, 4, 10), Hatch::level, 2);
  ASSERT_EQ(lines.size(), 5u);
  EXPECT_DOUBLE_EQ(lines[2].y1(), 5);
}

TEST(Hatch, RisingLinesRise) {
  for (const QLineF& line : hatch_lines(QRectF(0, 0, 10, 10), Hatch::rising, 2)) {
    EXPECT_NEAR(line.dx(), -line.dy(), 1e-9);
    EXPECT_GT(line.dx(), 0);
  }
}

}  // namespace
}  // namespace foldyard
