#pragma once

// The rolls of a batch as a table of words with a tick for each that is not left out: all
// rolls of the shelf, those that the plan cuts with what is cut from them, and those
// that must be cut marked so.

#include <vector>

#include "batch/batch_planner.h"
#include "drawing/batch_tables.h"

namespace foldyard {

struct TickedTable {
  BatchTable table;
  std::vector<bool> ticks;
};

// answer: null, or one for this job. A row for each roll of the job, in its order.
TickedTable rolls_in_batch(const Job& job, const BatchAnswer* answer);

}  // namespace foldyard
