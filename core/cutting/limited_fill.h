#pragma once

// A greedy filling within the limits, guided by priced tables: in each
// rectangle the panel (or a given build) in the corner, and the way of parting
// the rest, that together promise most. Internal to the limited search.

#include "cutting/limited_builds.h"
#include "cutting/limited_tables.h"

namespace foldyard::limited {

class Filler {
 public:
  // Once stopped, only a few hundred panels more are filled in.
  Filler(const Cloth& cloth, const Counting& counting, Builds& builds, Stop stop = nullptr)
      : cloth_(cloth), counting_(counting), builds_(builds), stop_(stop) {}

  // Fills the whole cloth; `corner`, if ≥ 0, is a build that lies at its origin.
  // true_gains: what a panel promises is its gain, not its priced gain. Gives
  // the finished build, or −1 if nothing fits.
  int fill(const InsideTable& inside, const Prices& prices, int corner, bool true_gains);

 private:
  struct Area {
    Rim rim;
    int width;
    int height;
  };
  struct Step {
    std::int64_t promise = -1;
    int shape = -1;
    bool upright = false;  // the first cut runs along the roll
  };

  static constexpr int kMostAfterStop = 500;

  int fill_area(const Area& area, int corner);
  bool is_over() { return is_set(stop_) && ++after_stop_ > kMostAfterStop; }
  Step best_step(const Area& area) const;
  std::int64_t rest(const Area& area, int width, int height, bool upright) const;
  int join(int first, int second, bool side_by_side);
  int add(const Build& build);

  const Cloth& cloth_;
  const Counting& counting_;
  Builds& builds_;
  Stop stop_;
  const InsideTable* inside_ = nullptr;
  const Prices* prices_ = nullptr;
  bool true_gains_ = false;
  Copies used_{};
  int after_stop_ = 0;  // panels filled in since
};

}  // namespace foldyard::limited
