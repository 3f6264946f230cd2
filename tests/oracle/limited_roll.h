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

// The most worth of plans with at least so many of a panel; −1 where there is none.
// REQUIRES an at_most of that panel that no plan can pass, and of no other.
std::int64_t worth_with_at_least(const QuantaJob& job, const FoldWay& way, std::size_t panel, int least);

}  // namespace foldyard::test
