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
#include "measure/stop.h"

namespace foldyard {

// How far a search is: `done` of `total` ways (compare_ways) or stages
// (plan_roll: fold positions, series of lengths, inspection). total is 0 until a
// search begins; done never falls within one search. May be read at any time.
struct SearchProgress {
  std::atomic<int> done = 0;
  std::atomic<int> total = 0;

  void begin(int of) {
    done = 0;
    total = of;
  }
};

// What a search may spend, counted in steps, not time, so that the answer is
// the same everywhere. A search that would need more works on fewer places
// and says by its bound what that may have cost.
// cancelled: looked at every few milliseconds; once it is true, a search ends
// within a tenth of a second with the best it has: each way gets the better of
// what was found by then and a quick plan from a few of the panels (not proved,
// with a true bound), or is refused where neither gave one.
// unwanted: looked at once cancelled; where it is true nobody waits for an
// answer, and the ways not yet planned are refused at once.
// progress: counts along for whoever waits; it changes nothing in the answer.
// bytes: that tables may take. Where those of all ways would take more, each way makes its
// own and lets them go; where those of one would, they have fewer places.
struct SearchBudget {
  std::int64_t steps = 40'000'000;
  const std::atomic<bool>* cancelled = nullptr;
  const std::atomic<bool>* unwanted = nullptr;
  SearchProgress* progress = nullptr;
  std::int64_t bytes = std::int64_t{240} << 20;

  SearchBudget without_progress() const {
    SearchBudget budget = *this;
    budget.progress = nullptr;
    return budget;
  }
  bool is_cancelled() const { return is_set(cancelled); }
  bool is_unwanted() const { return is_set(unwanted); }
};

Result<Plan> plan_roll(const Job& job, int roll, const FoldWay& way, Aim aim,
                       const SearchBudget& budget = {});
Comparison compare_ways(const Job& job, int roll, Aim aim, const SearchBudget& budget = {});

}  // namespace foldyard
