#pragma once

// Shape: a panel in one of the ways it may lie on the cloth, at the size that
// it is cut.
//
// gain is what one such panel adds to the aim (see objective.h). A panel that
// may turn gives two shapes on cloth without nap; one that measures the same
// both ways gives one.
//
// A panel lies sideways, its along size across the roll, where it is turned;
// on railroaded cloth one that keeps to the pattern lies so where it is not
// turned. Then each size is made larger by what the cloth shrinks in that
// direction.
//
// Example: 450 × 970 mm on cloth that shrinks 3 % along: cut 450 × 1000; turned:
// 970 across, 463.92 along.

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

struct SizeOnCloth {
  Length across;
  Length along;
  bool operator==(const SizeOnCloth&) const = default;
};

// Whether its along size lies across the roll.
inline bool lies_sideways(const Panel& panel, const Fabric& fabric, bool turned) {
  return turned != (fabric.railroaded && panel.grain == Grain::pattern);
}

// What a panel measures on the cloth, before it shrinks. (What it is cut for, seams
// and all, is goods/cut_size.h.)
SizeOnCloth size_on_cloth(const Panel& panel, const Fabric& fabric, bool turned);

// Every way each panel may lie on this cloth; gain is left 0.
std::vector<Shape> shapes_of(const std::vector<Panel>& panels, const Fabric& fabric);

}  // namespace foldyard
