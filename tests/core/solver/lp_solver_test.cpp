#include "solver/lp_solver.h"

#include <gtest/gtest.h>

#include <functional>
#include <limits>
#include <utility>
#include <vector>

namespace foldyard {
namespace {

constexpr double kNoLimit = LpSolver::kNoLimit;

TEST(LpSolver, SolvesTheExampleOfItsHeader) {
  LpSolver lp;
  const int sum = lp.add_row(4, kNoLimit), least_x = lp.add_row(1, kNoLimit);
  const int x = lp.add_column(3, kNoLimit, {{sum, 1}, {least_x, 1}});
  const int y = lp.add_column(2, kNoLimit, {{sum, 1}});
  ASSERT_TRUE(lp.solve());
  EXPECT_NEAR(lp.value(x), 1, 1e-9);
  EXPECT_NEAR(lp.value(y), 3, 1e-9);
  EXPECT_NEAR(lp.cost(), 9, 1e-9);
  EXPECT_NEAR(lp.price(sum), 2, 1e-9);
  EXPECT_NEAR(lp.price(least_x), 1, 1e-9);
}

// The Wyndor Glass problem: profits 3 and 5, limits 4, 12 and 18; the answer is 36
// with shadow prices 0, 3/2 and 1. Source: F. S. Hillier, G. J. Lieberman,
// "Introduction to Operations Research", chapter 3 (from memory, no page seen).
TEST(LpSolver, SolvesATextbookExample) {
  LpSolver lp;
  const int a = lp.add_row(-kNoLimit, 4), b = lp.add_row(-kNoLimit, 12), c = lp.add_row(-kNoLimit, 18);
  const int doors = lp.add_column(-3, kNoLimit, {{a, 1}, {c, 3}});
  const int windows = lp.add_column(-5, kNoLimit, {{b, 2}, {c, 2}});
  ASSERT_TRUE(lp.solve());
  EXPECT_NEAR(lp.cost(), -36, 1e-9);
  EXPECT_NEAR(lp.value(doors), 2, 1e-9);
  EXPECT_NEAR(lp.value(windows), 6, 1e-9);
  EXPECT_NEAR(lp.price(a), 0, 1e-9);
  EXPECT_NEAR(lp.price(b), -1.5, 1e-9);
  EXPECT_NEAR(lp.price(c), -1, 1e-9);
}

TEST(LpSolver, GoesOnFromAnAnswer) {
  LpSolver lp;
  const int sum = lp.add_row(6, kNoLimit);
  const int dear = lp.add_column(5, kNoLimit, {{sum, 1}});
  ASSERT_TRUE(lp.solve());
  EXPECT_NEAR(lp.cost(), 30, 1e-9);
  const int cheap = lp.add_column(2, 4, {{sum, 1}});  // 4 at 2, 2 at 5
  ASSERT_TRUE(lp.solve());
  EXPECT_NEAR(lp.cost(), 18, 1e-9);
  lp.set_most(cheap, 5);
  lp.set_row(sum, 7, kNoLimit);  // 5 at 2, 2 at 5
  ASSERT_TRUE(lp.solve());
  EXPECT_NEAR(lp.cost(), 20, 1e-9);
  lp.set_cost(dear, 1);
  ASSERT_TRUE(lp.solve());
  EXPECT_NEAR(lp.cost(), 7, 1e-9);
}

TEST(LpSolver, SaysWhereThereIsNoAnswer) {
  LpSolver none;
  const int row = none.add_row(3, kNoLimit);
  none.add_column(1, 2, {{row, 1}});
  EXPECT_FALSE(none.solve());
  EXPECT_EQ(none.cost(), 0);
  LpSolver endless;
  const int free = endless.add_row(0, kNoLimit);
  endless.add_column(-1, kNoLimit, {{free, 1}});
  EXPECT_FALSE(endless.solve());
}

TEST(LpSolver, RefusesWhatIsNoNumber) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  LpSolver cost, row, term;
  cost.add_column(nan, 1, {});
  EXPECT_FALSE(cost.solve());
  row.add_row(nan, 1);
  EXPECT_FALSE(row.solve());
  term.add_column(1, 1, {{0, 1}});  // no such row
  EXPECT_FALSE(term.solve());
  LpSolver later;
  const int x = later.add_column(1, 1, {});
  ASSERT_TRUE(later.solve());
  later.set_cost(x, nan);
  EXPECT_FALSE(later.solve());
}

// Least x + y with x + y ≥ 1, and a cost of 1; x is column 0, the sum is row 0.
LpSolver small_model() {
  LpSolver lp;
  const int sum = lp.add_row(1, kNoLimit);
  lp.add_column(1, 5, {{sum, 1}});
  lp.add_column(1, 5, {{sum, 1}});
  return lp;
}

TEST(LpSolver, RefusesEachNumberThatIsNotFinite) {
  for (const double no_number : {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity(),
                                 -std::numeric_limits<double>::infinity()}) {
    const std::vector<std::function<void(LpSolver&)>> breaks{
        [&](LpSolver& lp) { lp.add_row(no_number, 1); },
        [&](LpSolver& lp) { lp.add_row(0, no_number); },
        [&](LpSolver& lp) { lp.add_column(no_number, 1, {}); },
        [&](LpSolver& lp) { lp.add_column(1, no_number, {}); },
        [&](LpSolver& lp) { lp.add_column(1, 1, {{0, no_number}}); },
        [&](LpSolver& lp) { lp.set_row(0, no_number, 1); },
        [&](LpSolver& lp) { lp.set_row(0, 0, no_number); },
        [&](LpSolver& lp) { lp.set_cost(0, no_number); },
        [&](LpSolver& lp) { lp.set_most(0, no_number); }};
    for (std::size_t i = 0; i < breaks.size(); ++i) {
      LpSolver lp = small_model();
      ASSERT_TRUE(lp.solve());
      breaks[i](lp);
      EXPECT_FALSE(lp.solve()) << no_number << " in way " << i;
    }
  }
}

TEST(LpSolver, RefusesLimitsThatCrossAndRowsAndColumnsThereAreNoneOf) {
  const std::vector<std::function<void(LpSolver&)>> breaks{
      [](LpSolver& lp) { lp.add_row(2, 1); },
      [](LpSolver& lp) { lp.add_column(1, -1, {}); },
      [](LpSolver& lp) { lp.add_column(1, 1, {{-1, 1}}); },
      [](LpSolver& lp) { lp.add_column(1, 1, {{1, 1}}); },
      [](LpSolver& lp) { lp.set_row(0, 2, 1); },
      [](LpSolver& lp) { lp.set_row(-1, 0, 1); },
      [](LpSolver& lp) { lp.set_row(1, 0, 1); },
      [](LpSolver& lp) { lp.set_cost(-1, 1); },
      [](LpSolver& lp) { lp.set_cost(2, 1); },
      [](LpSolver& lp) { lp.set_most(0, -1); },
      [](LpSolver& lp) { lp.set_most(-1, 1); },
      [](LpSolver& lp) { lp.set_most(2, 1); }};
  for (std::size_t i = 0; i < breaks.size(); ++i) {
    LpSolver lp = small_model();
    ASSERT_TRUE(lp.solve());
    breaks[i](lp);
    EXPECT_FALSE(lp.solve()) << "way " << i;
  }
}

TEST(LpSolver, IsUnsoundFromThereOn) {
  LpSolver lp = small_model();
  ASSERT_TRUE(lp.solve());
  lp.set_cost(7, 1);
  EXPECT_FALSE(lp.solve());
  lp.add_row(0, 1);
  lp.add_column(1, 1, {{0, 1}});
  lp.set_row(0, 1, 2);
  lp.set_cost(0, 1);
  lp.set_most(0, 1);
  EXPECT_FALSE(lp.solve());
  EXPECT_EQ(lp.cost(), 0);
  EXPECT_EQ(lp.value(0), 0);
  EXPECT_EQ(lp.price(0), 0);
}

TEST(LpSolver, HasNothingOfRowsAndColumnsThereAreNoneOf) {
  LpSolver lp = small_model();
  EXPECT_EQ(lp.value(0), 0);  // no answer yet
  EXPECT_EQ(lp.price(0), 0);
  ASSERT_TRUE(lp.solve());
  EXPECT_NEAR(lp.value(0) + lp.value(1), 1, 1e-9);
  EXPECT_NEAR(lp.price(0), 1, 1e-9);
  EXPECT_EQ(lp.value(-1), 0);
  EXPECT_EQ(lp.value(2), 0);
  EXPECT_EQ(lp.price(-1), 0);
  EXPECT_EQ(lp.price(1), 0);
}

TEST(LpSolver, KeepsItsModelWhenItIsMoved) {
  LpSolver first = small_model();
  ASSERT_TRUE(first.solve());
  LpSolver second(std::move(first));
  second.set_row(0, 3, kNoLimit);
  ASSERT_TRUE(second.solve());
  EXPECT_NEAR(second.cost(), 3, 1e-9);
  LpSolver third;
  third = std::move(second);
  EXPECT_EQ(third.rows(), 1);
  EXPECT_EQ(third.columns(), 2);
  EXPECT_NEAR(third.cost(), 3, 1e-9);
}

TEST(LpSolver, SolvesTheSameTwice) {
  const auto solved = [] {
    LpSolver lp;
    for (int r = 0; r < 5; ++r) lp.add_row(7 + 3 * r, kNoLimit);
    for (int c = 0; c < 20; ++c)
      lp.add_column(3 + c * 7 % 5, kNoLimit, {{c % 5, 1.0 + c % 3}, {(c + 2) % 5, 2.0}});
    EXPECT_TRUE(lp.solve());
    std::vector<double> values;
    for (int c = 0; c < lp.columns(); ++c) values.push_back(lp.value(c));
    return values;
  };
  EXPECT_EQ(solved(), solved());
}

}  // namespace
}  // namespace foldyard
