#pragma once

// Published instances as problems of the searches.

#include "cutting/limited_problem.h"
#include "job/job.h"
#include "support/instance_reader.h"

namespace foldyard::test {

// One rectangle with limited copies, a unit of length for each whole number.
// Where any number is allowed, here only one of each is.
LimitedProblem limited_problem(const Instance& instance, bool may_turn);

// Any number of copies as a job: open cloth without selvedge or losses, the
// table as long as the roll, a millimetre for each whole number, and a part of
// worth for each of value.
Job unlimited_job(const Instance& instance, bool may_turn);

}  // namespace foldyard::test
