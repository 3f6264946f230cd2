#pragma once

// The best way of cutting one rectangle, by trying every cut at every whole
// unit: the slow and obvious check of the cut tables. It knows no grids, and
// nothing of theirs is used here. Sizes are units.

#include <array>
#include <cstdint>
#include <map>
#include <vector>

namespace foldyard::test {

struct SlowShape {
  int across = 0;
  int along = 0;
  bool on_fold = false;
  std::int64_t gain = 0;
};

// worth_first: more gain, then less cost. Else the most of copies × gain − cost.
struct SlowAim {
  bool worth_first = true;
  std::int64_t per_cut = 1000;
  std::int64_t per_unit = 1;

  std::int64_t cut(int travel) const { return per_cut + per_unit * travel; }
};
inline constexpr SlowAim kWorthFirst{true, 1000, 1};

// gain of one copy, cost for all copies together.
struct SlowCell {
  std::int64_t gain = 0;
  std::int64_t cost = 0;
  bool operator==(const SlowCell&) const = default;
};

inline bool beats(const SlowAim& aim, SlowCell a, SlowCell b, std::int64_t copies) {
  if (!aim.worth_first) return copies * a.gain - a.cost > copies * b.gain - b.cost;
  return a.gain != b.gain ? a.gain > b.gain : a.cost < b.cost;
}

class SlowRectangle {
 public:
  // trim_first: by the rule of docs/method.md, a rectangle with a side that is
  // no sum of sizes is trimmed (one part of the cut left) before it is parted.
  SlowRectangle(std::vector<SlowShape> shapes, SlowAim aim, int fold_trim, bool trim_first = false)
      : shapes_(std::move(shapes)), aim_(aim), trim_(fold_trim), trim_first_(trim_first) {}

  // joint_across: the left rim is a fold edge; joint_along: the lower one.
  SlowCell best(int across, int along, bool joint_across, bool joint_along, int copies) {
    const std::array<int, 5> key{across, along, joint_across, joint_along, copies};
    const auto known = known_.find(key);
    if (known != known_.end()) return known->second;
    SlowCell best = taken(across, along, joint_across, joint_along, copies);
    const bool uneven = trim_first_ && !(is_sum(&SlowShape::across, across, joint_across) &&
                                         is_sum(&SlowShape::along, along, joint_along));
    for (int c = joint_across ? trim_ : 1; c < across; ++c) {
      const int n = joint_across ? 2 : 1;
      keep(best, copies, n, this->best(c, along, joint_across, joint_along, copies),
           uneven ? SlowCell{} : this->best(across - c, along, false, joint_along, copies * n), along);
    }
    for (int d = joint_along ? trim_ : 1; d < along; ++d) {
      const int n = joint_along ? 2 : 1;
      keep(best, copies, n, this->best(across, d, joint_across, joint_along, copies),
           uneven ? SlowCell{} : this->best(across, along - d, joint_across, false, copies * n), across);
    }
    return known_[key] = best;
  }

  const SlowAim& aim() const { return aim_; }
  int fold_trim() const { return trim_; }

 private:
  SlowCell taken(int across, int along, bool joint_across, bool joint_along, int copies) const {
    SlowCell best;
    for (const SlowShape& s : shapes_) {
      const bool fits = s.across == (joint_across ? 2 * across : across) &&
                        s.along == (joint_along ? 2 * along : along);
      // No panel is halved to less than the fold trim.
      const bool may = (!joint_across || (s.on_fold && across >= trim_)) &&
                       (!joint_along || (s.on_fold && along >= trim_));
      if (fits && may && beats(aim_, {s.gain, 0}, best, copies)) best = {s.gain, 0};
    }
    return best;
  }

  void keep(SlowCell& best, int copies, int n, SlowCell low, SlowCell high, int travel) const {
    const SlowCell cell{low.gain + n * high.gain, low.cost + high.cost + aim_.cut(travel)};
    if (beats(aim_, cell, best, copies)) best = cell;
  }

  // Whether a size is a sum of sizes; at a joint the first of them may be a half
  // or the trim.
  bool is_sum(int SlowShape::*size, int length, bool joint) const {
    if (length <= 0) return length == 0 && !joint;
    if (joint && (length == trim_ || is_sum(size, length - trim_, false))) return true;
    for (const SlowShape& s : shapes_) {
      if (is_sum(size, length - s.*size, joint)) return true;
      const bool halved = joint && s.on_fold && s.*size % 2 == 0 && s.*size / 2 >= trim_;
      if (halved && is_sum(size, length - s.*size / 2, false)) return true;
    }
    return false;
  }

  std::vector<SlowShape> shapes_;
  SlowAim aim_;
  int trim_;
  bool trim_first_;
  std::map<std::array<int, 5>, SlowCell> known_;
};

}  // namespace foldyard::test
