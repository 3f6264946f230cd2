#pragma once

// No plan of a roll has more worth than all its usable cloth at the best worth for
// its area.

#include "job/job.h"

namespace foldyard {

// REQUIRES a panel. The cloth between the squared ends counts.
Worth area_bound(const Job& job, const Roll& roll);

}  // namespace foldyard
