#pragma once

// Takes a panel out of a job. What names a panel by its place is moved, so that
// it still means the same panel.
//
// Refused, Problem::where naming the panel: the last panel, for a job has at
// least one; a panel that a product is sewn from, that is on hand, that a kept length has, or
// that the records of what was cut name.
//
// Example: of panels 0, 1, 2 the panel 1 goes; a product of panels 0 and 2 is
// then one of panels 0 and 1.

#include "job/job.h"
#include "measure/result.h"

namespace foldyard {

// REQUIRES 0 ≤ panel < job.panels.size().
Result<Job> without_panel(const Job& job, int panel);

}  // namespace foldyard
