#pragma once

// OrderState: which lengths are cut from which rolls, and the pieces made of them.
//
// Lengths of a roll that are kept come first. `lengths` are indices into the pool.
// Worth and cost as in a batch plan; short_of_rules: the worth of the pieces that
// rules ask for and do not get. lifts: lengths of one index lie over each other;
// ticks: basic time, without allowance. remnants: worth of the cloth that is kept.

#include "batch/order_case.h"

namespace foldyard {

using LengthPool = std::vector<OrderLength>;

struct StateLength {
  int length = 0;   // index into the pool
  int stretch = 0;  // of the roll
  bool operator==(const StateLength&) const = default;
};

struct RollState {
  std::vector<StateLength> lengths;
  bool operator==(const RollState&) const = default;
};

struct OrderState {
  std::vector<RollState> rolls;  // as many as the case has
  PiecesMade pieces;
};

struct OrderScore {
  std::int64_t filled = 0;
  std::int64_t short_of_rules = 0;
  std::int64_t cost = 0;
  std::int64_t lifts = 0;
  std::int64_t ticks = 0;
  std::int64_t remnants = 0;
  std::int64_t uncut = 0;  // rolls that must be cut and are not
};

OrderState empty_state(const OrderCase& order);
Length room_left(const CaseRoll& roll, const RollState& state, const LengthPool& pool, int stretch);
// Cuts a length from a roll, in its first stretch with room; false where there is
// none.
bool cut_from(const CaseRoll& roll, RollState& state, const LengthPool& pool, int length);
// How often it still fits.
std::int64_t times_it_fits(const CaseRoll& roll, const RollState& state, const LengthPool& pool, int length);
// From the free end to the last length, 0 where none is cut.
Length cut_off(const CaseRoll& roll, const RollState& state, const LengthPool& pool);

// What is cut, and what is on hand.
ByClothAndPanel yield_of(const OrderCase& order, const OrderState& state, const LengthPool& pool);
std::int64_t pieces_of(const PiecesMade& pieces, int line);
// What pieces short of a rule's least, or 0.
std::int64_t missing(const PieceRule& rule, const std::vector<std::int64_t>& pieces);
OrderScore score_of(const OrderCase& order, const OrderState& state, const LengthPool& pool);
// By filled, then by rules, then by rolls that must be cut, then by the aims in their order.
bool is_better(const OrderCase& order, const OrderScore& a, const OrderScore& b);

}  // namespace foldyard
