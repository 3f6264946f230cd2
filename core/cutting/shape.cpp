#include "cutting/shape.h"

namespace foldyard {

std::vector<Shape> shapes_of(const std::vector<Panel>& panels, Nap nap) {
  std::vector<Shape> shapes;
  for (int i = 0; i < static_cast<int>(panels.size()); ++i) {
    const Panel& p = panels[i];
    shapes.push_back({p.across, p.along, i, false, p.on_fold, 0});
    if (p.may_turn && nap == Nap::none && p.across != p.along)
      shapes.push_back({p.along, p.across, i, true, p.on_fold, 0});
  }
  return shapes;
}

}  // namespace foldyard
