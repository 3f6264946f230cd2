#include "lay/cutter.h"

#include <gtest/gtest.h>

#include "core/support/lengths.h"

namespace foldyard {
namespace {

using test::tenths;

const Length k25mm = Length::mm(25);

// A round knife cuts about a quarter of its blade's diameter: 100 mm gives
// 25 mm. Source: I. Vilumsone-Nemes, Industrial Cutting of Textile Materials
// (Woodhead), p. 107: spread no more than about 1/4 of the blade's diameter.
TEST(LengthsPerLift, FillTheHeightOfARoundKnifeOf100Millimetres) {
  const Cutter cutter{Length::mm(100) / 4, 1000};
  EXPECT_EQ(cutter.height, k25mm);
  // Single plies: 25 / 1.2 = 20.8 → 20. For the others: 31.25, 25, 16.7, 12.5.
  EXPECT_EQ(lengths_per_lift(cutter, tenths(12), 1), 20);
  EXPECT_EQ(lengths_per_lift(cutter, tenths(8), 1), 31);
  EXPECT_EQ(lengths_per_lift(cutter, tenths(10), 1), 25);
  EXPECT_EQ(lengths_per_lift(cutter, tenths(15), 1), 16);
  EXPECT_EQ(lengths_per_lift(cutter, tenths(20), 1), 12);
}

TEST(LengthsPerLift, CountFoldedLengthsWhole) {
  // The header's example: 25 / (4 × 1.2) = 5.2 → 5.
  EXPECT_EQ(lengths_per_lift({k25mm, 1000}, tenths(12), 4), 5);
  // 21 plies would be 25.2 mm: a fan of 21 does not pass, one of 20 does.
  EXPECT_EQ(lengths_per_lift({k25mm, 1000}, tenths(12), 20), 1);
  EXPECT_EQ(lengths_per_lift({k25mm, 1000}, tenths(12), 21), 0);
}

TEST(LengthsPerLift, MayFillTheHeightToTheUnit) {
  EXPECT_EQ(lengths_per_lift({Length::mm(24), 1000}, tenths(12), 20), 1);
  EXPECT_EQ(lengths_per_lift({Length::mm(24) - Length::units(1), 1000}, tenths(12), 20), 0);
}

TEST(LengthsPerLift, KeepToTheMostPliesWhateverTheirThickness) {
  EXPECT_EQ(lengths_per_lift({k25mm, 12}, tenths(1), 1), 12);
  EXPECT_EQ(lengths_per_lift({k25mm, 12}, tenths(1), 4), 3);
  EXPECT_EQ(lengths_per_lift({k25mm, 12}, tenths(1), 5), 2);
  EXPECT_EQ(lengths_per_lift({k25mm, 12}, tenths(1), 12), 1);
  EXPECT_EQ(lengths_per_lift({k25mm, 12}, tenths(1), 13), 0);
}

TEST(DeepestFold, IsHeldByTheTableOrByTheReach) {
  const Length depth = Length::mm(1600), reach = Length::mm(900);
  const Length length = Length::mm(3000);
  EXPECT_EQ(deepest_fold({length, depth, reach, false}), reach);
  EXPECT_EQ(deepest_fold({length, depth, reach, true}), depth);
  EXPECT_EQ(deepest_fold({length, depth, Length::mm(700), true}), Length::mm(1400));
  EXPECT_EQ(deepest_fold({length, Length::mm(800), reach, false}), Length::mm(800));
}

}  // namespace
}  // namespace foldyard
