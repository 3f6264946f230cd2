#pragma once

// Pace: how long the steps of cutting take one person. Every figure is an
// assumption until the maker has timed their own (defaults.h says which).
//
// The time of a plan is, with the allowance on top of all:
//   unroll                       once
//   cross_cut + cross-cut travel once a length (travel: the cloth's width)
//   fold                         a fold made, each length
//   lift                         a lay brought under the cutter
//   mark                         a cut through a lay
//   ms_per_metre                 of cutter travel
//   handle                       a panel taken off and stacked
// allowance_percent is put on basic time (standard time = basic × (1 + a)).
// rate is what an hour of the maker is worth.

#include "measure/duration.h"
#include "measure/worth.h"

namespace foldyard {

struct Pace {
  Duration unroll;
  Duration cross_cut;
  Duration fold;
  Duration lift;
  Duration mark;
  std::int64_t ms_per_metre = 0;
  Duration handle;
  int allowance_percent = 0;
  Worth rate;
  bool operator==(const Pace&) const = default;
};

// What a plan asks of the hands; counts over the whole roll.
struct Work {
  std::int64_t lengths = 0;
  std::int64_t folds = 0;
  std::int64_t lifts = 0;
  std::int64_t cuts = 0;
  std::int64_t panels = 0;
  Length cut_travel;
  Length cross_cut_travel;
};

// Example: 2 lifts of 4 cuts with 6 m of travel at 20 s/m, mark 10 s, no other
// step, 0 %: 8 × 10 s + 120 s = 200 s. The allowance rounds down to a tick.
Duration time_of(const Work& work, const Pace& pace);
// The worth of that time at the maker's rate, rounded down.
Worth cost_of(Duration time, const Pace& pace);

}  // namespace foldyard
