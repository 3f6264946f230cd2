#pragma once

// The section through folded cloth as a ribbon that runs the way the cloth
// does: level along each ply, round the bend at each fold edge.
//
// Coordinates are millimetres of paper, x to the right, y downwards, the table
// at y = 0. face and back are the two sides of the ribbon from the left
// selvedge to the right one. A bend stands out by half the distance of the two
// plies it joins, so that bends at one fold edge nest and never cross.
//
// Example: selvedge to selvedge, 750 mm at 1 : 10, pitch 4: the ribbon begins
// at the right on level 1, goes left to x = 0, turns down and comes back.

#include <QPolygonF>
#include <vector>

#include "drawing/scale.h"
#include "fold/fold_map.h"

namespace foldyard {

struct RibbonShape {
  double pitch = 3.6;      // from one level to the next
  double thickness = 1.5;  // of the ribbon
};

struct Ribbon {
  QPolygonF face;
  QPolygonF back;
};

// How high each leg lies: a leg rests on the highest one it covers of those
// below it, so that two flaps that do not overlap lie equally high.
// Example: both edges in, levels {1, 0, 2}: {1, 0, 1}.
std::vector<int> settled_levels(const AxisMap& axis);
int highest_level(const AxisMap& axis);
double level_height(const RibbonShape& shape, int level);  // of a ply's middle, above the table
Ribbon ribbon_of(const AxisMap& axis, const Scale& scale, const RibbonShape& shape);
// How far bends stand out to the left and to the right of the cloth.
double ribbon_bulge(const AxisMap& axis, const RibbonShape& shape);

}  // namespace foldyard
