#pragma once

// Which panels of a plan touch a flaw of its roll.
//
// A panel touches a flaw where its rectangle, laid on the roll with its length,
// overlaps the flaw's; one that only ends where a flaw begins does not. Of
// panels cut through several plies at once only those are lost whose own ply
// holds the flaw; a panel cut on the fold is lost if either half touches it.
//
// REQUIRES patterns, lays and lengths to be set.
//
// Example: a length from 3.00 m with 4 cm of allowance; its panel from 0 to 90
// cm along lies on the roll from 3.02 to 3.92 m.

#include <vector>

#include "job/job.h"
#include "job/plan.h"

namespace foldyard {

// In the order of lengths, then panels; each with the first flaw it touches.
std::vector<LostPanel> lost_panels(const Job& job, const Plan& plan);
// What Plan::lost would be worth together.
Worth lost_worth(const Job& job, const Plan& plan);

// The flaws of a roll that lie on cloth a plan may use: between the selvedges
// and between the squared ends. In the roll's order.
std::vector<Flaw> flaws_that_matter(const Roll& roll, Span along);

}  // namespace foldyard
