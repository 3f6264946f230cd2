#pragma once

// A LimitedProblem in the whole units that its sizes share, with the places a
// build's rim can have. Internal to the limited search.

#include <atomic>
#include <cstdint>
#include <vector>

#include "cutting/limited_problem.h"
#include "measure/stop.h"

namespace foldyard::limited {

// Where a build lies: loose anywhere, or with its left rim on the joint.
enum Rim { kLoose = 0, kJoint = 1 };

struct UnitShape {
  int across;
  int along;
  int panel;
  int uses;
  Rim rim;
  std::int64_t gain;
};

// Sizes that builds can have along one axis, with look-ups for every size.
struct Places {
  std::vector<int> list;   // ascending, > 0
  std::vector<int> index;  // by size: its place, or −1
  std::vector<int> floor;  // by size: the largest place ≤ it, or −1

  int count() const { return static_cast<int>(list.size()); }
  // The place of the least size ≥ size, or −1 where there is none.
  int ceil(int size) const {
    if (size >= static_cast<int>(index.size())) return -1;
    if (index[size] >= 0) return index[size];
    return floor[size] + 1 < count() ? floor[size] + 1 : -1;
  }
};

struct Cloth {
  explicit Cloth(const LimitedProblem& problem);

  bool in_range = true;
  std::int64_t unit = 1;
  int width = 0;
  int height = 0;
  int fold_trim = 0;
  Rim root = kLoose;
  std::vector<UnitShape> shapes;  // those that fit and have copies left
  std::vector<int> source;        // index into the problem's shapes
  std::vector<std::int64_t> limits;
  Places across[2];  // by rim
  Places along;

  std::int64_t total_gain() const;  // no less than all copies allowed gain
  std::int64_t free_gain() const;   // no less than any number of copies gain
  // A panel may be counted to its limit and no further, as if copies beyond it
  // were left lying, where a take always uses the same number of copies for the
  // same gain; nowhere, where some panel's copies gain more in one shape than
  // in another.
  bool may_clip(int panel) const;
  bool has_even_gains() const;
};

}  // namespace foldyard::limited
