#pragma once

// One roll under one fold way with limits on copies, by listing every number of
// copies that can be cut: of each rectangle through so many plies, of each folded
// length, of each room on the roll. Cuts and slits lie at every quantum; nothing
// of the project's searches is used. A take of c plies gives c copies, and in a
// strip all plies are cut alike.

#include "fold/fold_plan.h"
#include "oracle/small_job.h"

namespace foldyard::test {

// The most worth within the limits, by the rule of strips.
std::int64_t limited_worth(const QuantaJob& job, const FoldWay& way);

}  // namespace foldyard::test
