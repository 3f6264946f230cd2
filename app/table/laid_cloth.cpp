#include "table/laid_cloth.h"

#include "measure/index.h"

namespace foldyard {
namespace {

bool holds(const Rect& rect, Length across, Length along) {
  return rect.across.from <= across && across < rect.across.to && rect.along.from <= along &&
         along < rect.along.to;
}

// The rectangle that is not cut any more, at a place of the folded cloth.
std::size_t leaf_at(const CutTree& tree, const Rect& place) {
  std::size_t node = 0;
  while (tree.nodes[node].kind == NodeKind::cut) {
    const CutNode& cut = tree.nodes[node];
    const Length from = cut.direction == Direction::along ? place.across.from : place.along.from;
    node = static_cast<std::size_t>(from < cut.at ? cut.first : cut.second);
  }
  return node;
}

void add_rest(Patch& patch, const FoldMap& map) {
  for (const Span across : map.across.places_of(patch.folded.across))
    for (const Span along : map.along.places_of(patch.folded.along)) patch.flats.push_back({across, along});
}

Patch patch_of(const CutNode& node, const FoldMap& map) {
  Patch patch;
  patch.folded = node.rect;
  if (node.kind == NodeKind::take) {
    patch.panel = node.panel;
    patch.turned = node.turned;
  } else {
    add_rest(patch, map);
  }
  return patch;
}

void add_panel(Patch& patch, const PlacedPanel& placed) {
  if (patch.is_rest() || !patch.folded.covers(placed.folded)) return;
  ++patch.copies;
  patch.on_fold += placed.on_fold ? 1 : 0;
  patch.flats.push_back(placed.flat);
}

std::vector<Patch> patches_of(const Pattern& cloth, const FoldMap& map) {
  const std::vector<CutNode>& nodes = cloth.tree.nodes;
  std::vector<Patch> patches;
  std::vector<std::size_t> patch_of_node(nodes.size());
  for (std::size_t i = 0; i < nodes.size(); ++i) {
    if (nodes[i].kind == NodeKind::cut) continue;
    patch_of_node[i] = patches.size();
    patches.push_back(patch_of(nodes[i], map));
  }
  for (const PlacedPanel& placed : cloth.panels)
    add_panel(patches[patch_of_node[leaf_at(cloth.tree, placed.folded)]], placed);
  return patches;
}

}  // namespace

int LaidCloth::patch_at(Length u, Length v) const {
  for (std::size_t i = 0; i < patches.size(); ++i)
    if (holds(patches[i].folded, u, v)) return static_cast<int>(i);
  return -1;
}

int LaidCloth::patch_at_flat(Length x, Length y) const {
  for (std::size_t i = 0; i < patches.size(); ++i)
    for (const Rect& flat : patches[i].flats)
      if (holds(flat, x, y)) return static_cast<int>(i);
  return -1;
}

LaidClothPtr lay_cloth(std::shared_ptr<const Job> job, std::shared_ptr<const Plan> plan, int pattern) {
  const Pattern& cloth = plan->patterns[ix(pattern)];
  const Fabric& fabric = job->rolls[ix(plan->roll)].fabric;
  const FoldMap map = fold_map(cloth.fold, fabric.width, cloth.length);
  std::vector<Patch> patches = patches_of(cloth, map);
  return std::make_shared<const LaidCloth>(
      LaidCloth{std::move(job), std::move(plan), pattern, map, std::move(patches)});
}

}  // namespace foldyard
