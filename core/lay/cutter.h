#pragma once

// The cutter and the table, and what fits them.
//
// height: the thickest stack the cutter is rated for; never more is planned.
// most_plies: a cap on plies for heavy cloth, whatever their thickness.
// Table: length along the roll, depth from the near edge to the far edge.
// reach: how far from an edge the cutter can be led; both_sides: one can
// stand on either long side, so the reach counts twice.
//
// Example: height 25 mm, cloth 1.2 mm, 4 plies a length: 25 / 4.8 = 5 lengths.

#include <cstdint>

#include "measure/length.h"

namespace foldyard {

struct Cutter {
  Length height;
  int most_plies = 1;
  bool operator==(const Cutter&) const = default;
};

struct Table {
  Length length;
  Length depth;
  Length reach;
  bool both_sides = false;
  bool operator==(const Table&) const = default;
};

// How many folded lengths may lie in one lift; 0 if not even one.
// REQUIRES thickness > 0, plies ≥ 1.
std::int64_t lengths_per_lift(const Cutter& cutter, Length thickness, int plies);
// The deepest folded length that fits the table and can be reached.
Length deepest_fold(const Table& table);

}  // namespace foldyard
