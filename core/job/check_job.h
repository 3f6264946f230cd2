#pragma once

// Whether a job can stand at all: the invariants of Job, the limits of
// limits.h, and sizes that contradict each other. The reader of job files asks
// it, and so does whatever else makes a Job.
//
// Contradictions: twice the selvedge takes the whole width; the cloth is
// thicker than the cutter's height; the squaring of both ends and one
// allowance take the whole roll; a panel fits the usable cloth of no roll,
// neither way it may lie; two rolls or two panels bear one name.
//
// Gives the first fault in the order of the file, its field named as in a job
// file (`rolls[1].width`), or nothing.

#include <optional>

#include "job/job.h"
#include "measure/result.h"

namespace foldyard {

std::optional<Problem> check_job(const Job& job);

}  // namespace foldyard
