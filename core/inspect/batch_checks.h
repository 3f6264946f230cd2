#pragma once

// The checks of the batch inspector, each in a file of its own name. A check
// reads one side of a batch plan and adds what is broken to the findings.

#include <map>
#include <set>
#include <string>
#include <vector>

#include "inspect/findings.h"
#include "job/batch_plan.h"
#include "job/job.h"

namespace foldyard::inspection {

// A cloth with all that it answers to: of the rolls, in their order, then of what is
// on hand.
struct Cloth {
  std::string name;
  std::set<std::string> words;  // its name and its marks

  bool serves(const std::vector<std::string>& asked) const;
};
std::vector<Cloth> cloths_of(const Job& job);
const std::string& cloth_name(const Roll& roll);

// inspect_made: what is made, line by line and cloth by cloth, and what lacks.
// False if an index or a cloth names nothing, so that no sums can be made.
bool inspect_made(const Job& job, const BatchPlan& plan, Findings& findings);

// inspect_served: the panels that the rolls of each cloth yield make the pieces
// that are made of it. REQUIRES what inspect_made has found true.
void inspect_served(const Job& job, const BatchPlan& plan, Findings& findings);

// inspect_pins: what is set by hand: rolls that are left out or must be cut, lengths
// that are kept, lines that are kept on a roll, limits on copies. REQUIRES the same, and sound rolls.
void inspect_pins(const Job& job, const BatchPlan& plan, Findings& findings);

// inspect_lays: every length in one lay, equal patterns, the cutter's height and
// plies. False if an index names nothing.
bool inspect_lays(const Job& job, const BatchPlan& plan, Findings& findings);

// inspect_batch_sums: filled, cost, time, lifts and the bounds.
void inspect_batch_sums(const Job& job, const BatchPlan& plan, Findings& findings);

}  // namespace foldyard::inspection
