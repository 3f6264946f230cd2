#pragma once

// The best cutting with limited copies, proved where the budget allows.
//
// Builds grow from single panels: two builds side by side, or one above the
// other, are a larger build. Best first: the build whose bound is greatest is
// joined with all that came before it. The bound of a build is what its panels
// gain, plus the most that any cutting could add around it, where each panel
// has a price for every copy used (prices × limits are given back at the end):
// copies are then free of limits, so that both are looked up in tables like
// those of cut_table.h. Prices come from a few dozen steps of the subgradient
// method; the bound without prices is looked at, too.
//
// A build is given up where another has the same panels in no more cloth, or more
// panels in the same: so that more is never worse, copies beyond a limit are left
// lying and not counted. A greedy fill guided by the same tables gives
// good cuttings early.
//
// Sources: Viswanathan & Bagchi 1993, Operations Research 41, for growing
// builds best first; Held, Wolfe & Crowder 1974, Mathematical Programming 6,
// for the prices (both from memory, no page seen). The joint and the use of
// priced tables as bound on both sides of a build are our own.
//
// Deterministic: steps are counted, not timed.

#include "cutting/limited_problem.h"

namespace foldyard {

LimitedAnswer best_limited(const LimitedProblem& problem, const LimitedBudget& budget = {});

}  // namespace foldyard
