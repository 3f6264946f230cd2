#pragma once

// A length of a plan as one that is kept (job/order.h), and back: its pattern.
//
// Steps are the tree of the length in preorder, so what is kept of a plan comes back as
// the same panels, cuts and folds.
//
// kept_pattern refuses, in one sentence, what can no longer be cut so: a fold that the
// cloth does not take, a cut outside its cloth, a panel that has another size now, and
// all that the inspector finds wrong with a roll cut to this one length.
//
// Example: the second length of a plan for "moss 1", kept as often as three times:
// kept_length(job, plan, 1, 3).

#include "job/job.h"
#include "job/plan.h"
#include "measure/result.h"

namespace foldyard {

// REQUIRES a plan of the job that has the length.
KeptLength kept_length(const Job& job, const Plan& plan, int length, std::int64_t count = 1);
// Whether the pattern is cut as this is kept.
bool is_cut_as(const KeptLength& kept, const Pattern& pattern);
// REQUIRES the invariants of Job, and one of its rolls.
Result<Pattern> kept_pattern(const Job& job, const KeptLength& kept);
// The roll of this name; -1 where there is none.
int roll_named(const Job& job, const std::string& name);

// What names the roll names it by the new name, or, where it is gone, nothing.
void rename_in_order(Job& job, const std::string& roll, const std::string& to);
void forget_in_order(Job& job, const std::string& roll);

}  // namespace foldyard
