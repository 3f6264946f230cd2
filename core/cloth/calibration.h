#pragma once

// What cloth of known length says of itself, to measure the next roll of it
// better. Each answer is a figure with its give: the figure for the values as
// given, to the nearest unit, and a give so wide that the true figure lies
// within it wherever the values lie within theirs.
//
// A calliper presses a ply more, or less, than the roll does; thickness taken
// from a roll of known length is that of the cloth as it lies wound.
// Source of that advice: Math Forum, "Ask Dr. Math", 24 Nov 2003,
// mathforum.org/library/drmath/view/67031.html.
//
// Refused as in length_estimate.h: below zero, zero where nothing can be
// divided by it, a tube as wide or heavy as its roll; layers below 1.

#include "cloth/roll_measure.h"
#include "measure/result.h"

namespace foldyard {

// One ply of a stack of `layers`, pressed flat by hand.
// Example: 20 layers of 21 mm, give 1 mm: 1.05 mm, give 0.05 mm.
Result<MeasuredLength> thickness_of_stack(MeasuredLength stack, int layers);

// t = π (D² − d²) / (4 L). Example: 40 m, D 238 mm, d 50 mm: 1.063 mm.
Result<MeasuredLength> thickness_of_roll(MeasuredLength outer, MeasuredLength tube,
                                         MeasuredLength length);

// Tenths of a gram per square metre. Example: 28.5 kg less 0.5 kg, 50 m of 1.40 m:
// 4000. REQUIRES 0 < width ≤ kLongest.
Result<MeasuredCount> weight_of_roll(MeasuredCount roll, MeasuredCount tube, MeasuredLength length,
                                     Length width);

// n = 2 L / (π (D + d)), to the nearest whole turn.
Result<MeasuredCount> turns_of_roll(MeasuredLength outer, MeasuredLength tube,
                                    MeasuredLength length);

// The measure with its least sure figure put right by the length that was found
// when the roll was unrolled: the thickness, the weight per square metre, or the
// count of turns. The first two hold for the next roll of that cloth; for a count,
// the difference says how many turns were missed or counted twice.
//
// Property: the range of the corrected measure holds the length found.
// Refused where the measure itself is, and where nothing was found.
Result<RollMeasure> corrected(const RollMeasure& measure, Length found, Length width);

}  // namespace foldyard
