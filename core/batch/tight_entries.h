#pragma once

// Which entries some series of the most gain may hold: the others need not be
// looked at when among such series the cheapest is sought.
//
// An entry is tight if, with it once, the rest of the capacity still gives the
// most gain there is. Found by one pass of the unbounded knapsack over gains
// alone, in steps of the largest length that all sizes share; where that would
// be too many steps, every entry counts as tight.
//
// REQUIRES as best_series.
// Example: capacity 10, entries (size 4, gain 5), (3, 3), (5, 5): the most is
// 11 = 5 + 3 + 3, and (5, 5) is in no series of 11.

#include <vector>

#include "batch/series.h"

namespace foldyard {

// Indices of tight entries, ascending.
std::vector<int> tight_entries(const std::vector<SeriesEntry>& entries, Length capacity);

}  // namespace foldyard
