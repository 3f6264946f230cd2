#include <algorithm>
#include <map>

#include "inspect/checks.h"
#include "measure/index.h"

namespace foldyard::inspection {

namespace {

// The rectangles that no cut divides further, and how many panels each gives.
struct Leaf {
  const CutNode* node = nullptr;
  int panels = 0;
};
using Leaves = std::map<Rect, Leaf>;

Leaves leaves_of(const CutTree& tree) {
  Leaves leaves;
  for (const CutNode& node : tree.nodes) {
    if (node.kind != NodeKind::cut) leaves[node.rect] = {&node, 0};
  }
  return leaves;
}

bool each_is(const std::vector<Span>& pieces, Span span) {
  return !pieces.empty() &&
         std::all_of(pieces.begin(), pieces.end(), [&](Span piece) { return piece == span; });
}

// One panel with the head of its sentences.
struct PanelCase {
  const Subject& s;
  const FoldedCloth& cloth;
  const PlacedPanel& placed;
  std::size_t number;
  Findings& findings;

  const Panel& goods() const { return s.job.panels[ix(placed.panel)]; }
  bool require(bool holds, const char* what) const {
    return findings.require(holds, s.name, "panel ", number, " (", goods().name, ") ", what);
  }
};

// The least even number of units that leaves no less than `sewn` once the cloth
// has lost its share in hundredths of a percent.
bool is_cut_for(Length cut, Length sewn, std::int64_t lost) {
  const std::int64_t kept = Shrinkage::kWhole - lost;
  const std::int64_t wanted = sewn.units() * Shrinkage::kWhole;
  if (lost == 0) return cut == sewn;
  return cut.is_even() && wanted <= cut.units() * kept && (cut.units() - 2) * kept < wanted;
}

// The panel's own width runs across the roll, unless it is turned; on railroaded
// cloth what follows the pattern is a quarter round from there.
bool has_width_across(const PanelCase& c) {
  const bool round = c.s.fabric.railroaded && c.goods().grain == Grain::pattern;
  return c.placed.turned ? round : !round;
}

void inspect_size(const PanelCase& c) {
  const Panel& goods = c.goods();
  const Rect& flat = c.placed.flat;
  const Shrinkage& lost = c.s.fabric.shrinkage;
  const bool turned = c.placed.turned;
  const bool upright = has_width_across(c);
  c.require(is_cut_for(flat.across.size(), upright ? goods.across : goods.along, lost.across) &&
                is_cut_for(flat.along.size(), upright ? goods.along : goods.across, lost.along),
            "is not cut to its size");
  c.require(!turned || goods.may_turn, "is turned but may not be");
  c.require(!turned || c.s.fabric.nap == Nap::none, "is turned on one-way cloth");
}

void inspect_place(const PanelCase& c) {
  const Span length{Length(), c.s.pattern.length};
  c.require(c.s.fabric.usable().covers(c.placed.flat.across), "lies outside the usable width");
  c.require(length.covers(c.placed.flat.along), "lies outside the length");
}

void inspect_crease(const PanelCase& c) {
  const Rect& flat = c.placed.flat;
  const bool creased =
      is_creased(c.cloth.across, flat.across) || is_creased(c.cloth.along, flat.along);
  c.require(!creased || c.goods().on_fold, "carries a crease but may not");
  c.require(creased == c.placed.on_fold, creased ? "carries a crease but is not marked on the fold"
                                                 : "is marked on the fold but carries no crease");
  c.require(
      !ends_on_crease(c.cloth.across, flat.across) && !ends_on_crease(c.cloth.along, flat.along),
      "ends on a fold edge, where no cut frees it");
}

// What the flat panel folds onto must be its rectangle, once for each ply.
void inspect_folded(const PanelCase& c) {
  const Rect& flat = c.placed.flat;
  c.require(each_is(fold_span(c.cloth.across, flat.across), c.placed.folded.across) &&
                each_is(fold_span(c.cloth.along, flat.along), c.placed.folded.along),
            "does not fold onto its place in the folded cloth");
}

void inspect_leaf(const PanelCase& c, Leaves& leaves) {
  const auto found = leaves.find(c.placed.folded);
  const bool taken = found != leaves.end() && found->second.node->kind == NodeKind::take;
  if (!c.require(taken, "comes from no taken rectangle")) return;
  ++found->second.panels;
  c.require(found->second.node->panel == c.placed.panel,
            "is not the one its rectangle is taken for");
  c.require(found->second.node->turned == c.placed.turned,
            "does not lie as its rectangle is taken");
}

void inspect_leaves(const Subject& s, const Leaves& leaves, Findings& findings) {
  for (const auto& [rect, leaf] : leaves) {
    const bool taken = leaf.node->kind == NodeKind::take;
    findings.require(!taken || leaf.panels > 0, s.name, "the rectangle taken at ", rect.across.from,
                     " across and ", rect.along.from, " along gives no panel");
  }
}

}  // namespace

void inspect_panels(const Subject& s, const FoldedCloth& cloth, Findings& findings) {
  Leaves leaves = leaves_of(s.pattern.tree);
  std::size_t number = 0;
  for (const PlacedPanel& placed : s.pattern.panels) {
    const PanelCase c{s, cloth, placed, ++number, findings};
    inspect_size(c);
    inspect_place(c);
    inspect_crease(c);
    inspect_folded(c);
    inspect_leaf(c, leaves);
  }
  inspect_leaves(s, leaves, findings);
}

}  // namespace foldyard::inspection
