#pragma once

// Writes a cut tree out as a Pattern: the cuts in order, every panel where it
// lies folded and flat, and every rest of the cloth.

#include "cutting/cut_tree.h"
#include "fold/fold_plan.h"
#include "job/job.h"
#include "job/plan.h"

namespace foldyard {

// REQUIRES the tree to be for this roll folded so at this length.
Pattern write_pattern(const Job& job, const Roll& roll, const FoldPlan& fold, Length length,
                      CutTree tree);

// The tree of a longer folded length: all beyond it is cut off first and left. The
// tree itself where it is as long.
CutTree with_rest_beyond(CutTree tree, Length folded_length);

}  // namespace foldyard
