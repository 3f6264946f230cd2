#pragma once

// How much a roll that nobody has unrolled holds now: what was measured
// (cloth/length_estimate.h), less what was cut off it since (Roll::cut_since).
//
// What may be all gone counts as kLeastLeft, so that the roll stays on the shelf until it is
// measured again.
//
// Refused: what estimate() refuses; a roll off which more was cut than it could hold.
//
// Example: 31.1 to 42.1 m, most likely 36.05 m, when measured; 30 m cut since: 1.1 to
// 12.1 m, most likely 6.05 m. After 35 m: 1 cm to 7.1 m, most likely 1.05 m.

#include "cloth/length_estimate.h"
#include "cloth/roll.h"

namespace foldyard {

inline constexpr Length kLeastLeft = Length::mm(10);

// Whether the roll's length is an estimate still.
inline bool is_estimated(const Roll& roll) { return roll.measured && !roll.is_found; }

// REQUIRES roll.measured, and a width that estimate() takes.
Result<LengthEstimate> estimate_of(const Roll& roll);
// The same of a roll with these figures in place of its own; other figures are of the
// roll as it is now.
Result<LengthEstimate> estimate_of(const Roll& roll, const RollMeasure& measure);

}  // namespace foldyard
