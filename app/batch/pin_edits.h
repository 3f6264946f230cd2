#pragma once

// Edits of what is set by hand for a batch: each gives a whole new Job.

#include "job/batch_plan.h"
#include "job/job.h"

namespace foldyard {

// Whether a batch cuts from the roll. Lines and lengths that are kept on it stay so;
// whether the job can stand then is for check_job.
Job with_in_batch(Job job, int roll, InBatch how);

// Whether the plan has lengths of the lay that are not kept yet.
// REQUIRES a plan of the job and a lay of it.
bool can_keep(const Job& job, const BatchPlan& plan, int lay);
// The lengths of the lay are cut so, whatever else is planned. Those that are cut alike
// from one roll are kept together, never more of them than the plan has.
Job with_lay_kept(Job job, const BatchPlan& plan, int lay);

}  // namespace foldyard
