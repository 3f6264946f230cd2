#pragma once

// The checks of the inspector, each in a file of its own name. A check reads
// one side of a plan and adds what is broken to the findings; it holds nothing.
//
// Those that return bool say whether later checks of the same thing still make
// sense: a pattern whose fold lines do not ascend cannot be folded, a tree that
// does not divide its cloth cannot be held against panels.

#include <string>

#include "inspect/findings.h"
#include "inspect/folded_axis.h"
#include "job/job.h"
#include "job/plan.h"

namespace foldyard::inspection {

// A pattern under inspection, with what it is held against.
struct Subject {
  const Job& job;
  const Fabric& fabric;
  const FoldWay& way;  // of the plan
  const Pattern& pattern;
  std::string name;  // "Pattern 1: ", the head of each sentence
};

struct FoldedCloth {
  FoldedAxis across;
  FoldedAxis along;
};

// REQUIRES what can_be_folded has found true.
FoldedCloth fold_cloth(const Subject& subject);

// inspect_fold: whether lines and levels describe a folding at all, and
// whether it is the folding that its way names, made without cloth passing
// through cloth; size and plies as promised.
bool can_be_folded(const Subject& subject, Findings& findings);
void inspect_fold(const Subject& subject, const FoldedCloth& cloth, Findings& findings);

// inspect_table: the folded length against table and reach; a lay against the
// cutter.
void inspect_table(const Subject& subject, Findings& findings);
void inspect_lay(const Subject& subject, const Lay& lay, const std::string& name,
                 Findings& findings);

// inspect_tree: cuts edge to edge, each node reached once, cuts in order,
// travel, and the distance from fold edges.
bool inspect_tree(const Subject& subject, const FoldedCloth& cloth, Findings& findings);

// inspect_panels: every placed panel against its goods, the cloth and the
// taken rectangle it comes from. REQUIRES a sound tree.
void inspect_panels(const Subject& subject, const FoldedCloth& cloth, Findings& findings);

// inspect_cover: panels and rests cover the flat cloth exactly once; each rest
// is of the kind it is called. REQUIRES a sound tree.
void inspect_cover(const Subject& subject, const FoldedCloth& cloth, Findings& findings);

// inspect_roll: lengths, cloth cut out, losses and remnant along the roll; lays
// against them. False if an index names nothing, so that no sums can be made.
bool inspect_roll(const Job& job, const Plan& plan, Findings& findings);

// inspect_flaws: the panels that touch a flaw of the roll where they lie on it,
// in the order of lengths and panels, each with the first flaw it touches; and
// whether the plan names just these as lost. REQUIRES that indices name things.
std::vector<LostPanel> find_lost_panels(const Job& job, const Plan& plan);
void inspect_lost_panels(const Job& job, const Plan& plan, Findings& findings);

// inspect_repeat: each panel that must match begins, where it lies on the roll, at
// the start of a repeat or with the motif's centre in its middle, along and
// across as the pattern repeats. REQUIRES that indices name things.
void inspect_repeat(const Job& job, const Plan& plan, Findings& findings);

// inspect_limits: no panel is cut more often than its at_most, counted ply by
// ply over all lays. REQUIRES what inspect_roll has found true.
void inspect_limits(const Job& job, const Plan& plan, Findings& findings);
// How many of one panel all the lengths give, less those that a flaw spoils.
// REQUIRES that the indices of the plan name things.
std::int64_t copies_of(int panel, const Plan& plan);

// How often a length is turned over by hand to fold it so.
int folds_by_hand(const FoldWay& way);

// inspect_sums: what the plan says it yields, uses and costs, and its bound.
void inspect_sums(const Job& job, const Plan& plan, Findings& findings);

}  // namespace foldyard::inspection
