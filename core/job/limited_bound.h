#pragma once

// A bound of a limited roll as the worth that a proof gives.
//
// For most worth it is the gain in parts, rounded down. For the other aim it is
// working time without allowance, each panel's worth rounded down to a tick; of the
// time and its cost, rounded down, too, less than a tick and a part may be missing.
// Internal to the limited planners.

#include "job/limited_pool.h"

namespace foldyard {

// bound: in the gain units of the case, `scale` times finer.
Worth bound_in_worth(const LimitedCase& c, std::int64_t bound);

}  // namespace foldyard
