#pragma once

// The best position of the folds, and the best cutting, for every length of one
// way at once.
//
// For each sum v of the grid along (the folded length), the layout and strip
// sizes whose whole is best: gain of all plies of one length, cost of all cuts
// through the lay, slits included. `copies` is how many lengths lie in the lay
// (it matters only to an aim that weighs time).
//
// Exhaustive over the finite set of positions that FoldLayout names; every
// position is tried at all lengths at once. What is best is known at once for
// all lengths; where its folds lie is found for one length when it is asked for.

#include <memory>
#include <vector>

#include "cutting/cut_tree.h"
#include "cutting/fold_layout.h"
#include "cutting/strips.h"
#include "cutting/table_set.h"

namespace foldyard {

// Where the folds lie at one length and how its strips are used.
struct StripChoice {
  const FoldLayout* layout = nullptr;  // null: nothing is gained
  SizedStrip left;
  SizedStrip right;
  StripUse middle_use = StripUse::none;
  // What it gives; where time is weighed: gain is copies × gain − cost of the
  // whole lay, and cost 0.
  Cell cell;
};

using Layouts = std::vector<std::unique_ptr<FoldLayout>>;

class StripSearch {
 public:
  // REQUIRES tables and layouts to live as long as this.
  StripSearch(TableSet& tables, const Layouts& layouts, bool end_to_end, std::int64_t copies);

  // By place of the grid along: gain 0 where nothing is gained, or v is no sum,
  // or was not reached when the tables were cancelled.
  const std::vector<Cell>& cells() const { return cells_; }
  StripChoice choice(int v) const;

 private:
  template <class V> void search();
  template <class V> StripChoice find(int v) const;

  TableSet& tables_;
  const Layouts& layouts_;
  bool end_to_end_;
  std::int64_t copies_;
  std::vector<Wide> values_;  // by length, as in TableSet::lengths
  std::vector<Cell> cells_;
};

// All choices of a search, by place.
std::vector<StripChoice> strip_choices(TableSet& tables, const Layouts& layouts, bool end_to_end,
                                       std::int64_t copies);

// The cuts of a choice at grid place v, on the folded length.
CutTree strip_tree(TableSet& tables, const StripChoice& choice, bool end_to_end,
                   std::int64_t copies, int v);

}  // namespace foldyard
