#pragma once

// A measured figure as a range of whole numbers, and what is refused of it, in
// one sentence. For the formulas of length_estimate and calibration.
//
// Example: box_of(MeasuredCount{500, 100}) is {400, 500, 600}.

#include <algorithm>
#include <initializer_list>
#include <optional>
#include <string>

#include "cloth/roll_measure.h"
#include "measure/result.h"

namespace foldyard::figure {

// Above this no figure is counted: 10^9 turns, grams or tenths of a gram. All
// products below then keep to 127 bits.
inline constexpr std::int64_t kMostCounted = 1'000'000'000;

// A figure with its give, as whole numbers of whatever it counts.
struct Box {
  std::int64_t low = 0, value = 0, high = 0;
};

inline Box box_of(std::int64_t value, std::int64_t give) {
  return {std::max<std::int64_t>(0, value - give), value, value + give};
}
inline Box box_of(MeasuredLength m) { return box_of(m.value.units(), m.give.units()); }
inline Box box_of(MeasuredCount m) { return box_of(m.value, m.give); }

using Fault = std::optional<Problem>;

inline Fault countable(const std::string& where, std::int64_t value, std::int64_t give,
                       std::int64_t most) {
  if (value < 0 || give < 0)
    return Problem{where, say("the figure or its give is below zero"), say("give zero or more")};
  if (value > most || give > most)
    return Problem{where, say("the figure or its give is too large"), say("measure again")};
  return {};
}
// A diameter or a thickness; half of kLongest, so that its range keeps to kLongest.
inline Fault countable(const std::string& where, MeasuredLength m) {
  return countable(where, m.value.units(), m.give.units(), kLongest.units() / 2);
}
inline Fault countable(const std::string& where, MeasuredCount m) {
  return countable(where, m.value, m.give, kMostCounted / 2);
}

inline Fault above_zero(const std::string& where, Box box) {
  if (box.value == 0) return Problem{where, say("zero gives no length"), say("give more than zero")};
  if (box.low > 0) return {};
  return Problem{where, say("with its give the figure could be zero"), say("give a smaller give")};
}

enum class By { width, weight };

// The tube against what surrounds it: its roll, by diameter or by weight.
inline Fault surrounds(const Box& tube, const Box& roll, By by, const std::string& field) {
  const bool wide = by == By::width;
  if (tube.value >= roll.value)
    return Problem{"tube", wide ? say("the tube is as wide as the roll, so no cloth is left")
                                : say("the tube is as heavy as the roll, so no cloth is left"),
                   say("correct tube or %1", field)};
  if (tube.high >= roll.low)
    return Problem{"tube", wide ? say("with the gives the tube could be as wide as the roll")
                                : say("with the gives the tube could be as heavy as the roll"),
                   say("give smaller gives, or correct tube or %1", field)};
  return {};
}

inline Fault first_of(std::initializer_list<Fault> faults) {
  for (const Fault& fault : faults)
    if (fault) return fault;
  return {};
}

// Cloth along the roll, of which there must be some.
inline Fault known(const std::string& where, MeasuredLength cloth) {
  return first_of({countable(where, cloth.value.units(), cloth.give.units(), kLongest.units()),
                   above_zero(where, box_of(cloth))});
}

}  // namespace foldyard::figure
