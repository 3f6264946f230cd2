#pragma once

// Edits of how products are sewn: each gives a whole new Job.

#include "job/job.h"

namespace foldyard {

struct StepPlace {
  int product = -1;
  int order = -1;
  int step = -1;
};

// Null where there is no such step, or order.
const SewingStep* step_at(const Job& job, const StepPlace& place);
std::vector<SewingStep>* steps_at(Job& job, int product, int order);

// An order of operations more: the first one again under a name of its own, or where
// there is none, one of a single step. REQUIRES the product.
Job with_sewing_order(Job job, int product);
// The order is the first, that is used. REQUIRES it.
Job with_order_used(Job job, int product, int order);
// A step more at the end, assumed to take a minute.
Job with_step(Job job, int product, int order);
// A time more that was taken of the step; the oldest goes where there are too many.
Job with_time(Job job, const StepPlace& place, Duration time);

}  // namespace foldyard
