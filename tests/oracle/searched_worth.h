#pragma once

// What the search finds one roll to be worth by the rule of strips.
//
// A plan may be worth a little more: where a leg ends inside a strip, the rule
// leaves it out, but a panel that comes off it by the way is in the plan.

#include "fold/fold_plan.h"
#include "oracle/small_job.h"

namespace foldyard::test {

std::int64_t searched_worth(const QuantaJob& small, const FoldWay& way);
// Of the plan; 0 where it is refused.
std::int64_t planned_worth(const QuantaJob& small, const FoldWay& way);
// Whether a ply may end inside a strip, so that the rule leaves it out.
bool gives_by_the_way(const FoldWay& way);

}  // namespace foldyard::test
