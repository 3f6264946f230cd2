#pragma once

// foldyard plan: the plan of each roll, by the named way of folding or
// the best one. A roll that cannot be planned says why; if none can be, the
// code is 1.

#include "cli/call.h"
#include "cli/outcome.h"
#include "job/job.h"

namespace foldyard {

// REQUIRES no wrong choice (cli/choice.h).
Outcome plan_verb(const Job& job, const Call& call);

}  // namespace foldyard
