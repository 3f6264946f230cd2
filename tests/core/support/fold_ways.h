#pragma once

// The ways of folding that many tests try. Plain: at the symmetric position.

#include "fold/fold_plan.h"

namespace foldyard::test {

inline constexpr FoldWay kOpen{};
inline constexpr FoldWay kOpenEndToEnd{FoldKind::open, 1, true, true};
inline constexpr FoldWay kHalf{FoldKind::selvedge_to_selvedge, 2, false, true};
inline constexpr FoldWay kOffCentre{FoldKind::off_centre, 2, false, false};
inline constexpr FoldWay kFlaps{FoldKind::both_edges_in, 3, false, false};
inline constexpr FoldWay kPlainFlaps{FoldKind::both_edges_in, 3, false, true};
inline constexpr FoldWay kThirds{FoldKind::fan, 3, false, false};
inline constexpr FoldWay kPlainThirds{FoldKind::fan, 3, false, true};
inline constexpr FoldWay kQuarters{FoldKind::quarters, 4, false, false};
inline constexpr FoldWay kPlainQuarters{FoldKind::quarters, 4, false, true};
inline constexpr FoldWay kFanOf5{FoldKind::fan, 5, false, false};
inline constexpr FoldWay kPlainFanOf5{FoldKind::fan, 5, false, true};

inline const std::vector<FoldWay> kOpenOnly{kOpen};

}  // namespace foldyard::test
