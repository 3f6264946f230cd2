#include "batch/order_dive.h"

#include <gtest/gtest.h>

#include "core/support/small_case.h"

namespace foldyard {
namespace {

// Sizes and prices as small as those of the small case are nothing in metres, so it
// is made a million times as large.
OrderCase large_case() {
  OrderCase order = test::small_case();
  const auto grow = [](Length& l) { l = l * 320'000; };
  for (CaseRoll& roll : order.rolls) {
    grow(roll.squaring);
    grow(roll.room);
    roll.stretches = {{roll.squaring, roll.squaring + roll.room}};
    roll.price.parts *= 10'000;
    roll.price.units = 320'000;
  }
  for (CaseSource& source : order.sources) grow(source.room);
  for (PieceLine& line : order.lines) line.worth *= 10'000;
  return order;
}

LengthPool large_pool() {
  LengthPool pool = test::small_pool();
  for (OrderLength& l : pool) l.size = l.size * 320'000;
  return pool;
}

OrderState dived(const OrderCase& order, LengthPool& pool, const std::atomic<bool>* cancelled = nullptr) {
  OrderModel model(order, {1, 100, 1, 10});
  for (int s = 0; s < std::ssize(order.sources); ++s)
    for (int l = 0; l < std::ssize(pool); ++l) model.allow(s, l, pool);
  return dive({order, pool, test::kAreas, {}, {}, cancelled}, model, empty_state(order));
}

TEST(OrderDive, CutsNothingOnceStopped) {
  const OrderCase order = large_case();
  LengthPool pool = large_pool();
  const std::atomic<bool> stopped = true;
  const OrderState state = dived(order, pool, &stopped);
  EXPECT_EQ(state.rolls, empty_state(order).rolls);
  EXPECT_EQ(state.pieces, empty_state(order).pieces);
}

// Two red lengths of 6 give two of panel 0 and four of panel 1; a blue one of 10 gives
// the other two of panel 0: 14 units at 3 and 12 at 2 make all.
TEST(OrderDive, MakesAllThatMustBeMade) {
  const OrderCase order = large_case();
  LengthPool pool = large_pool();
  const OrderState state = dived(order, pool);
  const OrderScore score = score_of(order, state, pool);
  EXPECT_EQ(score.filled, 10'000 * (4 * 100 + 2 * 50));
  EXPECT_LE(score.cost, 10'000 * (14 * 3 + 12 * 2));
}

TEST(OrderDive, MakesWhatItCanWhereClothIsShort) {
  OrderCase order = large_case();
  order.lines[0].must = 40;
  LengthPool pool = large_pool();
  const OrderState state = dived(order, pool);
  EXPECT_GT(score_of(order, state, pool).filled, 0);
  EXPECT_LT(pieces_of(state.pieces, 0), 40);
  for (std::size_t r = 0; r < order.rolls.size(); ++r) EXPECT_GE(room_left(order.rolls[r], state.rolls[r], pool, 0), Length());
}

// Without a turn nothing is cut, and what is cut already is counted: two lengths of 6 give
// two of panel 0 and four of panel 1, all that the second line needs.
TEST(OrderDive, CountsWhatIsCutWhereItMayCutNothing) {
  const OrderCase order = large_case();
  LengthPool pool = large_pool();
  OrderState cut = empty_state(order);
  for (int n = 0; n < 2; ++n) ASSERT_TRUE(cut_from(order.rolls[0], cut.rolls[0], pool, 1));
  OrderModel model(order, {1, 100, 1, 10});
  const OrderState state = dive({order, pool, test::kAreas, {}}, model, cut, {0.5, 0});
  EXPECT_EQ(state.rolls, cut.rolls);
  EXPECT_EQ(pieces_of(state.pieces, 0), 2);
  EXPECT_EQ(pieces_of(state.pieces, 1), 2);
}

// Together two rolls of 16 hold five lengths of 6, for the model; each holds but two.
TEST(OrderDive, CutsNoMoreThanEachRollHolds) {
  OrderCase order = large_case();
  order.lines = {{1'000'000, 5, 0, {0}, {{0, 1, {}}}, {}}};
  order.rolls[1] = order.rolls[0];
  for (CaseRoll& roll : order.rolls) {
    roll.room = Length::units(16 * 320'000);
    roll.stretches = {{roll.squaring, roll.squaring + roll.room}};
  }
  order.sources = {{0, 0, {0, 1}, order.rolls[0].room}};
  LengthPool pool = {large_pool()[1]};
  const OrderState state = dived(order, pool);
  for (const RollState& roll : state.rolls) EXPECT_EQ(roll.lengths.size(), 2u);
  EXPECT_EQ(pieces_of(state.pieces, 0), 4);
}

// The second line's panels may come of either cloth; what is made of both is what is asked.
TEST(OrderDive, SharesWhatNamesClothsAmongThem) {
  OrderCase order = large_case();
  order.lines[1].needs[0].from = {0, 1};
  for (std::int64_t must = 1; must <= 6; ++must) {
    order.lines[1].must = must;
    LengthPool pool = large_pool();
    const OrderState state = dived(order, pool);
    EXPECT_EQ(score_of(order, state, pool).filled, 10'000 * (4 * 100 + must * 50)) << must;
    const auto yield = yield_of(order, state, pool);
    EXPECT_GE(yield[0][1] + yield[1][1], must * order.lines[1].needs[0].count) << must;
  }
}

}  // namespace
}  // namespace foldyard
