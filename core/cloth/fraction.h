#pragma once

// Fraction: a length, count or weight before it is rounded, as one wide whole
// number over another; and π between two fractions.
//
// REQUIRES 0 ≤ over, 0 < under, twice either within 127 bits.
// Example: rounded_down({7, 2}) == 3, rounded_up({7, 2}) == 4, nearest({7, 2}) == 4.

#include "measure/wide.h"

namespace foldyard {

struct Fraction {
  Wide over = 0;
  Wide under = 1;
};

inline Wide rounded_down(Fraction f) { return f.over / f.under; }
inline Wide rounded_up(Fraction f) { return (f.over + f.under - 1) / f.under; }
// A half goes up.
inline Wide nearest(Fraction f) { return (2 * f.over + f.under) / (2 * f.under); }

// π × 10^18 lies between these two: 3.141 592 653 589 793 238 46…
inline constexpr Wide kPiOver = 1'000'000'000'000'000'000;
inline constexpr Wide kPiLow = 3'141'592'653'589'793'238;
inline constexpr Wide kPiHigh = kPiLow + 1;

}  // namespace foldyard
