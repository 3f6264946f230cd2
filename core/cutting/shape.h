#pragma once

// Shape: a panel in one of the ways it may lie on the cloth.
//
// gain is what one such panel adds to the aim (see objective.h). A panel that
// may turn gives two shapes on cloth without nap; a square one gives one.

#include <vector>

#include "cloth/roll.h"
#include "goods/panel.h"

namespace foldyard {

struct Shape {
  Length across;
  Length along;
  int panel = 0;
  bool turned = false;
  bool on_fold = false;
  std::int64_t gain = 0;
};

// Every way each panel may lie on this cloth; gain is left 0.
std::vector<Shape> shapes_of(const std::vector<Panel>& panels, Nap nap);

}  // namespace foldyard
