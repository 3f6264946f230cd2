#pragma once

// foldyard draw: the cutting diagram of one roll as a file, written whole or
// not at all.

#include "cli/call.h"
#include "cli/outcome.h"
#include "job/job.h"

namespace foldyard {

// REQUIRES no wrong choice (cli/choice.h).
Outcome draw_verb(const Job& job, const Call& call);

}  // namespace foldyard
