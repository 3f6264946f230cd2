#pragma once

// The roll that a plan cuts.
//
// REQUIRES a plan of this job.

#include "job/job.h"
#include "job/plan.h"
#include "measure/index.h"

namespace foldyard {

inline const Roll& roll_of(const Job& job, const Plan& plan) { return job.rolls[ix(plan.roll)]; }

}  // namespace foldyard
