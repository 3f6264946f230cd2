#pragma once

// Writes a finished search out as a BatchPlan: each roll's Plan, its lengths from
// the free end, longest first in each stretch; the lays over all rolls; and the sums.
//
// time: all lays and lengths as the work of one plan (costing/pace.h), with one
// unroll for each roll; the allowance is put on the sum.

#include "job/batch_lengths.h"
#include "job/batch_plan.h"

namespace foldyard {

// The bounds, proved and note are left for the caller.
BatchPlan write_batch(const Job& job, const BatchCase& c, const BatchLengths& lengths, const OrderState& state);

}  // namespace foldyard
