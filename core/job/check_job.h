#pragma once

// Whether a job can stand at all: the invariants of Job, the limits of
// limits.h, and sizes that contradict each other. The reader of job files asks
// it, and so does whatever else makes a Job.
//
// Contradictions: twice the selvedge takes the whole width; the cloth is
// thicker than the cutter's height; the squaring of both ends and one
// allowance take the whole roll; what was measured of a roll gives no length
// (cloth/length_estimate.h), one that is no roll's, or another than the roll
// has without being found; a repeat begins after its first whole one, or is
// larger than the table or the cloth while a panel is to match; a flaw is empty
// or beyond the cloth; a panel, cut larger for shrinkage, fits the usable cloth
// of no roll, no way it may lie; two rolls or two panels bear one name.
//
// Gives the first fault in the order of the file, its field named as in a job
// file (`rolls[1].width`), or nothing.

#include <optional>

#include "job/job.h"
#include "measure/result.h"

namespace foldyard {

std::optional<Problem> check_job(const Job& job);
// The same, but that the flaws of a roll may stand in any order: for a reader
// that names them as its file does and then puts them in order.
std::optional<Problem> check_unordered_job(const Job& job);

}  // namespace foldyard
