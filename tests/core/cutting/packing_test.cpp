#include "cutting/packing.h"

#include <gtest/gtest.h>

#include "core/support/lengths.h"
#include "core/support/small_goods.h"

namespace foldyard {
namespace {

using test::shape;
using test::u;

const std::vector<Shape> kTwoSizes{shape(10, 20, 30), shape(20, 20, 50)};
const Objective kFewCuts{true, std::int64_t{1} << 40, 1};

TEST(Packing, GivesBackTheCellItWasMadeOf) {
  const Packing packing(kFewCuts, kTwoSizes, u(100), u(200), u(10));
  const Wide value = packing.gain<Wide>(80, 1) - packing.cut<Wide>(u(100)) - packing.cut<Wide>(u(20));
  EXPECT_EQ(packing.unpack(value), (Cell{80, 2 * kFewCuts.per_cut + 120}));
  EXPECT_EQ(packing.unpack(0), Cell{});
}

TEST(Packing, PutsGainBeforeCutsAndCutsBeforeTravel) {
  const Packing packing(kFewCuts, kTwoSizes, u(100), u(200), u(10));
  const Wide more = packing.gain<Wide>(60, 1), less = packing.gain<Wide>(50, 1);
  EXPECT_GT(more - 100 * packing.cut<Wide>(u(200)), less);
  // 100 cuts of 10, or 99 of 200: fewer cuts win.
  EXPECT_GT(more - 99 * packing.cut<Wide>(u(200)), more - 100 * packing.cut<Wide>(u(10)));
}

// A cut for 5 and a unit of travel for 1: the sum counts, not the cuts.
TEST(Packing, AddsCutsAndTravelUpWhereACutIsWorthLittle) {
  const Packing packing({true, 5, 1}, kTwoSizes, u(100), u(200), u(10));
  const Wide gain = packing.gain<Wide>(60, 1);
  const Wide two_short = gain - 2 * packing.cut<Wide>(u(10)), one_long = gain - packing.cut<Wide>(u(100));
  EXPECT_GT(two_short, one_long);
  EXPECT_EQ(packing.unpack(two_short), (Cell{60, 30}));
  EXPECT_EQ(packing.unpack(one_long), (Cell{60, 105}));
}

TEST(Packing, CountsGainForEachPlyAndCutsOnce) {
  const Packing packing(kFewCuts, kTwoSizes, u(100), u(200), u(10));
  const Wide one = packing.gain<Wide>(30, 1) - packing.cut<Wide>(u(50));
  EXPECT_EQ(packing.unpack(packing.times(one, 3)), (Cell{90, kFewCuts.per_cut + 50}));
  EXPECT_EQ(packing.times(one, 1), one);
  EXPECT_EQ(packing.unpack(packing.without_cost(one)), (Cell{30, 0}));
}

TEST(Packing, IsNetWorthWhereTimeIsWeighed) {
  const Packing packing({false, 7, 2}, kTwoSizes, u(100), u(200), u(10));
  EXPECT_EQ(packing.gain<std::int64_t>(30, 4), 120);
  EXPECT_EQ(packing.cut<std::int64_t>(u(15)), 7 + 30);  // travel to the unit
  EXPECT_EQ(packing.times<std::int64_t>(50, 3), 50);    // counted by the table
}

TEST(Packing, SaysWhereSixtyFourBitsAreTooFew) {
  EXPECT_FALSE(Packing(kFewCuts, kTwoSizes, u(100), u(200)).is_wide());
  // A million small panels of great worth, no two worths alike.
  const std::vector<Shape> dear{shape(7, 11, 1'000'000'000), shape(11, 7, 999'999'999)};
  const Packing wide(kFewCuts, dear, u(10'000), u(10'000));
  EXPECT_TRUE(wide.is_wide());
  const Wide value = wide.gain<Wide>(1'000'000'000, 1) * 1'000'000 - 3 * wide.cut<Wide>(u(9'999));
  EXPECT_EQ(wide.unpack(value), (Cell{1'000'000'000'000'000, 3 * (kFewCuts.per_cut + 9'999)}));
}

TEST(Packing, AddsUpWhatCannotBeWithoutTurningPositive) {
  const std::int64_t most = (std::int64_t{1} << 59);
  EXPECT_LT(kNever<std::int64_t> + most, 0);
  EXPECT_LT(3 * kNever<std::int64_t>, kNever<std::int64_t>);
}

}  // namespace
}  // namespace foldyard
