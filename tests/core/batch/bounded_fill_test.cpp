#include "batch/bounded_fill.h"

#include <gtest/gtest.h>

#include "core/support/dice.h"

namespace foldyard {
namespace {

using Counts = std::vector<std::int64_t>;

TEST(BoundedFill, TakesTheMostValueThatFits) {
  const BoundedFill fill({Length::mm(45), Length::mm(30)}, Length::mm(100));
  const BoundedFill::Filling best = fill.best({5, 3}, {3, 3});
  EXPECT_EQ(best.counts, (Counts{2, 0}));
  EXPECT_EQ(best.value, 10);
  EXPECT_EQ(best.bound, 10);
}

TEST(BoundedFill, KeepsToTheCopies) {
  const BoundedFill fill({Length::mm(45), Length::mm(30)}, Length::mm(100));
  EXPECT_EQ(fill.best({5, 3}, {1, 3}).counts, (Counts{0, 3}));  // 9, against 8 of 45 + 30
  EXPECT_EQ(fill.best({5, 3}, {1, 2}).counts, (Counts{1, 1}));
  EXPECT_EQ(fill.best({5, 3}, {0, 2}).counts, (Counts{0, 2}));
  EXPECT_EQ(fill.best({5, 0}, {0, 9}).counts, (Counts{0, 0}));
}

std::int64_t slow_best(const std::vector<int>& sizes, const Counts& values, const Counts& most, int room,
                       std::size_t from = 0) {
  if (from == sizes.size()) return 0;
  std::int64_t best = 0;
  for (int n = 0; n <= most[from] && n * sizes[from] <= room; ++n)
    best = std::max(best, n * values[from] + slow_best(sizes, values, most, room - n * sizes[from], from + 1));
  return best;
}

TEST(BoundedFill, AgreesWithTryingAll) {
  const unsigned seed = test::first_seed();
  for (unsigned i = 0; i < 200; ++i) {
    test::Dice dice(seed + i);
    std::vector<int> sizes;
    std::vector<Length> lengths;
    Counts values, most;
    for (int k = dice.from_to(1, 4); k > 0; --k) {
      sizes.push_back(dice.from_to(1, 12));
      lengths.push_back(Length::mm(sizes.back()));
      values.push_back(dice.from_to(0, 9));
      most.push_back(dice.from_to(0, 5));
    }
    const int room = dice.from_to(1, 30);
    const BoundedFill::Filling best = BoundedFill(lengths, Length::mm(room)).best(values, most);
    EXPECT_EQ(best.value, slow_best(sizes, values, most, room)) << "seed " << seed + i;
    std::int64_t length = 0, value = 0;
    for (std::size_t k = 0; k < sizes.size(); ++k) {
      length += best.counts[k] * sizes[k];
      value += best.counts[k] * values[k];
      EXPECT_LE(best.counts[k], most[k]);
    }
    EXPECT_LE(length, room);
    EXPECT_EQ(value, best.value);
  }
}

// 50 m in units of 1/320 mm are 16 million places: too many.
TEST(BoundedFill, RoundsTheSafeWayWhereSizesShareNoUnit) {
  const Length whole = Length::units(16'000'001);
  const Length third = Length::units(5'333'334);  // three are one unit too long
  const BoundedFill fill({third, Length::units(7'000'001)}, whole);
  EXPECT_FALSE(fill.is_exact());
  const BoundedFill::Filling best = fill.best({7, 0}, {9, 9});
  EXPECT_EQ(best.counts, (Counts{2, 0}));
  EXPECT_EQ(best.bound, 21);
  EXPECT_EQ(BoundedFill({whole, third}, whole).best({9, 1}, {1, 1}).counts, (Counts{1, 0}));
}

// In a coarse unit of 11 the short piece takes a whole place and, for the bound, none.
TEST(BoundedFill, BoundsPiecesThatAreShorterThanItsUnit) {
  const BoundedFill fill({Length::units(7), Length::units(500'000)}, Length::units(1'000'001));
  ASSERT_FALSE(fill.is_exact());
  const BoundedFill::Filling best = fill.best({1, 60'000}, {150'000, 2});
  // One of the long leaves room for 71 428 of the short; two leave none.
  EXPECT_GE(best.bound, 60'000 + 71'428);
  EXPECT_LE(best.counts[0] * 7 + best.counts[1] * 500'000, 1'000'001);
  EXPECT_EQ(best.value, best.counts[0] + best.counts[1] * 60'000);
  EXPECT_GE(best.value, 60'000 + 500'001 / 11 - 1);
}

}  // namespace
}  // namespace foldyard
