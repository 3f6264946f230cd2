#pragma once

// Grids and the places on them, in bare units.

#include "core/support/lengths.h"
#include "cutting/grid.h"

namespace foldyard::test {

using Places = std::vector<int>;

inline Grid grid(const Places& places) { return Grid(lengths(places)); }

inline Places places(const Grid& grid) {
  Places list;
  for (const Length place : grid.places()) list.push_back(units_of(place));
  return list;
}

}  // namespace foldyard::test
