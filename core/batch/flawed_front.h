#pragma once

// FlawedFront: the places of a roll that series of lengths reach, each with the
// best series that ends there. Internal to the series along a roll with flaws.
//
// A place is kept only if its series gains more than that of every earlier
// place (by at least `least_rise`, or with least_rise 1 the same for less
// cost): from the earlier place, everything behind can be reached as well.
//
// Example: gain 5 at place 7 is kept; then gain 5 at 8 is not, gain 6 at 7
// takes its place.

#include <cstdint>
#include <iterator>
#include <map>

#include "batch/flawed_series.h"

namespace foldyard {

struct Reached {
  std::int64_t gain = 0;
  std::int64_t cost = 0;
  Length before;    // the place that the last pick was added to
  FlawedPick pick;  // the last one; empty on_roll: none
};

class FlawedFront {
 public:
  static constexpr Length kNoPlace = Length::units(INT64_MAX);

  explicit FlawedFront(std::int64_t least_rise) : least_rise_(least_rise) {}

  void start_at(Length place) { reached_[place] = {}; }
  bool would_rise(Length place, std::int64_t gain, std::int64_t cost) const;
  // At the end of its pick. REQUIRES no place at or behind it to be in use as
  // `before` yet.
  void add(const Reached& reached);

  // REQUIRES the place to be kept.
  const Reached& at(Length place) const { return reached_.at(place); }
  const Reached& last() const { return reached_.rbegin()->second; }
  // kNoPlace if there is none.
  Length next_after(Length place) const;
  // The last place kept that is not behind this one. REQUIRES one.
  Length last_up_to(Length place) const { return std::prev(reached_.upper_bound(place))->first; }

 private:
  bool rises(const Reached& over, std::int64_t gain, std::int64_t cost) const;

  std::int64_t least_rise_;
  std::map<Length, Reached> reached_;
};

}  // namespace foldyard
