#pragma once

// Packing: what a rectangle gives, as one whole number, so that the better of
// two is the greater and parts add up.
//
//   worth_first: value = gain / gain unit · 2^shift − cost, with the shift so
//     large that no cost reaches one gain; unpacked it is the Cell again.
//   else:        value = copies × gain − cost (both in working time)
//
// Costs count travel in the largest unit that all lengths share. Where the aim
// puts one cut before all travel that a length can have, so does the value,
// with a smaller number for a cut. `plies` of a table's gain count together: a
// value for one ply is made one for n by times(); a cut through n plies is one.
//
// Nearly every job's values fit 64 bits; is_wide() says that these need 128.
//
// Example: gains 30 and 50 (unit 10), a length of 6 steps of travel, shift 10:
// gain 80 with a cost of 7 is 8 · 1024 − 7 = 8185.

#include <vector>

#include "cutting/objective.h"
#include "cutting/shape.h"
#include "measure/wide.h"

namespace foldyard {

class Packing {
 public:
  // Of all rectangles up to widest × tallest; all cuts are multiples of `unit`.
  Packing(const Objective& aim, const std::vector<Shape>& shapes, Length widest, Length tallest,
          Length unit = Length::units(1));

  bool is_wide() const { return wide_; }
  const Objective& aim() const { return aim_; }

  template <class V> V gain(std::int64_t gain, std::int64_t copies) const {
    return aim_.worth_first ? V(gain / gain_unit_) << shift_ : V(copies) * gain;
  }
  template <class V> V per_cut() const { return static_cast<V>(per_cut_); }
  template <class V> V travel(Length length) const {
    return static_cast<V>(Wide(per_step_) * ((length.units() + unit_ - 1) / unit_));
  }
  template <class V> V cut(Length length) const { return per_cut<V>() + travel<V>(length); }

  // What counts for one ply, counted for n; where time is weighed the tables of
  // n plies hold it so already. REQUIRES value ≥ 0.
  template <class V> V times(V value, int n) const {
    return aim_.worth_first && n != 1 ? value + V(n - 1) * (gain_part(value) << shift_) : value;
  }
  // The value without its cost. REQUIRES worth_first, value ≥ 0.
  template <class V> V without_cost(V value) const { return gain_part(value) << shift_; }
  // REQUIRES worth_first, value ≥ 0.
  Cell unpack(Wide value) const;

 private:
  template <class V> V gain_part(V value) const {
    return (value + ((V(1) << shift_) - 1)) >> shift_;
  }

  Objective aim_;
  std::int64_t unit_ = 1;
  std::int64_t gain_unit_ = 1;
  int shift_ = 0;
  Wide per_cut_ = 0;
  std::int64_t per_step_ = 0;  // of travel, a unit
  bool cuts_apart_ = false;    // per_cut_ is not the aim's own
  bool wide_ = false;
};

// Stands for what cannot be; two of them still add up.
template <class V> inline constexpr V kNever = -(V(1) << (sizeof(V) * 8 - 4));

}  // namespace foldyard
