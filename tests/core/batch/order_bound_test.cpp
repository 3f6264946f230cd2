#include "batch/order_bound.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/support/dice.h"
#include "core/support/small_case.h"

namespace foldyard {
namespace {

// The example of the header.
TEST(OrderBound, IsLeastOfPiecesAndLeastOfRolls) {
  OrderCase order = test::small_case();
  order.lines = {{9, 10, 0, {0}, {{0, 1, {}}}, {}}};
  OrderPrices prices;
  prices.all_must = true;
  prices.panel = {{5, 0}, {7, 0}};
  prices.rules = {{}};
  EXPECT_EQ(static_cast<std::int64_t>(least_of_pieces(order, prices)), 50);
  // 12 panels from 50 units at 1, after 2 units of squaring.
  const CaseRoll roll = test::case_roll(0, 50, 1);
  EXPECT_EQ(least_of_roll(roll, {{Length::units(50), 60}}, prices, 1'000'000), -8);
  EXPECT_EQ(least_of_roll(roll, {{Length::units(50), 52}}, prices, 1'000'000), 0);  // would cost more than it sells
}

// Opening a cloth is charged once and paid to each of its rolls: no roll then cuts more than
// its squaring is worth, and the squaring stands in the bound.
TEST(OrderBound, ChargesTheOpeningOfAClothOnce) {
  OrderCase order = test::small_case();
  order.lines = {{9, 10, 0, {0}, {{0, 1, {}}}, {}}};
  OrderPrices prices;
  prices.all_must = true;
  prices.panel = {{5, 0}, {7, 0}};
  prices.rules = {{}};
  prices.opening = {2, 0};
  EXPECT_EQ(static_cast<std::int64_t>(least_of_pieces(order, prices)), 52);
  const CaseRoll roll = test::case_roll(0, 50, 1);  // squaring 2
  EXPECT_EQ(least_of_roll(roll, {{Length::units(50), 50}}, prices, 1'000'000), 0);
  EXPECT_EQ(least_of_roll(roll, {{Length::units(50), 60}}, prices, 1'000'000), -10);
  EXPECT_LE(static_cast<std::int64_t>(least_of_roll_by_density(roll, 60, Length::units(50), prices)), -10);
}

TEST(OrderBound, MakesPiecesOnlyWhereTheyPayWithoutMust) {
  OrderCase order = test::small_case();
  OrderPrices prices;
  prices.panel = {{60, 20}, {70, 0}};
  prices.rules = {{}, {}};
  prices.must = prices.may = 1;
  // Line 1: 60 against 100, four of them; line 2: 40 against 50, three of them.
  EXPECT_EQ(static_cast<std::int64_t>(least_of_pieces(order, prices)), -160 - 30);
  prices.panel[0] = {120, 30};
  prices.panel[1] = {110, 0};
  EXPECT_EQ(static_cast<std::int64_t>(least_of_pieces(order, prices)), 0);
  prices.all_must = true;  // then at 10 a piece each, two of line 2
  EXPECT_EQ(static_cast<std::int64_t>(least_of_pieces(order, prices)), 4 * 10 + 2 * 10);
}

TEST(OrderBound, TakesNamedPanelsWhereTheyAreCheapestAndGivesRulesBack) {
  OrderCase order = test::small_case();
  order.lines = {{100, 4, 0, {0, 1}, {{0, 1, {}}, {1, 3, {0, 1}}}, {{{1}, 2, kAnyNumber}, {{0}, 0, 3}}}};
  OrderPrices prices;
  prices.all_must = true;
  prices.panel = {{10, 9}, {20, 7}};
  prices.rules = {{{4, 0}, {0, 3}}};
  // From red 10 + 3 × 7 + 3, from blue 20 + 3 × 7 − 4; given back 4 × 2 − 3 × 3.
  EXPECT_EQ(static_cast<std::int64_t>(least_of_pieces(order, prices)), 4 * 34 + 8 - 9);
}

TEST(OrderBound, ByDensityIsNoMoreThanBySizes) {
  OrderPrices prices;
  const CaseRoll roll = test::case_roll(0, 40, 3);
  const std::int64_t exact = least_of_roll(roll, {{Length::units(10), 50}, {Length::units(6), 20}}, prices, 1'000'000);
  EXPECT_EQ(exact, 2 * 3 - 4 * 20);
  EXPECT_LE(least_of_roll_by_density(roll, 50, Length::units(10), prices), exact);
}

// Whatever the prices, no whole plan of small random orders costs less: all numbers
// of two lengths from each of two rolls are tried, with all that can be made of them.
TEST(OrderBound, HoldsForEveryPlanOfSmallOrders) {
  for (unsigned seed = 1; seed < 200; ++seed) {
    test::Dice dice(seed);
    OrderCase order = test::small_case();
    order.lines = {{dice.from_to(5, 60), dice.from_to(0, 4), dice.from_to(0, 3), {0, 1}, {{0, 1, {}}}, {}}};
    const LengthPool pool = test::small_pool();
    OrderPrices prices;
    prices.all_must = true;
    prices.may = 1;
    prices.panel = {{dice.from_to(0, 30), 0}, {dice.from_to(0, 30), 0}};
    prices.rules = {{}};
    Wide bound = least_of_pieces(order, prices);
    for (int r = 0; r < 2; ++r) {
      std::vector<SoldLength> sold;
      for (int l = 0; l < 2; ++l)
        sold.push_back({pool[static_cast<std::size_t>(l)].size,
                        pool[static_cast<std::size_t>(l)].yield[0] * prices.panel[static_cast<std::size_t>(r)][0]});
      bound += least_of_roll(order.rolls[static_cast<std::size_t>(r)], sold, prices, 1'000'000);
    }
    std::int64_t least = 1'000'000;
    const PieceLine& line = order.lines[0];
    for (int a = 0; a <= 4; ++a)
      for (int b = 0; 10 * a + 6 * b <= 40; ++b)
        for (int c = 0; c <= 2; ++c)
          for (int d = 0; 10 * c + 6 * d <= 25; ++d) {
            const std::int64_t made = std::min<std::int64_t>(3 * (a + c) + b + d, line.must + line.may);
            if (made < line.must) continue;
            const std::int64_t red = a + b ? 3 * (2 + 10 * a + 6 * b) : 0, blue = c + d ? 2 * (2 + 10 * c + 6 * d) : 0;
            least = std::min(least, red + blue - line.worth * (made - line.must));
          }
    EXPECT_LE(static_cast<std::int64_t>(bound), least) << "seed " << seed;
  }
}

// A roll that must be cut, or of which lengths are kept, is charged even where it sells too little.
TEST(OrderBound, ByDensityChargesARollThatIsCutAnyway) {
  OrderPrices prices;
  prices.panel = {{5, 0}};
  CaseRoll must = test::case_roll(0, 40, 3), kept = must;
  must.must = true;
  kept.kept = 1;
  kept.kept_size = Length::units(10);
  kept.kept_yield = {2, 0};
  for (const CaseRoll& roll : {must, kept}) {
    const std::int64_t exact = least_of_roll(roll, {{Length::units(10), 50}}, prices, 1'000'000);
    EXPECT_LE(least_of_roll_by_density(roll, 50, Length::units(10), prices), exact);
    EXPECT_GT(least_of_roll(roll, {}, prices, 1'000'000), 0);
  }
  EXPECT_EQ(least_of_roll_by_density(must, 0, Length(), prices), 3 * 2);
  // 36 for the squaring and the kept length, less its two panels.
  EXPECT_EQ(least_of_roll_by_density(kept, 0, Length(), prices), 3 * (2 + 10) - 2 * 5);
}

TEST(OrderBound, ByDensityIsNothingForARollThatSellsNothing) {
  EXPECT_EQ(least_of_roll_by_density(test::case_roll(0, 40, 3), 0, Length(), OrderPrices()), 0);
}

// No cloth can be cut for the line: nothing is made of it, and its rules are given back.
TEST(OrderBound, MakesNothingOfALineWithoutCloths) {
  OrderCase order = test::small_case();
  order.lines = {{100, 4, 0, {}, {{0, 1, {}}}, {{{1}, 2, kAnyNumber}, {{0}, 0, 3}}}};
  OrderPrices prices;
  prices.panel = {{10, 9}, {20, 7}};
  prices.rules = {{{4, 0}, {0, 3}}};
  EXPECT_EQ(static_cast<std::int64_t>(least_of_pieces(order, prices)), 4 * 2 - 3 * 3);
}

}  // namespace
}  // namespace foldyard
