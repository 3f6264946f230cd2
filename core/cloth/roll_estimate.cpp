#include "cloth/roll_estimate.h"

#include <algorithm>

namespace foldyard {

Result<LengthEstimate> estimate_of(const Roll& roll) {
  Result<LengthEstimate> full = estimate(*roll.measured, roll.fabric.width);
  if (!full || roll.cut_since == Length()) return full;
  if (full->most - roll.cut_since < kLeastLeft)
    return Problem{"", say("more was cut off the roll since than it could hold by these figures"),
                   say("measure it again, or give the length that is found")};
  const auto left = [&](Length was) { return std::max(was - roll.cut_since, kLeastLeft); };
  return LengthEstimate{left(full->least), left(full->likely), left(full->most)};
}

Result<LengthEstimate> estimate_of(const Roll& roll, const RollMeasure& measure) {
  if (roll.measured == measure) return estimate_of(roll);
  return estimate(measure, roll.fabric.width);
}

}  // namespace foldyard
