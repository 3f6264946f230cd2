#pragma once

// The order that is measured: the goods of the workshop job as products, from rolls
// of eight cloths in two widths.

#include "job/job.h"

namespace foldyard::bench {

// rolls: from 1, the cloths in turn; goods: up to 16; pieces: of all goods together.
Job workshop_order(int rolls, int goods, int pieces);

}  // namespace foldyard::bench
