#pragma once

// The doors to planning. Both are pure: same job, same answer, on any machine.
//
// plan_roll: the best plan of one roll under one way for one aim. It is
// refused, with the reason, where the way is not allowed (one-way cloth end to
// end, too many plies for the cutter, folded cloth deeper than the table) or
// yields nothing.
// compare_ways: all ways of all_ways(job.longest_fan), ranked.
// Every plan given out has passed inspect_plan; a plan that does not is
// refused with what the inspector found (a fault of the program, shown).
//
// REQUIRES the invariants of Job, 0 ≤ roll < job.rolls.size().

#include <atomic>

#include "job/job.h"
#include "job/plan.h"
#include "measure/result.h"

namespace foldyard {

// What a search may spend, counted in steps, not time, so that the answer is
// the same everywhere. A search that would need more works on fewer places
// and says by its bound what that may have cost.
// cancelled: looked at every millisecond or so; once it is true, a search ends
// with what it has: plan_roll with a plan that is not proved or a refusal,
// compare_ways with the ways planned by then and the others refused.
struct SearchBudget {
  std::int64_t steps = 40'000'000;
  const std::atomic<bool>* cancelled = nullptr;

  bool is_cancelled() const { return cancelled && cancelled->load(std::memory_order_relaxed); }
};

Result<Plan> plan_roll(const Job& job, int roll, const FoldWay& way, Aim aim,
                       const SearchBudget& budget = {});
Comparison compare_ways(const Job& job, int roll, Aim aim, const SearchBudget& budget = {});

}  // namespace foldyard
