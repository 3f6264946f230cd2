#pragma once

// The turnings of a panel as it is cut: how far inside each of its four edges
// the line of stitching, or of the last fold of a hem, lies.
//
// left and right are the edges of its first size (goods/cut_size.h), near and
// far those of its second: near is the bottom of a two-panel or wrap-round bag,
// right the edge of a cushion cover's back that is turned in. A depth of 0: the
// edge has no turning.
//
// Property: cut_size less the turnings is what lies between them: of a bag w + d
// by the cloth between its open edges, of a front w × h.
//
// Example: a two-panel bag, seams 12 mm, hem 40 mm: 12 mm left, right and near,
// 40 mm far. In a lining the far edge is a seam of 12 mm, too.
// Source: the table in goods/cut_size.h.

#include "goods/sewn.h"

namespace foldyard {

struct Turning {
  Length depth;
  bool is_seam = true;  // else a hem
  bool operator==(const Turning&) const = default;
};

struct Turnings {
  Turning left, right, near, far;
  bool operator==(const Turnings&) const = default;
};

Turnings turnings_of(const Sewn& sewn);

// The same panel turned by a quarter: what was left and right is near and far.
Turnings turned(const Turnings& turnings);

}  // namespace foldyard
