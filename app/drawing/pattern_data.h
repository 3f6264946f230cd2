#pragma once

// What the pictures of one pattern share: the job, the pattern, its cloth and
// how it is folded. A view only; it must not outlive the plan.

#include <QString>

#include "fold/plies.h"
#include "job/job.h"
#include "job/plan.h"

namespace foldyard {

struct PatternData {
  const Job& job;
  const Plan& plan;
  int index;
  const Pattern& pattern;
  const Fabric& fabric;
  FoldMap map;

  Rect flat() const { return {{Length(), fabric.width}, {Length(), pattern.length}}; }
  Rect folded() const {
    return {{Length(), pattern.folded_across}, {Length(), pattern.folded_along}};
  }
};

// REQUIRES 0 ≤ pattern < plan.patterns.size().
PatternData pattern_data(const Job& job, const Plan& plan, int pattern);

// A stretch across the folded cloth under which equally many plies lie.
struct PlyZone {
  Span across;
  int plies = 0;  // of one length, the fold end to end counted
};
std::vector<PlyZone> ply_zones(const FoldMap& map);

// How many panels, and how many of them on the fold, one taken rectangle gives.
struct Taken {
  int panels = 0;
  int on_fold = 0;
};
Taken taken_from(const Pattern& pattern, const CutNode& node);

// What lies at the left (u = 0) and at the near end (v = 0) of the folded cloth:
// "fold edge", "selvedge", "cut end".
QString left_edge_name(const FoldMap& map);
QString near_end_name(const FoldMap& map);
// The side of the cloth that the top ply shows: "face" or "back"; where legs
// that lie level show both, "face and back".
QString top_face_name(const FoldMap& map);

}  // namespace foldyard
