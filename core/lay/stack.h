#pragma once

// Folded lengths of equal patterns, perhaps of different cloths, put into as few
// stacks as the cutter lets.
//
// Each length has its height (plies × thickness); all have as many plies. A stack is
// no higher than the cutter's height and has no more plies than its cap. Lengths of
// equal heights are shared out evenly by division. Else, highest first, each goes
// into the first stack with room; where that is more than `least`, every other way
// is tried for up to twelve lengths.
// Source: first fit decreasing, D. S. Johnson 1973 (from memory, no page seen).
//
// least: no fewer stacks are possible; by height and by plies.
// REQUIRES plies ≥ 1, and each length to go under the cutter by itself.
//
// Example: cutter 25 mm, heights 12, 12, 13, 13: two stacks, of 12 and 13 each.

#include <vector>

#include "lay/cutter.h"

namespace foldyard {

struct Stacks {
  std::vector<std::vector<int>> stacks;  // indices of lengths, ascending in each
  std::int64_t least = 0;
};

Stacks fewest_stacks(const std::vector<Length>& heights, int plies, const Cutter& cutter);

}  // namespace foldyard
