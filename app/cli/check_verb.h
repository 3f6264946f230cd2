#pragma once

// foldyard check: plans every roll under every way for both aims, inspects each
// plan again, and says how many were sound. An unsound plan is named with what
// the inspector found, and the code is 1; so it is where nothing can be planned.

#include "cli/outcome.h"
#include "job/job.h"

namespace foldyard {

Outcome check_verb(const Job& job);

}  // namespace foldyard
