#include "cutting/shape.h"

namespace foldyard {

SizeOnCloth size_on_cloth(const Panel& panel, const Fabric& fabric, bool turned) {
  const bool sideways = lies_sideways(panel, fabric, turned);
  return {before_shrinking(sideways ? panel.along : panel.across, fabric.shrinkage.across),
          before_shrinking(sideways ? panel.across : panel.along, fabric.shrinkage.along)};
}

std::vector<Shape> shapes_of(const std::vector<Panel>& panels, const Fabric& fabric) {
  std::vector<Shape> shapes;
  for (int i = 0; i < static_cast<int>(panels.size()); ++i) {
    const Panel& p = panels[i];
    const bool may_turn = p.may_turn && fabric.nap == Nap::none && p.across != p.along;
    for (bool turned : {false, true}) {
      if (turned && !may_turn) continue;
      const SizeOnCloth size = size_on_cloth(p, fabric, turned);
      shapes.push_back({size.across, size.along, i, turned, p.on_fold, 0});
    }
  }
  return shapes;
}

}  // namespace foldyard
