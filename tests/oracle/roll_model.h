#pragma once

// One roll under one fold way as whole-number models for a general solver.
//
// length_worth: one length. Plates are rectangles of one kind (loose, or joined
// at a fold edge across, along, or both) and size. The unknowns count how often
//   the length is folded and slit into these strips: once at most in all,
//   a plate is cut in two, or loses its last quantum,
//   a plate is taken as a panel.
// No plate is used more often than it comes about; beside a fold edge a cut
// leaves a joined plate and two of what lies beyond. Copies are not limited, so
// it is no gain that here plies of one strip may be cut differently.
//
// roll_worth: how many lengths of each height fit the roll together. In one
// model with the first the bound is weak and the solver takes minutes.

#include "fold/fold_plan.h"
#include "oracle/small_job.h"

namespace foldyard::test {

// `height` is that of the folded length. In the worth of job.panels.
std::int64_t length_worth(const QuantaJob& job, const FoldWay& way, int height);
std::int64_t roll_worth(const QuantaJob& job, const FoldWay& way);

}  // namespace foldyard::test
