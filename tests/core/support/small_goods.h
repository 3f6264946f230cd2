#pragma once

// Small random goods for the checks by enumeration: panels of 2 to 9 units.

#include <vector>

#include "core/support/dice.h"
#include "core/support/slow_rectangle.h"
#include "cutting/shape.h"
#include "goods/panel.h"

namespace foldyard::test {

inline std::vector<Panel> small_panels(Dice& dice, int most_panels, int widest, int tallest) {
  std::vector<Panel> panels;
  for (int n = dice.from_to(1, most_panels); n > 0; --n) {
    const int across = dice.from_to(2, widest), along = dice.from_to(2, tallest);
    const int worth = dice.coin() ? across * along : dice.from_to(1, 40);
    panels.push_back({"panel " + std::to_string(n), Length::units(across), Length::units(along),
                      dice.coin(), dice.from_to(0, 3) > 0, Worth::parts(worth)});
  }
  return panels;
}

// Both ways a panel may lie, written out by hand for the slow side.
inline std::vector<SlowShape> slow_shapes(const std::vector<Panel>& panels, bool one_way) {
  std::vector<SlowShape> shapes;
  for (const Panel& p : panels) {
    const int across = static_cast<int>(p.across.units()), along = static_cast<int>(p.along.units());
    shapes.push_back({across, along, p.on_fold, p.worth.parts()});
    if (p.may_turn && !one_way) shapes.push_back({along, across, p.on_fold, p.worth.parts()});
  }
  return shapes;
}

// Of panel 0, which may be cut on the fold.
inline Shape shape(std::int64_t across, std::int64_t along, std::int64_t gain) {
  return {Length::units(across), Length::units(along), 0, false, true, gain};
}

// The same for the search.
inline std::vector<Shape> shapes_with_worth(const std::vector<Panel>& panels, Nap nap) {
  Fabric fabric;
  fabric.nap = nap;
  std::vector<Shape> shapes = shapes_of(panels, fabric);
  for (Shape& s : shapes) s.gain = panels[static_cast<std::size_t>(s.panel)].worth.parts();
  return shapes;
}

}  // namespace foldyard::test
