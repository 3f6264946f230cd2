#pragma once

// A panel: a rectangle that is sewn, as it is cut (seams and hems included).
//
// across is its size from selvedge to selvedge, along its size in the roll's
// direction. may_turn: it may also lie turned by a quarter, its across size
// along the roll; never true in effect on one-way cloth. on_fold: it may be
// cut double across a fold edge, so that a crease runs through its middle.
// worth: what one is worth to the maker, more than zero.
//
// Example: a carrier of 450 × 900 mm with the grain: across 450, along 900.

#include <string>

#include "measure/length.h"
#include "measure/worth.h"

namespace foldyard {

struct Panel {
  std::string name;
  Length across;
  Length along;
  bool may_turn = false;
  bool on_fold = true;
  Worth worth;

  Area area() const { return across * along; }
  bool operator==(const Panel&) const = default;
};

}  // namespace foldyard
