#pragma once

// A small case in bare numbers: two cloths of one kind, a roll of each, two panels.
// A line of pieces of panel 0 from either cloth, one of two of panel 1 from the
// first. Lengths of 10 and of 6 units, and an allowance of none.

#include <gtest/gtest.h>

#include "batch/order_pieces.h"
#include "batch/order_state.h"

namespace foldyard::test {

inline CaseRoll case_roll(int cloth, int units, std::int64_t parts_a_unit) {
  const Length squaring = Length::units(2), room = Length::units(units);
  return {cloth, 0, {parts_a_unit, 1}, squaring, room, {{squaring, squaring + room}}, Length::units(1), Length::units(1)};
}

inline OrderCase small_case() {
  OrderCase order;
  order.panels = 2;
  order.kinds = 1;
  order.cloths = {"red", "blue"};
  order.cutter = {Length::units(2), 9};
  order.unroll = Duration::ticks(1000);
  order.rolls = {case_roll(0, 40, 3), case_roll(1, 25, 2)};
  order.sources = {{0, 0, {0}, Length::units(40)}, {1, 0, {1}, Length::units(25)}};
  order.lines = {{100, 4, 0, {0, 1}, {{0, 1, {}}}, {}}, {50, 2, 1, {0}, {{1, 2, {}}}, {}}};
  return order;
}

inline LengthPool small_pool() {
  const Duration each = Duration::ticks(7), lay = Duration::ticks(100);
  return {{0, 0, Length::units(10), {3, 0}, 1, each, lay},
          {0, 0, Length::units(6), {1, 2}, 1, each, lay},
          {0, 1, Length::units(12), {3, 3}, 2, each, lay}};
}

// Of its panels, in any unit.
inline const std::vector<std::int64_t> kAreas = {4, 3};

// Two lengths of 6 from the first roll, and the pieces of the second line that they make.
inline OrderState two_of_six(const OrderCase& order, const LengthPool& pool) {
  OrderState state = empty_state(order);
  for (int n = 0; n < 2; ++n) EXPECT_TRUE(cut_from(order.rolls[0], state.rolls[0], pool, 1));
  state.pieces = pieces_from(order, yield_of(order, state, pool), state.pieces);
  return state;
}

}  // namespace foldyard::test
