#include "drawing/pattern_data.h"

#include <algorithm>
#include <set>

#include "job/roll_of.h"
#include "language/tr.h"
#include "measure/index.h"

namespace foldyard {

namespace {

bool has_fold_at_zero(const AxisMap& axis) {
  return std::any_of(axis.edges().begin(), axis.edges().end(),
                     [](const FoldEdge& edge) { return edge.at.is_zero(); });
}

int plies_over(const AxisMap& axis, Span span) {
  return static_cast<int>(std::count_if(axis.legs().begin(), axis.legs().end(),
                                        [&](const Leg& leg) { return leg.folded.covers(span); }));
}

}  // namespace

PatternData pattern_data(const Job& job, const Plan& plan, int pattern) {
  const Pattern& chosen = plan.patterns[ix(pattern)];
  const Fabric& fabric = roll_of(job, plan).fabric;
  return {job, plan, pattern, chosen, fabric, fold_map(chosen.fold, fabric.width, chosen.length)};
}

std::vector<PlyZone> ply_zones(const FoldMap& map) {
  std::set<Length> ends;
  for (const Leg& leg : map.across.legs()) ends.insert({leg.folded.from, leg.folded.to});
  std::vector<PlyZone> zones;
  const int doubled = static_cast<int>(map.along.legs().size());
  for (auto end = ends.begin(); std::next(end) != ends.end(); ++end) {
    const Span span{*end, *std::next(end)};
    const int plies = plies_over(map.across, span) * doubled;
    if (!zones.empty() && zones.back().plies == plies)
      zones.back().across.to = span.to;
    else
      zones.push_back({span, plies});
  }
  return zones;
}

Taken taken_from(const Pattern& pattern, const CutNode& node) {
  Taken taken;
  for (const PlacedPanel& placed : pattern.panels) {
    if (!node.rect.covers(placed.folded)) continue;
    ++taken.panels;
    taken.on_fold += placed.on_fold ? 1 : 0;
  }
  return taken;
}

QString left_edge_name(const FoldMap& map) {
  return has_fold_at_zero(map.across) ? tr("fold edge") : tr("selvedge");
}

QString near_end_name(const FoldMap& map) {
  return has_fold_at_zero(map.along) ? tr("fold edge") : tr("cut end");
}

QString top_face_name(const FoldMap& map) {
  bool face = false, back = false;
  const std::vector<Ply> plies = plies_of(map);
  for (const Ply& ply : plies) {
    const bool covered = std::any_of(plies.begin(), plies.end(), [&](const Ply& other) {
      return other.level > ply.level && other.folded.overlaps(ply.folded);
    });
    if (!covered) (ply.is_face_up() ? face : back) = true;
  }
  return face && back ? tr("face and back") : face ? tr("face", "of cloth") : tr("back", "of cloth");
}

}  // namespace foldyard
