#pragma once

// How many lengths may lie in one lift: as many as the cutter's height and the
// cap on plies take when each is folded a way (lay/cutter.h), planned for its
// full number of legs. 0: not even one, so the way cannot be planned.
//
// Example: cutter 25 mm, cloth 1.2 mm, quarters (4 plies): 5.

#include <cstdint>

#include "fold/fold_plan.h"
#include "job/job.h"

namespace foldyard {

// REQUIRES 0 ≤ roll < job.rolls.size().
std::int64_t lengths_in_a_lift(const Job& job, int roll, const FoldWay& way);

}  // namespace foldyard
