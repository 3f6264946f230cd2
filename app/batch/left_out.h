#pragma once

// Rolls that stay out of a batch: it is planned from a Job without them, and the
// plan is told in terms of the whole Job again.
//
// Rolls are named by their names, which are unique; a name that no roll has means
// nothing. The Job without them may be one that cannot stand (no roll left, or an
// order that asks for their cloth): look at it with check_job.
//
// Example: rolls A, B, C with B left out: C is roll 1 of the smaller job and
// roll 2 of the plan that in_whole_job gives.

#include <set>
#include <string>
#include <vector>

#include "job/batch_plan.h"
#include "job/job.h"

namespace foldyard {

using RollNames = std::set<std::string>;

struct RollsIn {
  Job job;
  std::vector<int> places;  // of its rolls, in the whole job
};

RollsIn without_rolls(const Job& job, const RollNames& left_out);
// REQUIRES a plan of that smaller job.
BatchPlan in_whole_job(BatchPlan plan, const std::vector<int>& places);

}  // namespace foldyard
