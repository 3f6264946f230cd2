#pragma once

// LaidCloth: one length of a plan as it lies folded on the table, with what
// every place of it becomes. A value that keeps what it looks at alive.
//
// A patch is a rectangle between cuts on the folded cloth. A taken one gives
// `copies` panels from all the plies of one length, `on_fold` of them creased;
// their places on the flat cloth are in `flats`. A rest has panel −1.
// Patches come in the order of the cut tree, so that equal plans give equal
// numbers.
//
// Example: 1500 wide, selvedge to selvedge, a panel 450 wide cut at the fold
// edge: patch [0,225] with one copy on the fold and one flat place.

#include <memory>
#include <vector>

#include "fold/fold_map.h"
#include "job/job.h"
#include "job/plan.h"
#include "measure/index.h"

namespace foldyard {

struct Patch {
  Rect folded;
  int panel = -1;
  bool turned = false;
  int copies = 0;
  int on_fold = 0;
  std::vector<Rect> flats;

  bool is_rest() const { return panel < 0; }
};

struct LaidCloth {
  std::shared_ptr<const Job> job;
  std::shared_ptr<const Plan> plan;
  int pattern = 0;
  FoldMap map;
  std::vector<Patch> patches;

  const Pattern& cloth() const { return plan->patterns[ix(pattern)]; }
  const Roll& roll() const { return job->rolls[ix(plan->roll)]; }
  const Fabric& fabric() const { return roll().fabric; }
  Rect folded() const { return {{Length(), cloth().folded_across}, {Length(), cloth().folded_along}}; }
  Rect flat() const { return {{Length(), fabric().width}, {Length(), cloth().length}}; }
  // The patch at a folded or a flat place; −1 where there is none.
  int patch_at(Length u, Length v) const;
  int patch_at_flat(Length x, Length y) const;
};

using LaidClothPtr = std::shared_ptr<const LaidCloth>;

// REQUIRES 0 ≤ pattern < plan->patterns.size().
LaidClothPtr lay_cloth(std::shared_ptr<const Job> job, std::shared_ptr<const Plan> plan, int pattern);

}  // namespace foldyard
