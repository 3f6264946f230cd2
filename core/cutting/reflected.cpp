#include "cutting/reflected.h"

#include <utility>

namespace foldyard {

namespace {

void reflect(CutTree& tree, Span Rect::*axis, Direction parted_by) {
  const Span whole = tree.nodes.front().rect.*axis;
  const auto place = [&](Length at) { return whole.from + (whole.to - at); };
  for (CutNode& node : tree.nodes) {
    Span& span = node.rect.*axis;
    span = {place(span.to), place(span.from)};
    if (node.kind != NodeKind::cut || node.direction != parted_by) continue;
    node.at = place(node.at);
    std::swap(node.first, node.second);
  }
}

}  // namespace

CutTree reflected_across(CutTree tree) {
  reflect(tree, &Rect::across, Direction::along);
  return tree;
}

CutTree reflected_along(CutTree tree) {
  reflect(tree, &Rect::along, Direction::across);
  return tree;
}

}  // namespace foldyard
