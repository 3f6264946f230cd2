#pragma once

// The best series of cross-cuts along a roll with flaws: which length is cut at
// which place, and which stretches are passed over.
//
// A roll is a span of usable cloth with flaws on it, rectangles as in Flaw. An
// entry is a length that may be cut any number of times: `size` of roll with its
// allowance, its panels laid out in one or several ways that gain the same. Cut
// at a place of the roll it gains `gain`, less the worth of every panel that
// touches a flaw there (of the layout that loses least). `around`, if given,
// is asked for lengths that are cut around the flaws under them.
//
// best_flawed_series finds the most gain, among equals the least cost, then the
// least cloth, over all places. It is enough to begin a length where the one
// before ends or where one of its panels just clears the end of a flaw: any
// other length can be moved towards the free end until it does, and on the way
// no panel comes to touch a flaw (docs/method.md). The reached places are kept
// as a front: a place is worth keeping only if no earlier one has as much.
//
// Exact for its entries and layouts unless `steps` ran out (complete is false
// then) or it was cancelled; the series is a good one in any case. Lengths cut
// around flaws are tried where they begin at the end of the length before.
//
// REQUIRES sizes > lead ≥ 0, gains > 0, costs ≥ 0, flaws in order of where they
// begin and none empty; the sum of gains over the whole roll below 2^62.
//
// Example: usable 0 … 10, a flaw on 4 … 5 over the whole width, one entry of
// size 4 and gain 1: lengths at 0 and 5 → gain 2, and 4 … 5 is passed over.

#include <atomic>
#include <cstdint>
#include <vector>

#include "measure/rect.h"

namespace foldyard {

// A panel of a layout, flat, y from the start of its pattern.
struct FlawedPanel {
  Rect flat;
  std::int64_t worth = 0;
};

struct FlawedEntry {
  Length size;
  std::int64_t gain = 0;
  std::int64_t cost = 0;
  std::vector<std::vector<FlawedPanel>> layouts;
};

struct FlawedCloth {
  Span usable;               // along the roll
  Length lead;               // from where a length begins to where its pattern does
  std::vector<Rect> flaws;
};

// Lengths cut for the one place where they lie.
class AroundFlaws {
 public:
  struct Gain {
    std::int64_t gain = 0;
    std::int64_t cost = 0;
  };
  virtual ~AroundFlaws() = default;
  // Sizes worth trying from this place on, with allowance, ascending.
  virtual std::vector<Length> sizes(Length from) const = 0;
  // No way of cutting a length of this size, on cloth without flaws, gains more.
  virtual std::int64_t most_gain(Length size) const = 0;
  virtual Gain best(Length from, Length size) const = 0;
};

struct FlawedPick {
  int entry = -1;  // −1: cut around the flaws
  int layout = 0;
  Span on_roll;
};

struct FlawedSeries {
  std::vector<FlawedPick> picks;  // from the free end
  std::int64_t gain = 0;
  std::int64_t cost = 0;
  bool complete = false;
};

// steps: entries tried at places. around: how often a length may be cut around
// flaws, shared evenly between the flaws.
struct FlawedBudget {
  std::int64_t steps = 10'000'000;
  std::int64_t around = 6'000;
  const std::atomic<bool>* cancelled = nullptr;
};

FlawedSeries best_flawed_series(const std::vector<FlawedEntry>& entries, const FlawedCloth& cloth,
                                const AroundFlaws* around, const FlawedBudget& budget);

}  // namespace foldyard
