#include "batch/order_required.h"

#include <gtest/gtest.h>

#include "core/support/small_case.h"

namespace foldyard {
namespace {

using test::two_of_six;

TEST(OrderRequired, LeavesRollsThatNeedNotBeCut) {
  const OrderCase order = test::small_case();
  const LengthPool pool = test::small_pool();
  OrderState state = two_of_six(order, pool);
  const auto before = state.rolls;
  cut_required(order, pool, state);
  EXPECT_EQ(state.rolls, before);
}

TEST(OrderRequired, LeavesARollUncutOnceStopped) {
  OrderCase order = test::small_case();
  order.rolls[1].must = true;
  const LengthPool pool = test::small_pool();
  OrderState state = two_of_six(order, pool);
  const std::atomic<bool> stopped = true;
  cut_required(order, pool, state, &stopped);
  EXPECT_EQ(score_of(order, state, pool).uncut, 1);
}

// Both lines can be made of the first cloth only in part; a length moved to the second
// roll, cheaper cloth, would lose pieces of the second line, so one more is cut.
TEST(OrderRequired, CutsOneMoreWhereMovingLosesPieces) {
  OrderCase order = test::small_case();
  order.rolls[1].must = true;
  const LengthPool pool = test::small_pool();
  OrderState state = two_of_six(order, pool);
  EXPECT_EQ(score_of(order, state, pool).uncut, 1);
  cut_required(order, pool, state);
  EXPECT_EQ(score_of(order, state, pool).uncut, 0);
  EXPECT_EQ(state.rolls[0].lengths.size(), 2u);
  EXPECT_EQ(pieces_of(state.pieces, 1), 2);
}

TEST(OrderRequired, MovesALengthThatServesAsWellThere) {
  OrderCase order = test::small_case();
  order.rolls[1].must = true;
  order.rolls[1].cloth = 0;
  order.lines[0].must = order.lines[1].may = 0;
  const LengthPool pool = test::small_pool();
  OrderState state = two_of_six(order, pool);
  cut_required(order, pool, state);
  EXPECT_EQ(state.rolls[0].lengths.size() + state.rolls[1].lengths.size(), 2u);
  EXPECT_EQ(score_of(order, state, pool).uncut, 0);
}

TEST(OrderRequired, LeavesUncutWhatHoldsNothing) {
  OrderCase order = test::small_case();
  order.rolls[1].must = true;
  order.rolls[1].stretches = {{Length::units(2), Length::units(5)}};
  const LengthPool pool = test::small_pool();
  OrderState state = two_of_six(order, pool);
  cut_required(order, pool, state);
  EXPECT_EQ(score_of(order, state, pool).uncut, 1);
}

}  // namespace
}  // namespace foldyard
