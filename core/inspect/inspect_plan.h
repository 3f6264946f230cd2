#pragma once

// The inspector: checks a finished Plan against its Job from first principles.
// It folds the cloth itself, replays the cuts, and shares no code with any
// search or with fold/fold_map.h (nouns only: values, no verbs).
//
// Returns every broken rule or promise as one sentence; none means sound.
// Checked: fold lines and levels, table depth, length and reach, plies against the cutter,
// the nap; each cut edge to edge; each panel's size, direction, place in the
// usable cloth, crease, and that no two overlap; that panels and rests cover
// the cloth exactly once; positions along the roll with losses and cloth cut
// out; which panels touch flaws; no more of a panel than its at_most; and the
// sums: yield, worth, net, area, cuts, travel, time, bound.

#include <string>
#include <vector>

#include "job/job.h"
#include "job/plan.h"

namespace foldyard {

// What a plan is of: one roll under one way, or a roll of a batch, of which each length
// is folded its own way.
enum class PlanOf { one_way, batch };

std::vector<std::string> inspect_plan(const Job& job, const Plan& plan, PlanOf of = PlanOf::one_way);

}  // namespace foldyard
