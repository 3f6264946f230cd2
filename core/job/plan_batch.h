#pragma once

// The door to planning an order over many rolls (job/batch_plan.h). Pure: same
// job, same budget, same answer.
//
// A first plan comes within a second, then it is bettered until it is proved, the
// rounds are spent, or the search is stopped; then the best so far is the answer.
// How: docs/decisions/batch.md and docs/method.md.
//
// Panel::at_most holds for all rolls together (job/batch_limits.h).
//
// Panels that must match a pattern are cut from no roll that repeats; the note says so, and
// bounds speak of plans that keep to it. Plan such a roll by itself (job/plan_roll.h).
//
// Refused, in one sentence: an order of nothing; a line that no roll can serve; an
// order of which nothing can be cut; what job/batch_case.h refuses; a limit on copies
// that the order passes, or that could not be held.
//
// REQUIRES the invariants of Job.

#include <functional>

#include "job/batch_plan.h"
#include "job/job.h"
#include "job/plan_roll.h"
#include "measure/result.h"
#include "measure/stop.h"

namespace foldyard {

// rounds: of betterment. steps: of each table, as in SearchBudget.
// found: called with each better plan as it is found, the first one included, from
// the thread that plans; inspected as any other.
// progress: counts rounds.
struct BatchBudget {
  int rounds = 200;
  std::int64_t steps = 40'000'000;
  const std::atomic<bool>* cancelled = nullptr;
  SearchProgress* progress = nullptr;
  std::function<void(const BatchPlan&)> found = {};

  bool is_cancelled() const { return is_set(cancelled); }
};

Result<BatchPlan> plan_batch(const Job& job, const BatchBudget& budget = {});

}  // namespace foldyard
