#include "batch/order_state.h"

#include <gtest/gtest.h>

#include "core/support/lengths.h"
#include "core/support/small_case.h"

namespace foldyard {
namespace {

using test::u;

TEST(OrderState, CutsWhatFits) {
  const OrderCase order = test::small_case();
  const LengthPool pool = test::small_pool();
  OrderState state = empty_state(order);
  RollState& blue = state.rolls[1];
  EXPECT_EQ(times_it_fits(order.rolls[1], blue, pool, 0), 2);  // of 10 in 25
  EXPECT_TRUE(cut_from(order.rolls[1], blue, pool, 0));
  EXPECT_TRUE(cut_from(order.rolls[1], blue, pool, 0));
  EXPECT_FALSE(cut_from(order.rolls[1], blue, pool, 1));  // 6 in 5
  EXPECT_EQ(times_it_fits(order.rolls[1], blue, pool, 1), 0);
  EXPECT_EQ(room_left(order.rolls[1], blue, pool, 0), u(5));
  EXPECT_EQ(cut_off(order.rolls[1], blue, pool), u(22));  // 2 squared off, 2 × 10
  RollState& red = state.rolls[0];
  EXPECT_TRUE(cut_from(order.rolls[0], red, pool, 2));
  EXPECT_TRUE(cut_from(order.rolls[0], red, pool, 0));  // another way
  EXPECT_EQ(yield_of(order, state, pool), (ByClothAndPanel{{6, 3}, {6, 0}}));
}

TEST(OrderState, PaysForClothUpToTheLastLength) {
  OrderCase order = test::small_case();
  const LengthPool pool = test::small_pool();
  order.rolls[0].stretches = {{u(2), u(9)}, {u(15), u(42)}};  // a flaw between
  RollState red;
  EXPECT_TRUE(cut_off(order.rolls[0], red, pool).is_zero());
  EXPECT_TRUE(cut_from(order.rolls[0], red, pool, 1));  // 6 in 7
  EXPECT_EQ(cut_off(order.rolls[0], red, pool), u(8));
  EXPECT_TRUE(cut_from(order.rolls[0], red, pool, 1));
  EXPECT_EQ(red.lengths[1].stretch, 1);
  EXPECT_EQ(cut_off(order.rolls[0], red, pool), u(21));
}

// Two of four pieces of 100 and all three of 50, of which one is beyond `must`; 8
// units of red at 3. A rule asks for three of the first line from blue and gets two.
TEST(OrderState, AddsUpWhatAPlanComesTo) {
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
  // Roll and length, one lay; 34 units of red at 3 and 27 of blue at 2 are kept.
  EXPECT_EQ(score.lifts, 1);
  EXPECT_EQ(score.ticks, 1000 + 7 + 100);
  EXPECT_EQ(score.remnants, 34 * 3 + 27 * 2);
}

TEST(OrderState, StacksLengthsAlikeUpToTheCutter) {
  const OrderCase order = test::small_case();  // two plies under the cutter
  const LengthPool pool = test::small_pool();
  OrderState state = empty_state(order);
  for (int n = 0; n < 3; ++n) ASSERT_TRUE(cut_from(order.rolls[0], state.rolls[0], pool, 0));
  ASSERT_TRUE(cut_from(order.rolls[1], state.rolls[1], pool, 0));
  ASSERT_TRUE(cut_from(order.rolls[1], state.rolls[1], pool, 1));
  EXPECT_EQ(score_of(order, state, pool).lifts, 3);
}

TEST(OrderState, RanksByTheAimsInTheirOrder) {
  OrderCase order = test::small_case();
  const OrderScore score{300, 100, 50, 4, 900, 70};
  EXPECT_TRUE(is_better(order, {301, 200, 99, 9, 999, 0}, score));
  EXPECT_TRUE(is_better(order, {300, 99, 99, 9, 999, 0}, score));
  EXPECT_TRUE(is_better(order, {300, 100, 49, 9, 999, 0}, score));
  EXPECT_TRUE(is_better(order, {300, 100, 50, 3, 999, 0}, score));
  EXPECT_TRUE(is_better(order, {300, 100, 50, 4, 899, 0}, score));
  EXPECT_TRUE(is_better(order, {300, 100, 50, 4, 900, 71}, score));
  EXPECT_FALSE(is_better(order, score, score));
  EXPECT_FALSE(is_better(order, {300, 100, 51, 1, 1, 999}, score));
  order.aims = {CaseAim::lifts, CaseAim::cost};
  EXPECT_TRUE(is_better(order, {300, 100, 51, 3, 999, 0}, score));
  EXPECT_FALSE(is_better(order, {300, 100, 1, 5, 1, 999}, score));
}

}  // namespace
}  // namespace foldyard
