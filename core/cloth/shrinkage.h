#pragma once

// What cloth loses in the first wash, or when it relaxes off the roll, in
// hundredths of a percent of its size before (0 to less than 10 000).
//
// A panel that is to measure s afterwards is cut at s / (1 − shrinkage),
// rounded up to an even number of units of Length, so that half of it is whole
// where it is cut on the fold. Cloth that does not shrink changes no size.
//
// Example: 3 % along, a panel of 97 cm: cut 100 cm; one of 45 cm: 46.392 cm.
// Source: shrinkage as a share of the size before washing, as ISO 5077 states
// dimensional change (from memory, no page seen).

#include <cstdint>

#include "measure/length.h"

namespace foldyard {

struct Shrinkage {
  std::int64_t along = 0;
  std::int64_t across = 0;

  static constexpr std::int64_t kWhole = 10'000;
  bool is_any() const { return along > 0 || across > 0; }
  bool operator==(const Shrinkage&) const = default;
};

// The size to cut, so that `after` is left. REQUIRES after ≥ 0 and at most
// kLongest, 0 ≤ hundredths < Shrinkage::kWhole.
constexpr Length before_shrinking(Length after, std::int64_t hundredths) {
  if (hundredths == 0) return after;
  const std::int64_t left = (Shrinkage::kWhole - hundredths) * 2;
  return Length::units((after.units() * Shrinkage::kWhole + left - 1) / left * 2);
}

}  // namespace foldyard
