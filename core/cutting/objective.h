#pragma once

// Objective: how two ways of cutting the same cloth are compared.
//
// A Cell is what a rectangle gives: gain from one ply of it, and the cost of
// cutting all plies at once. `copies` plies of it lie under the blade.
//   worth_first: more gain, then less cost (cost orders cuts before travel)
//   else:        the most of copies × gain − cost (both in working time)
// Equal ones keep the one found first, so the answer is the same everywhere.
//
// Example: worth_first, per_cut 2^40, per_unit 1: two cuts of 100 units each
// cost 2^41 + 200, less than three cuts of any travel below 2^40 units.

#include <cstdint>

namespace foldyard {

struct Cell {
  std::int64_t gain = 0;
  std::int64_t cost = 0;
  constexpr bool operator==(const Cell&) const = default;
};

struct Objective {
  bool worth_first = true;
  std::int64_t per_cut = std::int64_t{1} << 40;
  std::int64_t per_unit = 1;  // of travel, a unit of Length

  std::int64_t cut(std::int64_t travel_units) const { return per_cut + per_unit * travel_units; }
};

template <bool kWorthFirst>
constexpr bool is_better(const Cell& a, const Cell& b, std::int64_t copies) {
  if constexpr (kWorthFirst) {
    return a.gain != b.gain ? a.gain > b.gain : a.cost < b.cost;
  } else {
    return copies * a.gain - a.cost > copies * b.gain - b.cost;
  }
}

constexpr bool is_better(const Objective& aim, const Cell& a, const Cell& b, std::int64_t copies) {
  return aim.worth_first ? is_better<true>(a, b, copies) : is_better<false>(a, b, copies);
}

}  // namespace foldyard
