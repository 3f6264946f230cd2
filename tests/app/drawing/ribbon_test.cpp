#include "drawing/ribbon.h"

#include <gtest/gtest.h>

namespace foldyard {
namespace {

AxisMap axis(std::vector<std::int64_t> lines, std::vector<int> levels) {
  std::vector<Length> places;
  for (std::int64_t line : lines) places.push_back(Length::mm(line));
  return AxisMap(Length::mm(1500), places, levels);
}

const RibbonShape kShape{4, 1.5};
const Scale kTenth{10};

TEST(Ribbon, SelvedgeToSelvedgeGoesLeftAndComesBackBelow) {
  const Ribbon ribbon = ribbon_of(axis({750}, {1, 0}), kTenth, kShape);
  EXPECT_DOUBLE_EQ(ribbon.face.front().x(), 75);
  EXPECT_DOUBLE_EQ(ribbon.face.back().x(), 75);
  // The upper ply is mirrored, so that its face lies below its back; the lower
  // one lies face up. y runs downwards.
  EXPECT_GT(ribbon.face.front().y(), ribbon.back.front().y());
  EXPECT_LT(ribbon.face.back().y(), ribbon.back.back().y());
  EXPECT_LT(ribbon.face.front().y(), ribbon.face.back().y());
}

TEST(Ribbon, TheBendStandsOutByHalfThePitchAndHalfTheRibbon) {
  const AxisMap folded = axis({750}, {1, 0});
  // Half of 4 mm and half of 1.5 mm.
  EXPECT_DOUBLE_EQ(ribbon_bulge(folded, kShape), 2.75);
  EXPECT_NEAR(ribbon_of(folded, kTenth, kShape).back.boundingRect().left(), -2.75, 0.02);
}

TEST(Ribbon, FlapsThatDoNotOverlapLieEquallyHigh) {
  EXPECT_EQ(settled_levels(axis({300, 1200}, {1, 0, 2})), (std::vector<int>{1, 0, 1}));
  // Flaps of 600 and 400 on a middle of 500: they cross, the right one on top.
  EXPECT_EQ(settled_levels(axis({600, 1100}, {1, 0, 2})), (std::vector<int>{1, 0, 2}));
}

TEST(Ribbon, AFanRisesPlyByPly) {
  EXPECT_EQ(settled_levels(axis({300, 600, 900, 1200}, {0, 1, 2, 3, 4})),
            (std::vector<int>{0, 1, 2, 3, 4}));
  EXPECT_EQ(highest_level(axis({300, 600, 900, 1200}, {0, 1, 2, 3, 4})), 4);
}

TEST(Ribbon, OpenClothIsOneStraightLine) {
  const Ribbon ribbon = ribbon_of(axis({}, {0}), kTenth, kShape);
  ASSERT_EQ(ribbon.face.size(), 2);
  EXPECT_DOUBLE_EQ(ribbon.face[1].x() - ribbon.face[0].x(), 150);
  EXPECT_EQ(ribbon_bulge(axis({}, {0}), kShape), 0);
}

}  // namespace
}  // namespace foldyard
