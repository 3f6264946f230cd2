#pragma once

// What the lines of an order lack in a finished search (job/batch_plan.h).
//
// Of what must be made: in the cloth whose rolls would make it for the least worth.
// Of a cloth that is asked for: in that cloth, or the first of those asked for. The
// length is a guide: each panel cut by itself in the lengths of one size that give
// most of it; 0 where none can be cut from any length.

#include "job/batch_lengths.h"
#include "job/batch_plan.h"

namespace foldyard {

// REQUIRES lengths to hold for each wanted panel lengths of it by itself.
std::vector<Shortfall> shortfalls_of(const BatchCase& c, const BatchLengths& lengths, const OrderState& state);

}  // namespace foldyard
