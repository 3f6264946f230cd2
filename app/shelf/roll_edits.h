#pragma once

// Edits of the row of rolls on the shelf. Each gives a whole new job; whether it
// can stand is for check_job.
//
// REQUIRES 0 ≤ roll < job.rolls.size() and 0 ≤ before ≤ job.rolls.size().
//
// Example: rolls A B C: with_moved(job, 0, 3) has B C A; with_copy(job, 0) has
// A, "A 2", B, C.

#include <string>
#include <vector>

#include "job/job.h"
#include "measure/result.h"

namespace foldyard {

// The copy stands behind the roll under a name of its own.
Job with_copy(const Job& job, int roll);
// Refused for the only roll: a job has at least one.
Result<Job> without_roll(const Job& job, int roll);
// The roll goes to where it stands before the one that is `before` now; before
// rolls.size(): to the end.
Job with_moved(const Job& job, int roll, int before);
// Where it stands then.
int place_after_move(int roll, int before);

std::vector<std::string> names_of(const std::vector<Roll>& rolls);
// Which roll of the job now is the one that was `roll` among `names`: that of its
// name; else, renamed or gone, the one in its place. −1 stays −1; 0 of no rolls.
int followed(const std::vector<std::string>& names, int roll, const Job& now);

}  // namespace foldyard
