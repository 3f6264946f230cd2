#include "cutting/packing.h"

#include <algorithm>
#include <numeric>

namespace foldyard {

namespace {

int bits(Wide number) {
  int count = 0;
  for (; number > 0; number >>= 1) ++count;
  return count;
}

// No more panels than the smallest has room for, on a length folded end to end.
Wide most_panels(const std::vector<Shape>& shapes, Length widest, Length tallest) {
  Wide least = 0;
  for (const Shape& s : shapes) {
    const Wide area = Wide(s.across.units()) * s.along.units();
    least = least == 0 ? area : std::min(least, area);
  }
  return least == 0 ? 1 : Wide(widest.units()) * tallest.units() * 2 / least + 1;
}

}  // namespace

// Each panel is freed by at most two trims and a parting, in up to two rows of
// cuts; slits come on top.
Packing::Packing(const Objective& aim, const std::vector<Shape>& shapes, Length widest,
                 Length tallest, Length unit)
    : aim_(aim), unit_(aim.worth_first ? unit.units() : 1) {
  per_cut_ = aim.per_cut;
  per_step_ = aim.per_unit * unit_;
  if (!aim.worth_first) return;
  gain_unit_ = 0;
  std::int64_t most_gain = 1;
  for (const Shape& s : shapes) {
    gain_unit_ = std::gcd(gain_unit_, s.gain);
    most_gain = std::max(most_gain, s.gain);
  }
  gain_unit_ = std::max<std::int64_t>(gain_unit_, 1);
  const Wide panels = most_panels(shapes, widest, tallest);
  const Wide cuts = panels * 6 + 16;
  const Wide steps = std::max(widest, tallest).units() / unit_ + 1;
  cuts_apart_ = aim.per_unit == 1 && per_cut_ >= cuts * steps * unit_;
  if (cuts_apart_) {
    per_step_ = 1;
    per_cut_ = cuts * steps;
  }
  shift_ = bits(cuts * (per_cut_ + per_step_ * steps));
  wide_ = shift_ + bits(panels * (most_gain / gain_unit_)) > 58;
}

Cell Packing::unpack(Wide value) const {
  const Wide gain = gain_part(value);
  const Wide cost = (gain << shift_) - value;
  const Wide spelled = cuts_apart_ ? cost / per_cut_ * aim_.per_cut + cost % per_cut_ * unit_
                                   : cost;
  return {static_cast<std::int64_t>(gain * gain_unit_), static_cast<std::int64_t>(spelled)};
}

}  // namespace foldyard
