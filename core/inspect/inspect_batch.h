#pragma once

// The inspector of batches: checks a finished BatchPlan against its Job from
// first principles. It shares no code with any search (nouns only).
//
// Returns every broken rule or promise as one sentence; none means sound.
// Checked: each roll's plan by inspect_plan, each roll once and in order; that
// the panels of each cloth make the pieces that are said to be made of it; that
// no line gets more than it takes, nor more of a cloth than its rules allow; that
// what is lacking is said; that what is set by hand holds (rolls, lines, lengths); that lays hold every length once, of equal patterns
// on cloth of equal width, within the cutter; the sums: filled, cost, time,
// lifts; the bounds.

#include <string>
#include <vector>

#include "job/batch_plan.h"
#include "job/job.h"

namespace foldyard {

std::vector<std::string> inspect_batch(const Job& job, const BatchPlan& plan);

}  // namespace foldyard
