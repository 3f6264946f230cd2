#pragma once

// The best position of the folds, and the best cutting, for every length of
// one way at once.
//
// For each sum v of the grid along (the folded length), strip_choices gives
// the layout and strip sizes whose whole is best, with its Cell: gain of all
// plies of one length, cost of all cuts through the lay, slits included.
// `copies` is how many lengths lie in the lay (it matters only to an aim that
// weighs time). An empty choice (no gain, or v no sum)
// has layout null; so have those not reached when the tables are cancelled.
//
// Exhaustive over the finite set of positions that FoldLayout names.

#include <memory>
#include <vector>

#include "cutting/cut_tree.h"
#include "cutting/fold_layout.h"
#include "cutting/table_set.h"

namespace foldyard {

struct StripChoice {
  const FoldLayout* layout = nullptr;
  Length left;  // sizes that the folds give the strips
  Length right;
  Length left_slit;  // where they are slit: there, or at less
  Length right_slit;
  Cell cell;
};

using Layouts = std::vector<std::unique_ptr<FoldLayout>>;

std::vector<StripChoice> strip_choices(TableSet& tables, const Layouts& layouts, bool end_to_end,
                                       std::int64_t copies);

// The cuts of a choice at grid place v, on the folded length.
CutTree strip_tree(TableSet& tables, const StripChoice& choice, bool end_to_end,
                   std::int64_t copies, int v);

}  // namespace foldyard
