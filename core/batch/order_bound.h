#pragma once

// A bound on every plan of an order, from prices of panels, in whole numbers.
//
// Each panel of each cloth has a price ≥ 0, each rule two. Whatever the prices:
// the cost of a plan is no less than the least of the pieces, each buying its
// panels at these prices, plus the least of the rolls, each selling its panels at
// them. Both are found exactly, apart from each other, as no limit joins them
// any more. Where a plan's pieces buy no more than its rolls sell, and keep the
// rules, the prices cancel out or gain.
// Source: Lagrangian relaxation, A. M. Geoffrion, Mathematical Programming Study 2
// (1974) (from memory, no page seen).
//
// All is counted `scale` times finer than parts. weights: what a part counts in
// cloth, in the worth of pieces that must be made, in that of the others.
// all_must: only plans that make all that must be made are bound.
// opening: a plan cuts one roll or more of each such cloth; each that it cuts is paid the
// price, and one of them is charged.
//
// Example: one line of 10 pieces worth 9, one panel each, price 5; weights of
// cloth 1 and of all else 0, all_must: the pieces' side is 50. A roll from which
// 12 panels can be cut for 52 gives −8: no plan costs less than 42.

#include <vector>

#include "batch/order_case.h"
#include "batch/series.h"
#include "measure/index.h"

namespace foldyard {

struct RulePrice {
  std::int64_t at_least = 0;
  std::int64_t at_most = 0;
};

struct OrderPrices {
  std::int64_t scale = 1;
  std::int64_t cloth = 1;  // weights, scaled
  std::int64_t must = 0;
  std::int64_t may = 0;
  bool all_must = false;
  ByClothAndPanel panel;
  std::vector<std::vector<RulePrice>> rules;  // by line
  // By cloth: for cutting some roll of it at all (cloths_opened); empty: 0. The pieces pay
  // it once, the first roll gets it, so it is only for plans that open all these cloths.
  std::vector<std::int64_t> opening = {};

  std::int64_t opening_of(int of) const { return opening.empty() ? 0 : opening[ix(of)]; }
};

// What a length of this size sells for at the most.
struct SoldLength {
  Length size;
  std::int64_t value = 0;
};

// The least that the pieces come to, less what is on hand: it sells for nothing else.
Wide least_of_pieces(const OrderCase& order, const OrderPrices& prices);
// The least that a roll comes to: 0 where it is not cut, else its cloth less what it
// sells, with that of the lengths that are kept. A roll that must be cut pays its
// squaring at the least.
std::int64_t least_of_roll(const CaseRoll& roll, const std::vector<SoldLength>& lengths,
                           const OrderPrices& prices, std::int64_t steps,
                           const std::atomic<bool>* cancelled = nullptr);
// The same where the lengths are not all known, and no cloth sells for more than
// `value` over `of` of roll.
Wide least_of_roll_by_density(const CaseRoll& roll, Wide value, Length of, const OrderPrices& prices);

}  // namespace foldyard
