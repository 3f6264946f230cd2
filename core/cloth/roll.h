#pragma once

// A roll of cloth as it lies on the shelf.
//
// width is selvedge to selvedge, measured flat and at its narrowest. selvedge
// is the strip along each edge that ends in no panel; width − 2 × selvedge is
// the usable width. thickness is that of one ply. Nap::one_way says that the
// cloth looks different turned end for end (pile or print), so that all panels
// keep one direction along the roll. length is the cloth on the roll, from the
// free end; a length is known here (an estimate is rounded down before).
//
// Invariants, held by the reader of job files: all > 0 but selvedge ≥ 0,
// 2 × selvedge < width.

#include <string>

#include "measure/length.h"
#include "measure/rect.h"

namespace foldyard {

enum class Nap { none, one_way };

struct Fabric {
  Length width;
  Length selvedge;
  Length thickness;
  Nap nap = Nap::none;
  std::string colour;  // "#rrggbb", only for pictures

  Length usable_width() const { return width - selvedge * 2; }
  Span usable() const { return {selvedge, width - selvedge}; }
  bool operator==(const Fabric&) const = default;
};

struct Roll {
  std::string name;
  Fabric fabric;
  Length length;
  bool operator==(const Roll&) const = default;
};

}  // namespace foldyard
