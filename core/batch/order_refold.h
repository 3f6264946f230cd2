#pragma once

// Lengths of a plan cut another way: each kind of length under every other way that its
// cloth may be cut, and two lengths of a roll as one. What holds all that they yield and
// takes no more of the roll is asked of `last` (order_fill.h); what makes the plan better by
// the aims of the order stays. Lengths that are kept stay as they are.
//
// Example: two open lengths of a body and two pockets each, 2 m long with 4 cm of allowance:
// as one of 3.96 m, folded end to end, they save an allowance, a cross-cut and some cuts.

#include "batch/order_fill.h"

namespace foldyard {

// ways: by kind, of how many `last` is asked here. most_tries: of all. True where the plan
// is another.
bool refold(const FillTools& tools, const std::vector<int>& ways, int most_tries, OrderState& state);
// Each kind of length under every other way, no two as one.
bool refold_each(const FillTools& tools, const std::vector<int>& ways, int most_tries, OrderState& state);

}  // namespace foldyard
