#pragma once

// Builds: rectangles put together from panels, with where each came from, so
// that a finished one can be written as a cut tree. Internal to the limited
// search.

#include <array>
#include <vector>

#include "cutting/limited_cloth.h"

namespace foldyard::limited {

// Copies used of every panel, packed: adding two is adding words, and whether
// the limits hold is one subtraction a word. REQUIRES limits whose fields fit
// kWords words (Counting::fits).
inline constexpr int kWords = 6;
using Copies = std::array<std::uint64_t, kWords>;

class Counting {
 public:
  explicit Counting(const std::vector<std::int64_t>& limits);

  bool fits() const { return fits_; }
  Copies one(int panel, int uses) const;
  bool within_limits(const Copies& a, const Copies& b) const {
    for (int i = 0; i < kWords; ++i)
      if (((full_[i] - (a[i] + b[i])) & guards_[i]) != guards_[i]) return false;
    return true;
  }

 private:
  bool fits_ = true;
  std::vector<std::pair<int, int>> fields_;  // word and shift, by panel
  Copies guards_{};
  Copies full_{};  // limits and guards
};

inline Copies operator+(const Copies& a, const Copies& b) {
  Copies sum;
  for (int i = 0; i < kWords; ++i) sum[i] = a[i] + b[i];
  return sum;
}

struct CopiesHash {
  std::size_t operator()(const Copies& c) const;
};

enum class Made : std::uint8_t { panel, beside, above, opened };

struct Build {
  int width = 0;
  int height = 0;
  Rim rim = kLoose;
  Made made = Made::panel;
  int first = -1;   // shape; else the left or lower build
  int second = -1;  // the right or upper build
  std::int64_t gain = 0;
  std::int64_t priced = 0;
  Copies copies{};
};

using Builds = std::vector<Build>;

// One panel, not yet priced.
Build panel_build(const Cloth& cloth, const Counting& counting, int shape);
// A loose build moved on to the joint by opening the fold before it.
Build opened(const Builds& builds, int loose, const Cloth& cloth);
// The two side by side (the left keeps the joint) or one above the other.
Build beside(const Builds& builds, int left, int right);
Build above(const Builds& builds, int lower, int upper);

CutTree tree_of(const Builds& builds, int root, const Cloth& cloth, const LimitedProblem& problem);

}  // namespace foldyard::limited
