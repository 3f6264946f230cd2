#pragma once

// BoundedFill: the most valuable filling of a length by pieces of some sizes, each
// at most so often (a bounded knapsack), for any values, again and again.
//
// Exact where all sizes share a unit that goes into the length at most kMostPlaces
// times. Else sizes are rounded to a coarser unit: up for a filling, which then
// fits; down for `bound`, which no filling passes.
//
// Worked example: 100 long, pieces of 45 (worth 5) and 30 (worth 3), three of
// each: 45 + 45 is worth 10; 45 + 30 and 30 + 30 + 30 less.
// Method: dynamic programming over lengths, copies in powers of two.

#include <cstdint>
#include <vector>

#include "measure/length.h"

namespace foldyard {

class BoundedFill {
 public:
  static constexpr std::int64_t kMostPlaces = 100'000;

  // Sizes above 0; most: copies of each, 0 and more.
  BoundedFill(std::vector<Length> sizes, Length whole);

  struct Filling {
    std::vector<std::int64_t> counts;
    std::int64_t value = 0;
    std::int64_t bound = 0;
  };
  // values: of a piece, 0 and more. A piece of value 0 is left out.
  Filling best(const std::vector<std::int64_t>& values, const std::vector<std::int64_t>& most) const;
  bool is_exact() const { return up_ == down_; }

 private:
  struct Packet {
    std::size_t size = 0;
    std::int64_t copies = 1;
  };
  std::vector<Packet> packets(const std::vector<std::int64_t>& values, const std::vector<std::int64_t>& most) const;
  std::int64_t most_value(const std::vector<Packet>& packets, const std::vector<std::int64_t>& values,
                          const std::vector<std::int64_t>& sizes, std::vector<std::vector<bool>>* taken) const;

  std::vector<std::int64_t> up_, down_;  // in places
  std::int64_t places_ = 0;
};

}  // namespace foldyard
