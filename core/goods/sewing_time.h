#pragma once

// How long a step, or a piece in one order of operations, takes: basic time,
// without allowance.
//
// The median of an even number of times is the mean of the two in the middle,
// rounded down to a tick.
//
// Worked example: timed 27, 19, 20, 21, 13 s: the median is 20 s (so is the mean,
// in the published example of tests/core/goods/sewing_time_test.cpp).

#include "goods/sewing.h"

namespace foldyard {

inline bool is_assumed(const SewingStep& step) { return step.timed.empty(); }
bool is_assumed(const SewingOrder& order);  // any of its steps
Duration basic_time(const SewingStep& step);
Duration basic_time(const SewingOrder& order);
// Standard time: basic time × (1 + allowance), rounded down to a tick.
Duration with_allowance(Duration basic, int percent);

}  // namespace foldyard
