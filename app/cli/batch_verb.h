#pragma once

// foldyard batch: the plan of the job's order over all its rolls.
// foldyard cut: the same plan, and the job as it is after some of its lays are cut.
// foldyard shelf: the rolls as a table, or a job with the rolls of a table.

#include "cli/call.h"
#include "cli/outcome.h"
#include "job/job.h"

namespace foldyard {

Outcome batch_verb(const Job& job, const Call& call);
Outcome cut_verb(const Job& job, const Call& call);
Outcome shelf_verb(const Job& job, const Call& call);

}  // namespace foldyard
