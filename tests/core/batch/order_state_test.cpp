#include "batch/order_state.h"

#include <gtest/gtest.h>

#include "core/support/small_case.h"

namespace foldyard {
namespace {

Length units(int n) { return Length::units(n); }

TEST(OrderState, CutsWhatFitsUnderOneWay) {
  const OrderCase order = test::small_case();
  const LengthPool pool = test::small_pool();
  OrderState state = empty_state(order);
  RollState& blue = state.rolls[1];
  EXPECT_EQ(times_it_fits(order.rolls[1], blue, pool, 0), 2);  // of 10 in 25
  EXPECT_TRUE(cut_from(order.rolls[1], blue, pool, 0));
  EXPECT_TRUE(cut_from(order.rolls[1], blue, pool, 0));
  EXPECT_FALSE(cut_from(order.rolls[1], blue, pool, 1));  // 6 in 5
  EXPECT_EQ(times_it_fits(order.rolls[1], blue, pool, 1), 0);
  EXPECT_EQ(way_of(blue, pool), 0);
  EXPECT_EQ(room_left(order.rolls[1], blue, pool, 0), units(5));
  EXPECT_EQ(cut_off(order.rolls[1], blue, pool), units(22));  // 2 squared off, 2 × 10
  RollState& red = state.rolls[0];
  EXPECT_TRUE(cut_from(order.rolls[0], red, pool, 2));
  EXPECT_FALSE(cut_from(order.rolls[0], red, pool, 0));  // cut another way
  EXPECT_EQ(yield_of(order, state, pool), (ByClothAndPanel{{3, 3}, {6, 0}}));
}

TEST(OrderState, PaysForClothUpToTheLastLength) {
  OrderCase order = test::small_case();
  const LengthPool pool = test::small_pool();
  order.rolls[0].stretches = {{units(2), units(9)}, {units(15), units(42)}};  // a flaw between
  RollState red;
  EXPECT_TRUE(cut_off(order.rolls[0], red, pool).is_zero());
  EXPECT_TRUE(cut_from(order.rolls[0], red, pool, 1));  // 6 in 7
  EXPECT_EQ(cut_off(order.rolls[0], red, pool), units(8));
  EXPECT_TRUE(cut_from(order.rolls[0], red, pool, 1));
  EXPECT_EQ(red.lengths[1].stretch, 1);
  EXPECT_EQ(cut_off(order.rolls[0], red, pool), units(21));
}

// Two of four pieces of 100 and all three of 50, of which one is beyond `must`; 8
// units of red at 3. A rule asks for three of the first line from blue and gets two.
TEST(OrderState, ScoresByWhatIsFilledThenByRulesThenByCost) {
  OrderCase order = test::small_case();
  order.lines[0].rules = {{{1}, 3, kAnyNumber}};
  const LengthPool pool = test::small_pool();
  OrderState state = empty_state(order);
  ASSERT_TRUE(cut_from(order.rolls[0], state.rolls[0], pool, 1));
  state.pieces = {{0, 2}, {3, 0}};
  EXPECT_EQ(pieces_of(state.pieces, 1), 3);
  EXPECT_EQ(missing(order.lines[0].rules[0], state.pieces[0]), 1);
  const OrderScore score = score_of(order, state, pool);
  EXPECT_EQ(score.filled, 2 * 100 + 2 * 50);
  EXPECT_EQ(score.short_of_rules, 100);
  EXPECT_EQ(score.cost, 8 * 3 - 50);
  EXPECT_TRUE(is_better({301, 100, 9}, score));
  EXPECT_TRUE(is_better({300, 99, 9}, score));
  EXPECT_TRUE(is_better({300, 100, -27}, score));
  EXPECT_FALSE(is_better({300, 100, -26}, score));
  EXPECT_FALSE(is_better({299, 0, -99}, score));
}

}  // namespace
}  // namespace foldyard
