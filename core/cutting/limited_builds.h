#pragma once

// Builds: rectangles put together from panels, with where each came from, so
// that a finished one can be written as a cut tree. Internal to the limited
// search.

#include <array>
#include <bit>
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
  // No panel may be counted only to its limit.
  explicit Counting(const std::vector<std::int64_t>& limits);
  // Those of Cloth::may_clip may; their limits are whole takes.
  explicit Counting(const Cloth& cloth);

  bool fits() const { return fits_; }
  int words() const { return words_; }
  int panels() const { return static_cast<int>(fields_.size()); }
  Copies one(int panel, int uses) const;
  std::int64_t of(const Copies& copies, int panel) const;
  bool may_clip(int panel) const { return clips_[panel]; }
  bool within_limits(const Copies& a, const Copies& b) const {
    for (int i = 0; i < words_; ++i)
      if (((full_[i] - (a[i] + b[i])) & guards_[i]) != guards_[i]) return false;
    return true;
  }
  // a holds all that b holds, and more; of panels that may not be clipped, exactly
  // that. Both by their words in use.
  bool covers(const std::uint64_t* a, const std::uint64_t* b) const {
    bool more = false;
    for (int i = 0; i < words_; ++i) {
      if ((((a[i] | guards_[i]) - b[i]) & guards_[i]) != guards_[i] || ((a[i] ^ b[i]) & strict_[i]) != 0)
        return false;
      more = more || a[i] != b[i];
    }
    return more;
  }
  // Whether a sum passes a limit.
  bool passes(const std::uint64_t* a, const std::uint64_t* b) const {
    std::uint64_t over = 0;
    for (int i = 0; i < words_; ++i) over |= guards_[i] & ~(full_[i] - (a[i] + b[i]));
    return over != 0;
  }
  // Cuts a sum of two counts within the limits down to the limits, and tells
  // `over` by how many copies of which panel; false where that may not be.
  template <class Over>
  bool clip(Copies& sum, Over over) const {
    for (int i = 0; i < words_; ++i) {
      std::uint64_t passed = guards_[i] & ~(full_[i] - sum[i]);
      if ((passed & strict_[i]) != 0) return false;
      for (; passed != 0; passed &= passed - 1) {
        const int panel = panel_at_[static_cast<std::size_t>(i) * 64 + std::countr_zero(passed)];
        const std::uint64_t more = static_cast<std::uint64_t>(of(sum, panel)) - limits_[panel];
        sum[i] -= more << fields_[panel].shift;
        over(panel, static_cast<std::int64_t>(more));
      }
    }
    return true;
  }

 private:
  struct Field {
    int word;
    int shift;
    int bits;  // and a guard beyond them
  };

  void place(std::int64_t limit, bool clips);

  bool fits_ = true;
  int words_ = 1;  // those in use
  std::vector<Field> fields_;  // by panel
  std::vector<char> clips_;
  std::vector<std::uint64_t> limits_;
  std::vector<int> panel_at_;  // by the place of its guard
  Copies guards_{};
  Copies full_{};    // limits and guards
  Copies strict_{};  // all bits of panels that may not be clipped
};

inline Copies operator+(const Copies& a, const Copies& b) {
  Copies sum;
  for (int i = 0; i < kWords; ++i) sum[i] = a[i] + b[i];
  return sum;
}

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

// Takes beyond a panel's limit are left.
CutTree tree_of(const Builds& builds, int root, const Cloth& cloth, const LimitedProblem& problem);

}  // namespace foldyard::limited
