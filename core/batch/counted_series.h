#pragma once

// The best series of cross-cuts along a roll when of some panels at least, or no
// more than, so many must come out of it.
//
// An entry is a lay that may be cut any number of times: `size` of roll, `gain`
// (true, without prices; it may be below 0), `cost` (only to choose between
// equals) and the copies it gives of each counted panel. A price may be below 0: a
// bonus for what is asked for. With any prices a series of copies c between least
// and most gains no more than its priced gain and, for each panel, price × most
// where the price is ≥ 0 and price × least where it is below; so a state is kept
// only while
//
//   gain + most priced gain of the rest + Σ price × copies still allowed or asked for
//
// is more than the best found. Of states with equal copies only those that no
// other beats in cloth, gain and cost are kept; copies beyond `least` are not told
// apart where there is no `most`.
// Source: Lagrangian bounds after Held, Wolfe & Crowder 1974 (from memory, no
// page seen); the states are our own.
//
// REQUIRES sizes > 0; copies of every entry as many as bounds; least ≤ most; no
// price ≥ 0 without a most but 0; sums over a full capacity below 2^60.
// found: some series keeps to the bounds. complete: none of these entries gains more.
//
// Example: capacity 10; (size 4, gain 5, copies 0), (3, 2, 1); at least two: one of
// the first and two of the second, gain 9.

#include <atomic>
#include <cstdint>
#include <limits>
#include <vector>

#include "batch/limited_series.h"

namespace foldyard {

struct CountBounds {
  static constexpr std::int64_t kNoMost = std::numeric_limits<std::int64_t>::max();
  std::vector<std::int64_t> least;   // by counted panel
  std::vector<std::int64_t> most;    // kNoMost: any number
  std::vector<std::int64_t> prices;  // of one copy

  // What the prices give back at most to a series that has `copies` already.
  std::int64_t given_back(const std::vector<std::int64_t>& copies) const;
  std::int64_t price_of(const std::vector<std::int64_t>& copies) const;
};

struct CountedSeries {
  std::vector<int> picks;  // indices of entries
  std::int64_t gain = 0;
  std::int64_t cost = 0;
  bool found = false;
  bool complete = false;
  std::int64_t steps = 0;
};

CountedSeries best_counted_series(const std::vector<LimitedEntry>& entries, Length capacity,
                                  const CountBounds& bounds, const SeriesBudget& budget = {});

}  // namespace foldyard
