#pragma once

// The best series of cross-cuts along a roll: which lays to cut one after
// another from one capacity of cloth.
//
// An entry is a lay that may be cut any number of times: `size` of roll (all
// its lengths with their allowances), `gain`, and `cost`. best_series finds
// the most gain, among equals the least cost, then the least cloth: exactly,
// by dynamic programming over the reachable places of the roll, keeping only
// places from which the best density of any entry can still reach a target;
// the target falls until a series meets it (then nothing better exists).
// Source: bounded search on an unbounded knapsack, Gilmore & Gomory 1966;
// density bound after Dantzig 1957.
//
// REQUIRES sizes > 0, gains > 0, costs ≥ 0; the sum of gains over a full
// capacity must stay below 2^62.
// proved: false only when `steps` ran out (with fewer than eight an entry none
// is searched, but one put together by density) or the search was cancelled; then
// bound is still true.
// cancelled: looked at for every place of the roll, so several times in a
// millisecond; once it is true, the series is the best found so far or one put
// together by density, whichever gains more: never empty where an entry fits.
//
// Example: capacity 10, entries (size 4, gain 5), (3, 3): best 4 + 3 + 3 → 11.

#include <atomic>
#include <cstdint>
#include <vector>

#include "measure/length.h"

namespace foldyard {

struct SeriesEntry {
  Length size;
  std::int64_t gain = 0;
  std::int64_t cost = 0;
};

struct Series {
  std::vector<int> picks;  // indices of entries, in the order found
  std::int64_t gain = 0;
  std::int64_t cost = 0;
  std::int64_t bound = 0;  // no series has more gain
  bool proved = false;
};

Series best_series(const std::vector<SeriesEntry>& entries, Length capacity, std::int64_t steps,
                   const std::atomic<bool>* cancelled = nullptr);

}  // namespace foldyard
