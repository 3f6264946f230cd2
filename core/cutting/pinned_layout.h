#pragma once

// Layouts of folds of which some lines are pinned and the others are searched.
//
// Both edges in: the other flap is searched at every place where the worth can
// change, and the pinned one may be slit anywhere, so that is every plan there
// is with the line there (docs/method.md). Fans and quarters: two pinned lines
// leave one fold. One leaves a whole range: the folds of the way's own places
// that lie so, and a few of that range at which an end leg is as long as its
// strip needs, spread evenly where there are more; so a better one may be missed,
// and is_complete says so. Legs that are found hold a panel, as those of the way do.
//
// REQUIRES at least one pinned line, and a way with found places (not plain).
// joint: places beside a fold edge (TableSet::across). No layouts: no fold of
// the way has its lines there.
// Example: both edges in, the left line pinned at 200 mm: the left flap is 200
// wide, the right one as wide as is best.

#include <optional>
#include <vector>

#include "cutting/fold_layout.h"
#include "cutting/strip_search.h"

namespace foldyard {

struct PinnedLayouts {
  Layouts layouts;
  bool is_complete = false;
};

// pins: by fold line; none: searched. Lines beyond the last pin are searched.
PinnedLayouts layouts_within(const FoldWay& way, const std::vector<std::optional<Length>>& pins,
                             const Fabric& fabric, const FoldLimits& limits, const Grid& joint);

}  // namespace foldyard
