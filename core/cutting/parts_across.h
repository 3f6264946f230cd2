#pragma once

// Partings across, one row of places at a time. Internal to the filling of
// tables; V is the number that values are kept in (cutting/packing.h).
//
// Where the places lie close together on a common step, a row is spread over
// all steps: what a remainder of any width gives stands at its step, and a place
// that is done is paired with a whole run of remainders at once. Else each
// place looks its remainders up one by one.

#include <numeric>
#include <vector>

#include "cutting/cut_table.h"
#include "cutting/row_ops.h"

namespace foldyard {

template <class V>
class PartsAcross {
 public:
  explicit PartsAcross(const CutTable& table)
      : own_(table.across()), other_(table.beyond().across()), packing_(table.packing()),
        beyond_(table.has_beyond() ? &table.beyond() : nullptr),
        corners_(other_.size(), kNever<V>), trims_(other_.size(), kNever<V>) {
    for (const Length p : own_.places()) unit_ = std::gcd(unit_, p.units());
    for (const Length p : other_.places()) unit_ = std::gcd(unit_, p.units());
    steps_ = own_.size() ? own_[own_.size() - 1].units() / unit_ : 0;
    if (steps_ > kMostSteps * own_.size()) steps_ = 0;
    if (steps_ == 0) return;
    place_at_.assign(steps_ + 1, -1);
    for (int x = 0; x < own_.size(); ++x) place_at_[own_[x].units() / unit_] = x;
    for (std::int64_t s = 0; s <= steps_; ++s) {
      floor_at_.push_back(other_.floor_index(width(s)));
      travel_at_.push_back(packing_.template travel<V>(width(s)));
    }
    sums_.resize(steps_ + 1);
    rests_.resize(steps_ + 1);
    lows_.resize(steps_ + 1);
  }

  // All that the row at y, as high as that, can be by a first cut along the
  // cloth: trimmed to a narrower place, or parted.
  void raise(V* row, int y, Length height) {
    cut_ = packing_.template cut<V>(height);
    height_ = packing_.template travel<V>(height);
    best_corner_ = best_trim_ = kNever<V>;
    if (beyond_) note_beyond(y);
    if (steps_ > 0) beyond_ ? spread_joint(row) : spread(row);
    else one_by_one(row);
  }

 private:
  static constexpr std::int64_t kMostSteps = 4;  // a place

  Length width(std::int64_t step) const { return Length::units(step * unit_); }

  // Place x of the table beyond is known in this row.
  void note(int x, V value) {
    best_corner_ = std::max(best_corner_, value - height_);
    corners_[x] = best_corner_ = std::max(corners_[x], best_corner_);
    trims_[x] = best_trim_ = std::max(best_trim_, value);
  }

  void note_beyond(int y) {
    const V* there = beyond_->template values<V>().data() + static_cast<std::size_t>(y) * other_.size();
    beyond_row_.resize(other_.size());
    for (int x = 0; x < other_.size(); ++x) note(x, beyond_row_[x] = packing_.times(there[x], 2));
  }

  // What an uneven remainder gives: trimmed by two cuts, or by one.
  V odd(int floor, V travel) const {
    return std::max(corners_[floor] - 2 * packing_.template per_cut<V>() - travel, trims_[floor] - cut_);
  }

  // A part without gain beside another is a trim, which is tried already.
  void spread(V* row) {
    std::fill(sums_.begin(), sums_.end(), kNever<V>);
    V best = kNever<V>;
    for (std::int64_t s = 1; s <= steps_; ++s) {
      const int x = place_at_[s];
      if (x >= 0) {
        lows_[s] = rests_[s] = row[x] = std::max(row[x], std::max(best, sums_[s]) - cut_);
        best = std::max(best, row[x]);
        note(x, row[x]);
      } else {
        lows_[s] = kNever<V>;
        rests_[s] = floor_at_[s] < 0 ? kNever<V> : odd(floor_at_[s], travel_at_[s]);
      }
      const int run = static_cast<int>(std::min(s, steps_ - s));
      if (rests_[s] > 0)
        rows::raise_to(&sums_[s + 1], x >= 0 ? &rests_[1] : &lows_[1], rests_[s], run);
    }
  }

  // At a fold edge a part without gain opens the fold.
  void spread_joint(V* row) {
    std::fill(sums_.begin(), sums_.end(), kNever<V>);
    for (std::int64_t s = 1; s <= steps_; ++s) {
      const int floor = floor_at_[s];
      rests_[s] = floor < 0                     ? kNever<V>
                  : other_[floor] == width(s) ? beyond_row_[floor]
                                                : odd(floor, travel_at_[s]);
    }
    V best = kNever<V>;
    for (int x = 0; x < own_.size(); ++x) {
      const std::int64_t s = own_[x].units() / unit_;
      row[x] = std::max(row[x], std::max(best, sums_[s]) - cut_);
      best = std::max(best, row[x]);
      rows::raise_to(&sums_[s + 1], &rests_[1], row[x], static_cast<int>(steps_ - s));
    }
  }

  void one_by_one(V* row) {
    V best = kNever<V>;
    for (int x = 0; x < own_.size(); ++x) {
      V sum = best;
      int floor = other_.size() - 1;
      for (int low = 0; low < x; ++low) {
        const Length remainder = own_[x] - own_[low];
        while (floor >= 0 && other_[floor] > remainder) --floor;
        if (floor < 0) break;
        const V rest = other_[floor] == remainder ? (beyond_ ? beyond_row_[floor] : row[floor])
                                                  : odd(floor, packing_.template travel<V>(remainder));
        sum = std::max(sum, row[low] + rest);
      }
      row[x] = std::max(row[x], sum - cut_);
      best = std::max(best, row[x]);
      if (!beyond_) note(x, row[x]);
    }
  }

  const Grid& own_;
  const Grid& other_;
  const Packing& packing_;
  const CutTable* beyond_;
  std::int64_t unit_ = 0;
  std::int64_t steps_ = 0;  // 0: the places lie too far apart
  std::vector<int> place_at_, floor_at_;
  std::vector<V> travel_at_;
  std::vector<V> sums_, rests_, lows_;  // by step
  std::vector<V> beyond_row_;           // each ply counted twice
  std::vector<V> corners_;  // the best of places up to here, of rows up to this, less the height
  std::vector<V> trims_;    // the best of places up to here in this row
  V best_corner_{}, best_trim_{}, cut_{}, height_{};
};

}  // namespace foldyard
