#pragma once

// A bound on the worth of a roll with flaws: flaws beside which no panel finds
// room part the roll in stretches, and no stretch gives more than its best
// series of lengths.
//
// A length that such a flaw runs through gives no more than two lengths, one up
// to the flaw and one from its end on: a fold plan and its cuts serve both. Two
// lengths need one allowance more than one does, so every stretch is taken an
// allowance longer for each parting flaw at its ends. Narrow flaws are left
// out of account, which can only raise the bound. Not for cloth folded end to
// end, where both halves of a length lie in one.
//
// REQUIRES the candidates to hold, for every length, one at most as long with
// the most worth any cutting of it has (lengths without flaws); flaws in order.
//
// Example: 10 m with a flaw of 5 cm over the whole width in the middle: twice
// the best of 4.975 m and an allowance.

#include "batch/flawed_series.h"
#include "cutting/shape.h"
#include "job/flawed_roll.h"

namespace foldyard {

Worth flaw_bound(const Job& job, const Roll& roll, const FlawedCloth& cloth,
                 const std::vector<Shape>& shapes, const std::vector<FlawedCandidate>& candidates);

}  // namespace foldyard
