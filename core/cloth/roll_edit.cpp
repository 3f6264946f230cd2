#include "cloth/roll_edit.h"

#include "cloth/flaw_order.h"
#include "cloth/roll_estimate.h"

namespace foldyard {

Roll with_width(Roll roll, Length width) {
  const Span whole{Length(), roll.fabric.width};
  for (Flaw& flaw : roll.flaws) {
    if (flaw.across == whole) flaw.across.to = width;
  }
  put_in_order(roll.flaws);
  roll.fabric.width = width;
  if (!roll.measured || roll.is_found || width <= Length() || width > kLongest) return roll;
  const Result<LengthEstimate> estimated = estimate_of(roll);
  if (estimated) roll.length = estimated->least;
  return roll;
}

Roll with_length(Roll roll, Length length) {
  roll.is_found = roll.measured.has_value();
  roll.length = length;
  return roll;
}

}  // namespace foldyard
