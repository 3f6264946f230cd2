#pragma once

// The inspector on what was set by hand: whether a plan of a sound kind keeps to
// it. It reads the plan alone and shares no code with the search.
//
// Returns every broken pin as one sentence; none means kept. Checked: in every
// pattern each pinned fold line where it is pinned; every length as long as it is
// set; of each panel at least so many, counted ply by ply over all lengths, less
// those that a flaw spoils. Names that the job does not have are passed over.
//
// REQUIRES a plan without findings of inspect_plan.
// Example: a line pinned at 405 mm that lies at 400 mm: "Pattern 1: fold line 1
// lies at 40 cm, but is pinned at 40.5 cm."

#include <string>
#include <vector>

#include "job/hand.h"
#include "job/plan.h"

namespace foldyard {

std::vector<std::string> inspect_hand(const Job& job, const Plan& plan, const Hand& hand);

}  // namespace foldyard
