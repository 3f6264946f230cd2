#pragma once

// Grid: the places along one axis where a cut can be worth making.
//
// Normal places: every sum of shape sizes up to a limit. Pushing all panels
// towards one edge brings every tight side of a cut to such a place (Herz
// 1972, Christofides & Whitlock 1977, for value; the argument for cut cost is
// in docs/method.md). Beside a fold edge the first size may be a half (a panel
// on the fold) or the fold trim (a strip cut off to open the fold).
//
// A grid is ascending, positive, without repeats.
// Example: sizes {450, 300}, limit 1000 → 300 450 600 750 900.

#include <cstdint>
#include <vector>

#include "measure/length.h"

namespace foldyard {

class Grid {
 public:
  Grid() = default;
  explicit Grid(std::vector<Length> places);
  // The same with more places, which are then no sums.
  Grid with(std::vector<Length> more) const;

  int size() const { return static_cast<int>(places_.size()); }
  Length operator[](int i) const { return places_[i]; }
  const std::vector<Length>& places() const { return places_; }
  // Places that are sums themselves; in a grid widened by remainders
  // (TableSet) not all are.
  bool is_sum(int i) const { return sums_.empty() || sums_[i]; }
  // Index of the largest place ≤ length, or −1.
  int floor_index(Length length) const {
    if (steps_.empty()) return searched_floor_index(length);
    const std::int64_t step = length.units() / unit_;
    if (length.units() < 0) return -1;
    return step < static_cast<std::int64_t>(steps_.size()) ? steps_[step] : size() - 1;
  }
  // Index of the place equal to length, or −1.
  int index_of(Length length) const;

 private:
  int searched_floor_index(Length length) const;

  std::vector<Length> places_;
  std::vector<char> sums_;  // empty: all
  // The answer for every multiple of the largest unit that all places share;
  // empty where that would be too many.
  std::int64_t unit_ = 1;
  std::vector<std::int32_t> steps_;
};

// No cap on the number of places.
inline constexpr int kAllPlaces = 1 << 30;

// Sums of sizes > 0, each any number of times; up to and with the limit. Where
// there are more than `most`, those of the fewest different sizes are kept and
// the rest thinned evenly. Takes a byte of memory a common unit in the limit.
Grid normal_places(const std::vector<Length>& sizes, Length limit, int most = kAllPlaces);
// Each first size alone or with such sums added.
Grid places_after(const std::vector<Length>& firsts, const std::vector<Length>& sizes, Length limit,
                  int most = kAllPlaces);

}  // namespace foldyard
