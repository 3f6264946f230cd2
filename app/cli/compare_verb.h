#pragma once

// foldyard compare: all ways of folding each roll, ranked. If no roll can
// be planned in any way, the code is 1.

#include "cli/call.h"
#include "cli/outcome.h"
#include "job/job.h"

namespace foldyard {

// REQUIRES no wrong choice (cli/choice.h).
Outcome compare_verb(const Job& job, const Call& call);

}  // namespace foldyard
