#pragma once

// Layouts of folds whose lines are given: only where they are slit is searched.
//
// Read off the fold map: at either rim the pairs that fold edges join there;
// between them, for each number of plies and each place where one more begins,
// the widest strip that so many cover from side to side. All of them together
// hold every way of slitting such a fold into strips (docs/method.md). The layouts
// of the way itself are there, too, as far as their folds lie so: what the best
// fold gives is given again.
//
// REQUIRES lines ascending inside the width, and every fold edge at a rim of the
// folded cloth (else there are no layouts).
// Example: off-centre at 500 on 1500 with selvedges of 10: folded 1000 wide; a
// strip of up to 490 at the fold edge; beyond it two plies up to 490, one up to
// 990.

#include <memory>
#include <vector>

#include "cutting/fold_layout.h"

namespace foldyard {

std::vector<std::unique_ptr<FoldLayout>> layouts_at(const FoldPlan& fold, const Fabric& fabric,
                                                    const FoldLimits& limits);

}  // namespace foldyard
