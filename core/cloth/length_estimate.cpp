#include "cloth/length_estimate.h"

#include "cloth/figure.h"
#include "cloth/fraction.h"

namespace foldyard {

using namespace figure;

namespace {

Result<LengthEstimate> between(Fraction least, Fraction likely, Fraction most) {
  if (rounded_up(most) > kLongest.units())
    return Problem{"", say("by these figures the roll could be longer than 1 km"),
                   say("measure again or give smaller gives")};
  if (rounded_down(least) == 0)
    return Problem{"", say("by these figures the roll could be bare"), say("measure again or give smaller gives")};
  const auto length = [](Wide units) { return Length::units(static_cast<std::int64_t>(units)); };
  return LengthEstimate{length(rounded_down(least)), length(nearest(likely)), length(rounded_up(most))};
}

Wide ring(std::int64_t outer, std::int64_t tube) {
  return Wide(outer) * outer - Wide(tube) * tube;
}

Fraction wound(Wide pi, std::int64_t outer, std::int64_t tube, std::int64_t thickness) {
  return {pi * ring(outer, tube), kPiOver * 4 * thickness};
}

Result<LengthEstimate> estimate_by(const ByDiameters& m, Length) {
  const Box outer = box_of(m.outer), tube = box_of(m.tube), t = box_of(m.thickness);
  if (const Fault fault = first_of({countable("outer", m.outer), countable("tube", m.tube),
                                    countable("thickness", m.thickness), above_zero("thickness", t),
                                    surrounds(tube, outer, By::width, "outer")}))
    return *fault;
  return between(wound(kPiLow, outer.low, tube.high, t.high),
                 wound(kPiLow, outer.value, tube.value, t.value),
                 wound(kPiHigh, outer.high, tube.low, t.low));
}

Fraction turned(Wide pi, std::int64_t turns, std::int64_t outer, std::int64_t tube) {
  return {pi * turns * (outer + tube), kPiOver * 2};
}

Result<LengthEstimate> estimate_by(const ByTurns& m, Length) {
  const Box turns = box_of(m.turns), outer = box_of(m.outer), tube = box_of(m.tube);
  if (const Fault fault = first_of({countable("turns", m.turns), countable("outer", m.outer),
                                    countable("tube", m.tube), above_zero("turns", turns),
                                    surrounds(tube, outer, By::width, "outer")}))
    return *fault;
  return between(turned(kPiLow, turns.low, outer.low, tube.low),
                 turned(kPiLow, turns.value, outer.value, tube.value),
                 turned(kPiHigh, turns.high, outer.high, tube.high));
}

// grams / (tenths / 10 × width): in square metres of units, then over the width.
Fraction weighed(std::int64_t grams, std::int64_t tenths, Length width) {
  constexpr std::int64_t kUnitsPerMetre = 1000 * Length::kUnitsPerMm;
  return {Wide(grams) * 10 * kUnitsPerMetre * kUnitsPerMetre, Wide(tenths) * width.units()};
}

Result<LengthEstimate> estimate_by(const ByWeight& m, Length width) {
  const Box roll = box_of(m.roll), tube = box_of(m.tube), dense = box_of(m.per_square_metre);
  if (const Fault fault =
          first_of({countable("roll", m.roll), countable("tube", m.tube),
                    countable("per_square_metre", m.per_square_metre),
                    above_zero("per_square_metre", dense), surrounds(tube, roll, By::weight, "roll")}))
    return *fault;
  return between(weighed(roll.low - tube.high, dense.high, width),
                 weighed(roll.value - tube.value, dense.value, width),
                 weighed(roll.high - tube.low, dense.low, width));
}

Fraction rest(std::int64_t length, std::int64_t full, std::int64_t outer, std::int64_t tube) {
  return {length * ring(outer, tube), ring(full, tube)};
}

}  // namespace

Result<LengthEstimate> estimate(const RollMeasure& measure, Length width) {
  return std::visit([&](const auto& m) { return estimate_by(m, width); }, measure);
}

Result<LengthEstimate> estimate_of_rest(MeasuredLength full_length, MeasuredLength full_outer,
                                        MeasuredLength outer, MeasuredLength tube) {
  const Box length = box_of(full_length), full = box_of(full_outer), now = box_of(outer),
            bare = box_of(tube);
  if (const Fault fault =
          first_of({known("full_length", full_length), countable("full_outer", full_outer),
                    countable("outer", outer), countable("tube", tube),
                    surrounds(bare, now, By::width, "outer")}))
    return *fault;
  if (now.high > full.low)
    return Problem{"outer", say("the roll is, or with the gives could be, larger than when it was full"),
                   say("correct outer or full_outer, or give smaller gives")};
  return between(rest(length.low, full.high, now.low, bare.high),
                 rest(length.value, full.value, now.value, bare.value),
                 rest(length.high, full.low, now.high, bare.low));
}

}  // namespace foldyard
