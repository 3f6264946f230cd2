#include "batch/order_improve.h"

#include <gtest/gtest.h>

#include "batch/order_pieces.h"
#include "core/support/small_case.h"

namespace foldyard {
namespace {

using test::kAreas;

// Four lengths of 6 for four pieces, where a length of 10 and one of 6 do.
OrderState wasteful(const OrderCase& order, const LengthPool& pool) {
  OrderState state = empty_state(order);
  for (int n = 0; n < 4; ++n) EXPECT_TRUE(cut_from(order.rolls[0], state.rolls[0], pool, 1));
  state.pieces = pieces_from(order, yield_of(order, state, pool), {{4, 0}, {0, 0}});
  return state;
}

TEST(OrderImprove, FindsACheaperPlan) {
  OrderCase order = test::small_case();
  order.lines[1].must = order.lines[1].may = 0;
  LengthPool pool = test::small_pool();
  const FillTools tools{order, pool, kAreas, {}};
  OrderImprove improve(tools, wasteful(order, pool));
  EXPECT_EQ(improve.score().cost, 3 * (2 + 24));
  for (int n = 0; n < 200; ++n) improve.step();
  EXPECT_EQ(improve.score().filled, 400);
  EXPECT_EQ(improve.score().cost, 3 * (2 + 16));
  const OrderScore again = score_of(order, improve.state(), pool);
  EXPECT_EQ(again.cost, improve.score().cost);
}

TEST(OrderImprove, GoesTheSameWayEveryTime) {
  OrderCase order = test::small_case();
  LengthPool pool = test::small_pool();
  const FillTools tools{order, pool, kAreas, {}};
  OrderImprove one(tools, wasteful(order, pool)), two(tools, wasteful(order, pool));
  for (int n = 0; n < 50; ++n) EXPECT_EQ(one.step(), two.step());
  EXPECT_EQ(one.state().rolls, two.state().rolls);
}

TEST(OrderImprove, DropsLengthsThatNoPieceNeeds) {
  OrderCase order = test::small_case();
  order.lines[1].may = 0;
  LengthPool pool = test::small_pool();
  OrderState state = wasteful(order, pool);
  ASSERT_TRUE(cut_from(order.rolls[1], state.rolls[1], pool, 0));
  drop_idle_lengths({order, pool, kAreas, {}}, state);
  const OrderScore score = score_of(order, state, pool);
  EXPECT_EQ(score.filled, 500);
  EXPECT_LT(score.cost, 3 * 26 + 2 * 12);
}

TEST(OrderImprove, DropsNothingOnceStopped) {
  const OrderCase order = test::small_case();
  LengthPool pool = test::small_pool();
  OrderState state = wasteful(order, pool);
  const std::vector<RollState> before = state.rolls;
  const std::atomic<bool> stopped = true;
  drop_idle_lengths({order, pool, kAreas, {}, {}, &stopped}, state);
  EXPECT_EQ(state.rolls, before);
}

}  // namespace
}  // namespace foldyard
