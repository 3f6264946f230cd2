#include "cutting/fold_layout.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/support/fold_ways.h"
#include "core/support/lengths.h"
#include "core/support/slow_folding.h"
#include "core/support/way_title.h"

namespace foldyard {
namespace {

using test::kFlaps;
using test::kHalf;
using test::kOffCentre;
using test::kPlainQuarters;
using test::kPlainThirds;
using test::kQuarters;
using test::kUnit;
using test::mm;

constexpr Length kTrim = Length::mm(5);
constexpr Length kFlap = Length::mm(100);
constexpr Length kDeep = Length::mm(10'000);

Fabric cloth(int width, int selvedge) {
  return {Length::mm(width), Length::mm(selvedge), Length::mm(1), Nap::none, ""};
}

std::vector<std::unique_ptr<FoldLayout>> layouts(const FoldWay& way, Length depth = kDeep) {
  return layouts_of(way, cloth(1500, 10), {kTrim, kFlap, depth});
}

TEST(FoldLayout, IsTheHeadersExample) {
  const auto list = layouts(kOffCentre);
  ASSERT_EQ(list.size(), 1u);
  EXPECT_EQ(list[0]->lines(mm(225), {}), std::vector<Length>{mm(235)});
  EXPECT_EQ(list[0]->middle(mm(225), {}), mm(1030));
  EXPECT_EQ(list[0]->folded(mm(225), {}), mm(1265));
}

TEST(FoldLayout, OpenHasNoLinesAndAllUsableClothInTheMiddle) {
  const auto list = layouts({});
  ASSERT_EQ(list.size(), 1u);
  EXPECT_TRUE(list[0]->is_fixed());
  EXPECT_EQ(list[0]->middle({}, {}), mm(1480));
  EXPECT_EQ(list[0]->middle_start({}, {}), mm(10));
  EXPECT_TRUE(list[0]->lines({}, {}).empty());
}

TEST(FoldLayout, SelvedgeToSelvedgeIsAllAtTheFoldEdge) {
  const auto list = layouts(kHalf);
  EXPECT_EQ(list[0]->left().least, mm(740));
  EXPECT_EQ(list[0]->left().most, mm(740));
  EXPECT_EQ(list[0]->lines({}, {}), std::vector<Length>{mm(750)});
}

TEST(FoldLayout, AShallowTableForcesALongerFlap) {
  // 800 deep: of 1500, at least 700 are folded over, 690 of them usable.
  EXPECT_EQ(layouts(kOffCentre, mm(800))[0]->left().least, mm(690));
  EXPECT_EQ(layouts(kOffCentre)[0]->left().least, kFlap);
}

TEST(FoldLayout, FlapsMayMeetButNotOverlap) {
  const auto list = layouts(kFlaps);
  // Flat 375 + 375 on a base of 750: usable 365 each.
  EXPECT_EQ(list[0]->middle(mm(365), mm(365)), mm(20));
  EXPECT_LT(list[0]->middle(mm(365), mm(365) + Length::units(1)), Length());
  EXPECT_EQ(list[0]->lines(mm(225), mm(100)), (std::vector<Length>{mm(235), mm(1390)}));
}

TEST(FoldLayout, PlainThirdsAreThree) {
  const auto list = layouts(kPlainThirds);
  // The middle through all three plies, without either end leg, or the inner one.
  ASSERT_EQ(list.size(), 4u);
  EXPECT_EQ(list[0]->lines({}, {}), (std::vector<Length>{mm(500), mm(1000)}));
  EXPECT_EQ(list[0]->shares().plies, 3);
  EXPECT_EQ(list[3]->shares().plies, 1);
}

// 20 units between selvedges of 2, strips of 3: legs of 6 leave 2 over, which would put the
// last selvedge beyond them; legs of 7 leave the first a unit short of its strip's end.
TEST(FoldLayout, QuartersAreAUnitLongerWhereTheLastLegWouldStandOut) {
  const Fabric fabric{Length::units(24), Length::units(2), kUnit, Nap::none, ""};
  const auto list = layouts_of(kQuarters, fabric, {kUnit, kUnit, mm(1)});
  const Length strip = Length::units(3);
  EXPECT_EQ(list[0]->lines(strip, strip), (std::vector<Length>{Length::units(5), Length::units(12), Length::units(19)}));
  EXPECT_EQ(list[0]->folded(strip, strip), Length::units(7));
  EXPECT_EQ(list[0]->middle(strip, strip), Length());
}

TEST(FoldLayout, QuartersLieMirroredAndFansOfFourSixDoNot) {
  EXPECT_TRUE(layouts(kPlainQuarters)[0]->lies_mirrored());
  EXPECT_TRUE(layouts(kQuarters)[0]->lies_mirrored());
  EXPECT_FALSE(layouts({FoldKind::fan, 6, false, false})[0]->lies_mirrored());
}

TEST(LevelsOf, PutEachLegAtItsPlaceInTheStack) {
  EXPECT_EQ(levels_of({FoldKind::open, 1}), std::vector<int>{0});
  EXPECT_EQ(levels_of({FoldKind::off_centre, 2}), (std::vector<int>{1, 0}));
  EXPECT_EQ(levels_of({FoldKind::both_edges_in, 3}), (std::vector<int>{1, 0, 2}));
  EXPECT_EQ(levels_of({FoldKind::quarters, 4}), (std::vector<int>{1, 2, 3, 0}));
  EXPECT_EQ(levels_of({FoldKind::fan, 5}), (std::vector<int>{0, 1, 2, 3, 4}));
}

// What a layout promises of its strips, held against cloth folded by walking
// along it: lines ascend inside, the folded size is right, each strip is
// covered by the plies it counts.
class Promises : public testing::TestWithParam<FoldWay> {
 protected:
  void expect_kept(const FoldLayout& layout, int x, int y, const test::SlowCloth& cloth) {
    const Length left = Length::units(x), right = Length::units(y);
    const Length middle = layout.middle(left, right);
    if (middle < Length()) return;
    test::Lines lines;
    for (const Length line : layout.lines(left, right))
      lines.push_back(static_cast<int>(line.units()));
    SCOPED_TRACE("x " + std::to_string(x) + " y " + std::to_string(y));
    ASSERT_TRUE(std::is_sorted(lines.begin(), lines.end()));
    ASSERT_TRUE(lines.empty() || (0 < lines.front() && lines.back() < cloth.width));
    expect_covered(layout, x, y, static_cast<int>(middle.units()), test::SlowFold(cloth, lines));
  }

 private:
  static void expect_covered(const FoldLayout& layout, int x, int y, int middle,
                             const test::SlowFold& fold) {
    const int size = fold.size();
    EXPECT_EQ(layout.folded(Length::units(x), Length::units(y)).units(), size);
    const FoldLayout::Shares& s = layout.shares();
    // Seen from either end: which one is left depends on the first leg.
    const auto fits = [&](bool flipped) {
      const auto pairs = [&](bool at_zero, int strip) {
        return at_zero ? fold.pairs(0, 0, strip) : fold.pairs(size, size - strip, size);
      };
      const int from = static_cast<int>(layout.middle_start(Length::units(x), Length::units(y)).units());
      const int a = flipped ? size - from - middle : from;
      return (s.left_pairs == 0 || x <= 0 || pairs(!flipped, x) == s.left_pairs) &&
             (s.right_pairs == 0 || y <= 0 || pairs(flipped, y) == s.right_pairs) &&
             (s.plies == 0 || middle == 0 || fold.loose(a, a + middle) >= s.plies);
    };
    EXPECT_TRUE(fits(false) || fits(true));
  }
};

TEST_P(Promises, HoldForEveryStripOfSmallCloth) {
  const FoldWay way = GetParam();
  for (int width = 31; width <= 36 && !HasFailure(); ++width)
    for (int selvedge = 0; selvedge <= 2; ++selvedge) {
      SCOPED_TRACE("width " + std::to_string(width) + " selvedge " + std::to_string(selvedge));
      const Fabric fabric{Length::units(width), Length::units(selvedge), Length::units(1),
                          Nap::none, ""};
      for (const auto& layout : layouts_of(way, fabric, {kUnit, kUnit, Length::units(width)})) {
        const SizeRange left = layout->left();
        for (Length x = left.least; x <= left.most; x += Length::units(1)) {
          const SizeRange right = layout->right(x);
          for (Length y = right.least; y <= right.most; y += Length::units(1))
            expect_kept(*layout, static_cast<int>(x.units()), static_cast<int>(y.units()),
                        {width, selvedge, width});
        }
      }
    }
}

std::vector<FoldWay> ways_across() {
  std::vector<FoldWay> ways = all_ways(6);
  std::erase_if(ways, [](const FoldWay& way) { return way.end_to_end; });
  return ways;
}

INSTANTIATE_TEST_SUITE_P(FoldLayout, Promises, testing::ValuesIn(ways_across()), test::way_title);

// Legs of 500: strips from both sides of a leg may meet on it and not overlap.
TEST(FoldLayout, PlainThirdsHoldNoStripsThatOverlapOnALeg) {
  for (const auto& layout : layouts(kPlainThirds)) {
    EXPECT_EQ(layout->middle(mm(300), mm(200)), Length());
    EXPECT_EQ(layout->middle(mm(300), mm(200) + kUnit), FoldLayout::kNoRoom);
    EXPECT_GT(layout->middle(mm(100), mm(200)), Length());
  }
}

}  // namespace
}  // namespace foldyard
