#pragma once

// The one order of the flaws of a roll: by where they begin along the roll;
// those that begin together by where they end, then by their place across, then
// by kind. A roll keeps its flaws so, and a job file is written so.

#include <algorithm>
#include <tuple>
#include <vector>

#include "cloth/flaw.h"

namespace foldyard {

inline bool lies_before(const Flaw& a, const Flaw& b) {
  return std::tie(a.along, a.across, a.kind) < std::tie(b.along, b.across, b.kind);
}

inline void put_in_order(std::vector<Flaw>& flaws) {
  std::stable_sort(flaws.begin(), flaws.end(), lies_before);
}

inline bool are_in_order(const std::vector<Flaw>& flaws) {
  return std::is_sorted(flaws.begin(), flaws.end(), lies_before);
}

}  // namespace foldyard
