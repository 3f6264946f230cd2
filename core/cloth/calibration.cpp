#include "cloth/calibration.h"

#include <algorithm>

#include "cloth/figure.h"
#include "cloth/fraction.h"

namespace foldyard {

using namespace figure;

namespace {

// A figure in whole numbers with the give that reaches both ends of its range.
struct Rounded {
  std::int64_t value = 0, give = 0;
};

Rounded rounded(Fraction low, Fraction value, Fraction high) {
  const Wide middle = nearest(value);
  const Wide give = std::max(middle - rounded_down(low), rounded_up(high) - middle);
  return {static_cast<std::int64_t>(middle), static_cast<std::int64_t>(give)};
}

MeasuredLength as_length(Rounded r) { return {Length::units(r.value), Length::units(r.give)}; }

Fault wound_on(MeasuredLength outer, MeasuredLength tube) {
  return first_of({countable("outer", outer), countable("tube", tube),
                   surrounds(box_of(tube), box_of(outer), By::width, "outer")});
}

Fraction thickness(Wide pi, std::int64_t outer, std::int64_t tube, std::int64_t length) {
  return {pi * (Wide(outer) * outer - Wide(tube) * tube), kPiOver * 4 * length};
}

// A smaller π gives more turns, so the ends take the bounds the other way round.
Fraction turns(Wide pi, std::int64_t outer, std::int64_t tube, std::int64_t length) {
  return {kPiOver * 2 * length, pi * (outer + tube)};
}

// tenths = 10 × grams / square metres.
Fraction tenths(std::int64_t grams, std::int64_t length, Length width) {
  constexpr std::int64_t kUnitsPerMetre = 1000 * Length::kUnitsPerMm;
  return {Wide(grams) * 10 * kUnitsPerMetre * kUnitsPerMetre, Wide(length) * width.units()};
}

}  // namespace

Result<MeasuredLength> thickness_of_stack(MeasuredLength stack, int layers) {
  if (layers < 1) return Problem{"layers", say("a stack has at least one layer"), say("count them again")};
  const Box box = box_of(stack);
  if (const Fault fault = first_of({countable("stack", stack), above_zero("stack", box)})) return *fault;
  return as_length(rounded({box.low, layers}, {box.value, layers}, {box.high, layers}));
}

Result<MeasuredLength> thickness_of_roll(MeasuredLength outer, MeasuredLength tube,
                                         MeasuredLength length) {
  if (const Fault fault = first_of({wound_on(outer, tube), known("length", length)})) return *fault;
  const Box D = box_of(outer), d = box_of(tube), L = box_of(length);
  return as_length(rounded(thickness(kPiLow, D.low, d.high, L.high),
                           thickness(kPiLow, D.value, d.value, L.value),
                           thickness(kPiHigh, D.high, d.low, L.low)));
}

Result<MeasuredCount> weight_of_roll(MeasuredCount roll, MeasuredCount tube, MeasuredLength length,
                                     Length width) {
  const Box full = box_of(roll), bare = box_of(tube), L = box_of(length);
  if (const Fault fault = first_of({countable("roll", roll), countable("tube", tube),
                                    surrounds(bare, full, By::weight, "roll"), known("length", length)}))
    return *fault;
  const Rounded r = rounded(tenths(full.low - bare.high, L.high, width),
                            tenths(full.value - bare.value, L.value, width),
                            tenths(full.high - bare.low, L.low, width));
  return MeasuredCount{r.value, r.give};
}

Result<MeasuredCount> turns_of_roll(MeasuredLength outer, MeasuredLength tube,
                                    MeasuredLength length) {
  if (const Fault fault = first_of({wound_on(outer, tube), known("length", length)})) return *fault;
  const Box D = box_of(outer), d = box_of(tube), L = box_of(length);
  const Rounded r = rounded(turns(kPiHigh, D.high, d.high, L.low),
                            turns(kPiLow, D.value, d.value, L.value),
                            turns(kPiLow, D.low, d.low, L.high));
  return MeasuredCount{r.value, r.give};
}

namespace {

Result<RollMeasure> put_right(ByDiameters m, MeasuredLength found, Length) {
  const Result<MeasuredLength> thickness = thickness_of_roll(m.outer, m.tube, found);
  if (!thickness) return thickness.problem();
  m.thickness = *thickness;
  return RollMeasure(m);
}

Result<RollMeasure> put_right(ByTurns m, MeasuredLength found, Length) {
  const Result<MeasuredCount> turns = turns_of_roll(m.outer, m.tube, found);
  if (!turns) return turns.problem();
  m.turns = *turns;
  return RollMeasure(m);
}

Result<RollMeasure> put_right(ByWeight m, MeasuredLength found, Length width) {
  const Result<MeasuredCount> weight = weight_of_roll(m.roll, m.tube, found, width);
  if (!weight) return weight.problem();
  m.per_square_metre = *weight;
  return RollMeasure(m);
}

}  // namespace

Result<RollMeasure> corrected(const RollMeasure& measure, Length found, Length width) {
  const MeasuredLength exact{found, Length()};
  return std::visit([&](const auto& m) { return put_right(m, exact, width); }, measure);
}

}  // namespace foldyard
