#pragma once

// The best series of cross-cuts along a roll when of some panels no more than
// so many may be cut.
//
// An entry is a lay that may be cut any number of times: `size` of roll, `gain`
// (≥ 0, true, without prices), `cost` (only to choose between equals) and the
// copies it gives of each limited panel. Searched entry by entry, the densest
// first: a state is what has been cut so far; of states with equal copies only
// those that no other beats in cloth and gain are kept, and only while
//
//   gain + most priced gain of the rest + Σ price × copies still allowed
//
// is more than the best found. Any prices ≥ 0 give a true bound; a priced gain is
// the gain less the prices of the copies. Entries tried greedily come first.
// Source: Lagrangian bounds after Held, Wolfe & Crowder 1974 (from memory, no
// page seen); the states are our own.
//
// REQUIRES sizes > 0; copies of every entry as many as limits and prices;
// the sum of gains over a full capacity below 2^60.
// complete: no series of these entries gains more than max(gain, to_beat).
// picks is empty where none found gains more than to_beat.
//
// Example: capacity 10; (size 4, gain 5, copies 2), (3, 3, 0); limit 2: one of
// the first and two of the second, gain 11. Limit 1: three of the second, 9.

#include <atomic>
#include <cstdint>
#include <vector>

#include "measure/index.h"
#include "measure/length.h"

namespace foldyard {

struct LimitedEntry {
  Length size;
  std::int64_t gain = 0;
  std::int64_t cost = 0;
  std::vector<std::int64_t> copies;
};

struct CopyLimits {
  std::vector<std::int64_t> most;    // by limited panel
  std::vector<std::int64_t> prices;  // of one copy, ≥ 0
  std::int64_t step = 1;             // every gain is a multiple of it

  std::int64_t given_back() const;  // Σ price × most
  std::int64_t price_of(const std::vector<std::int64_t>& copies) const;
};

struct SeriesBudget {
  std::int64_t steps = 4'000'000;
  std::int64_t states = 300'000;
  const std::atomic<bool>* cancelled = nullptr;
};

struct LimitedSeries {
  std::vector<int> picks;  // indices of entries
  std::int64_t gain = 0;
  std::int64_t cost = 0;
  bool complete = false;
  std::int64_t steps = 0;
};

LimitedSeries best_limited_series(const std::vector<LimitedEntry>& entries, Length capacity,
                                  const CopyLimits& limits, std::int64_t to_beat,
                                  const SeriesBudget& budget = {});

// The most gain of any series of these (copies free), or a little more, for
// every rest of the roll: a knapsack over sizes rounded down. Gain may be < 0.
class RestBound {
 public:
  struct Lay {
    Length size;
    std::int64_t gain = 0;
  };
  RestBound(const std::vector<Lay>& lays, Length capacity);
  std::int64_t at(Length rest) const { return most_[ix(rest.units() / unit_)]; }

 private:
  std::int64_t unit_;
  std::vector<std::int64_t> most_;
};

}  // namespace foldyard
