#pragma once

// The best series of lengths along a roll with a repeat: each that holds matched
// panels begins at its phase, and cloth is skipped to get there.
//
// An entry is a lay of `lengths` equal lengths of `size` each that may be cut any
// number of times. One with a phase begins, each of its lengths, at places that lie
// `phase` beyond the start of a repeat; one without begins where the cloth is.
//
// best_phased_series finds the most gain, among equals the least cost, then the
// least cloth: dynamic programming over the places of the roll from its free end,
// exactly, as what can still be cut depends on the place alone. A place is passed
// over where one before it has no less gain and no more cost, or where the best
// density of all entries cannot lift it over a series that is known.
//
// REQUIRES sizes > 0, gains > 0, costs ≥ 0, a repeat > 0 where a phase is given;
// the sum of gains over the roll below 2^62.
// proved: false only when `steps` ran out or once `cancelled` is true; the bound is
// still true then.
//
// Example: roll 0 to 200, repeat 64 from 10, entry of 50 in phase 0: it is cut at
// 10, 74 and 138; a fourth would begin at 202.

#include <atomic>
#include <cstdint>
#include <optional>
#include <vector>

#include "measure/rect.h"

namespace foldyard {

struct PhasedEntry {
  Length size;
  std::int64_t lengths = 1;
  std::optional<Length> phase;
  std::int64_t gain = 0;
  std::int64_t cost = 0;
};

// Where a repeat of the roll begins.
struct RollRepeat {
  Length repeat;
  Length start;
};

struct PhasedPick {
  int entry = 0;
  Length at;  // of its first length
};

struct PhasedSeries {
  std::vector<PhasedPick> picks;  // from the free end
  std::int64_t gain = 0;
  std::int64_t cost = 0;
  std::int64_t bound = 0;  // no series has more gain
  bool proved = false;
};

// Where each length of an entry begins, the first at or after `from`.
std::vector<Length> places_along(const PhasedEntry& entry, const RollRepeat& repeat, Length from);

PhasedSeries best_phased_series(const std::vector<PhasedEntry>& entries, Span roll,
                                const RollRepeat& repeat, std::int64_t steps,
                                const std::atomic<bool>* cancelled = nullptr);

}  // namespace foldyard
