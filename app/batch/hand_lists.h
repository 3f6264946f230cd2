#pragma once

// The lists of what is set by hand for a batch: lengths that are kept, what counts
// first, and panels on hand.

#include "batch/job_table.h"

namespace foldyard {

enum class KeptColumn { roll, count, length, way, gives };
JobList kept_list();

// Most important first; they are moved, not typed.
JobList aim_list();

enum class OnHandColumn { panel, cloth, count };
JobList on_hand_list();

}  // namespace foldyard
