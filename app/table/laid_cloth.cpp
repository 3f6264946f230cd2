#include "table/laid_cloth.h"

namespace foldyard {
namespace {

bool holds(const Rect& rect, Length across, Length along) {
  return rect.across.from <= across && across < rect.across.to && rect.along.from <= along &&
         along < rect.along.to;
}

void add_panels(Patch& patch, const Pattern& pattern) {
  for (const PlacedPanel& placed : pattern.panels) {
    if (!patch.folded.covers(placed.folded)) continue;
    ++patch.copies;
    patch.on_fold += placed.on_fold ? 1 : 0;
    patch.flats.push_back(placed.flat);
  }
}

void add_rest(Patch& patch, const FoldMap& map) {
  for (const Span across : map.across.places_of(patch.folded.across))
    for (const Span along : map.along.places_of(patch.folded.along)) patch.flats.push_back({across, along});
}

Patch patch_of(const CutNode& node, const Pattern& pattern, const FoldMap& map) {
  Patch patch;
  patch.folded = node.rect;
  if (node.kind == NodeKind::take) {
    patch.panel = node.panel;
    patch.turned = node.turned;
    add_panels(patch, pattern);
  } else {
    add_rest(patch, map);
  }
  return patch;
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
  const Pattern& cloth = plan->patterns[static_cast<std::size_t>(pattern)];
  const Fabric& fabric = job->rolls[static_cast<std::size_t>(plan->roll)].fabric;
  const FoldMap map = fold_map(cloth.fold, fabric.width, cloth.length);
  std::vector<Patch> patches;
  for (const CutNode& node : cloth.tree.nodes)
    if (node.kind != NodeKind::cut) patches.push_back(patch_of(node, cloth, map));
  return std::make_shared<const LaidCloth>(
      LaidCloth{std::move(job), std::move(plan), pattern, map, std::move(patches)});
}

}  // namespace foldyard
