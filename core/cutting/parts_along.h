#pragma once

// Partings along, for a whole row of places at once. Internal to the filling of
// tables; V is the number that values are kept in (cutting/packing.h).
//
// The upper part of a parting is what the table above gives at the remaining
// height. Where that is no place it is trimmed first: by two cuts to any lower
// and narrower place, or (in a thinned table) by one.

#include <vector>

#include "cutting/cut_table.h"
#include "cutting/row_ops.h"

namespace foldyard {

template <class V>
class PartsAlong {
 public:
  // values: the table's own, filled as far as rows are done.
  PartsAlong(const CutTable& table, const std::vector<V>& values)
      : own_(table.along()), upper_grid_(table.above().along()), across_(table.across()),
        packing_(table.packing()), joint_(table.has_above()), thinned_(!table.has_all_places()),
        own_values_(values), n_(across_.size()), lower_(n_, kNever<V>), trims_(lower_),
        corners_(lower_) {
    for (int x = 0; x < n_; ++x) {
      widths_.push_back(packing_.template travel<V>(across_[x]));
      cuts_.push_back(-packing_.template cut<V>(across_[x]));
    }
    choose_kept();
    if (!joint_) return;
    const std::vector<V>& above = table.above().template values<V>();
    scaled_.reserve(above.size());
    for (const V v : above) scaled_.push_back(packing_.times(v, 2));
    for (int y = 0; y < upper_grid_.size(); ++y) note_upper(y);
  }

  // All that the row at y can be by a first cut across the cloth: trimmed to a
  // lower place, or parted.
  void raise(V* row, int y) {
    sums_.clear();
    for (int low = 0; low < y; ++low) {
      const Length remainder = own_[y] - own_[low];
      const int floor = upper_grid_.floor_index(remainder);
      if (floor < 0) break;
      if (upper_grid_[floor] != remainder) add_odd(low, floor, remainder);
      else if (joint_ || low <= floor) sums_.push_back({own(low), upper(floor), 0});
    }
    best_ = lower_;
    rows::raise_to_sums(best_.data(), sums_.data(), static_cast<int>(sums_.size()), n_);
    for (int x = 0; x < n_; ++x) row[x] = std::max(row[x], best_[x] + cuts_[x]);
  }

  // Row y of the table itself is done.
  void note(int y) {
    rows::raise_to(lower_.data(), own(y), V(0), n_);
    if (!joint_) note_upper(y);
  }

 private:
  // Upper rows from which an uneven remainder is trimmed.
  void choose_kept() {
    slot_.assign(upper_grid_.size(), -1);
    std::size_t count = 0;
    for (int y = 0; y < own_.size(); ++y)
      for (int low = 0; low < y; ++low) {
        const Length remainder = own_[y] - own_[low];
        const int floor = upper_grid_.floor_index(remainder);
        if (floor < 0) break;
        if (upper_grid_[floor] != remainder && slot_[floor] < 0) slot_[floor] = count++;
      }
    kept_corners_.resize(count * n_);
    if (thinned_) kept_trims_.resize(count * n_);
  }

  void note_upper(int y) {
    const V* row = upper(y);
    rows::raise_to(trims_.data(), row, V(0), n_);
    V best = kNever<V>;
    for (int x = 0; x < n_; ++x) {
      best = std::max(best, row[x] - widths_[x]);
      corners_[x] = std::max(corners_[x], best);
    }
    if (slot_[y] < 0) return;
    std::copy(corners_.begin(), corners_.end(), kept_corners_.begin() + slot_[y] * n_);
    if (!thinned_) return;
    for (int x = 0; x < n_; ++x) kept_trims_[slot_[y] * n_ + x] = trims_[x] + cuts_[x];
  }

  void add_odd(int low, int floor, Length remainder) {
    const V two_cuts = -2 * packing_.template per_cut<V>() - packing_.template travel<V>(remainder);
    const std::int64_t kept = slot_[floor] * n_;
    sums_.push_back({own(low), kept_corners_.data() + kept, two_cuts});
    if (thinned_) sums_.push_back({own(low), kept_trims_.data() + kept, 0});
  }

  const V* own(int y) const { return own_values_.data() + y * n_; }
  const V* upper(int y) const { return joint_ ? scaled_.data() + y * n_ : own(y); }

  const Grid& own_;
  const Grid& upper_grid_;
  const Grid& across_;
  const Packing& packing_;
  bool joint_;
  bool thinned_;
  const std::vector<V>& own_values_;
  std::int64_t n_;
  std::vector<V> lower_;            // the best of the table's lower rows, place by place
  std::vector<V> trims_, corners_;  // of upper rows up to the last noted
  std::vector<V> kept_trims_, kept_corners_;
  std::vector<std::int64_t> slot_;  // of an upper row there, or −1
  std::vector<V> widths_;           // travel along each place
  std::vector<V> cuts_;             // less what a cut over each place costs
  std::vector<V> scaled_;           // the table above, each ply counted twice
  std::vector<rows::Sum<V>> sums_;  // of the row in hand
  std::vector<V> best_;
};

}  // namespace foldyard
