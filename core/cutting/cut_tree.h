#pragma once

// CutTree: the cuts through one folded length, in order.
//
// All places are on the folded cloth: u across from 0, v along from 0. A node
// is a rectangle that is cut edge to edge in two, taken as panels, or left.
// Direction::along runs in the roll's direction, at u = at; Direction::across
// runs from selvedge to selvedge, at v = at. `first` is the part below `at`,
// `second` the part above; both are indices into nodes. The root is node 0 and
// covers the whole folded length, selvedges included. Cuts are made in
// preorder: a node, then all of its first part, then all of its second.
//
// A taken rectangle gives, from every ply it covers wholly, one panel of its
// own size; where plies are joined by a fold edge on its rim, one panel of
// double size. `panel` names which panel, `turned` whether it lies turned.

#include <vector>

#include "measure/rect.h"

namespace foldyard {

enum class Direction { along, across };
enum class NodeKind { cut, take, leave };

struct CutNode {
  Rect rect;
  NodeKind kind = NodeKind::leave;
  Direction direction = Direction::along;  // kind cut
  Length at;                               // kind cut
  int first = -1;
  int second = -1;
  int panel = -1;  // kind take: index into Job::panels
  bool turned = false;
  bool operator==(const CutNode&) const = default;
};

struct CutTree {
  std::vector<CutNode> nodes;
  bool operator==(const CutTree&) const = default;
};

}  // namespace foldyard
