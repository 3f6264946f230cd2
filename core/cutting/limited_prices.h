#pragma once

// Finds prices whose bound on the whole cloth is low, by the subgradient
// method: a panel used over its limit grows dearer, one used under it cheaper.
// Internal to the limited search.

#include <functional>

#include "cutting/limited_tables.h"

namespace foldyard::limited {

// Sees each round's tables (unfinished in a round that is stopped) and prices; gives the best gain found so far.
using OnRound = std::function<std::int64_t(const InsideTable&, const Prices&)>;

struct Priced {
  Prices prices;
  std::int64_t bound = 0;  // on the gain of the whole, scaled
};

// Stopped, it gives the best of the rounds done: true, as any prices are; after
// no round, the gain of all copies allowed, or of all cloth.
Priced find_prices(const Cloth& cloth, const OnRound& on_round, Stop stop = nullptr);

}  // namespace foldyard::limited
