#pragma once

// A job after a measured roll was unrolled: its length is now the one found.
//
// The estimate stays with the roll, so that what was measured is not lost. With
// `correct` its least sure figure is put right by the length found
// (cloth/calibration.h), with what was cut off since: copied to the next roll of that cloth, it makes a better
// estimate.
//
// Refused: a roll that was never measured; a length outside limits::kRollLength; a
// figure that cannot be put right.
//
// Example: estimated 36.05 m by 1.0 mm of thickness, found 33.9 m: the corrected
// thickness is 1.063 mm.

#include "job/job.h"
#include "measure/result.h"

namespace foldyard {

// REQUIRES 0 ≤ roll < job.rolls.size().
Result<Job> as_found(const Job& job, int roll, Length found, bool correct);

// Whether the length found is one that the estimate had room for. Where it is not, a
// figure was further off than its give.
bool was_foreseen(const Roll& roll, Length found);

}  // namespace foldyard
