#include "cutting/tree_builder.h"

namespace foldyard {

int TreeBuilder::add(Rect rect) {
  CutNode node;
  node.rect = rect;
  tree_.nodes.push_back(node);
  return static_cast<int>(tree_.nodes.size()) - 1;
}

std::pair<int, int> TreeBuilder::cut(int node, Direction direction, Length at) {
  Rect low = tree_.nodes[node].rect, high = low;
  (direction == Direction::along ? low.across.to : low.along.to) = at;
  (direction == Direction::along ? high.across.from : high.along.from) = at;
  const int first = add(low), second = add(high);
  CutNode& n = tree_.nodes[node];
  n.kind = NodeKind::cut;
  n.direction = direction;
  n.at = at;
  n.first = first;
  n.second = second;
  return {first, second};
}

// Cuts so that the part at the origin side (left or lower; right when flipped)
// is `keep` wide. Gives that part; the other goes to *other.
int TreeBuilder::cut_keeping(int node, Direction direction, Length keep, bool flip, int* other) {
  const Rect& rect = tree_.nodes[node].rect;
  const bool from_far = flip && direction == Direction::along;
  const Length at = direction == Direction::across ? rect.along.from + keep
                    : from_far                     ? rect.across.to - keep
                                                   : rect.across.from + keep;
  const auto [low, high] = cut(node, direction, at);
  if (other) *other = from_far ? low : high;
  return from_far ? high : low;
}

void TreeBuilder::take(int node, int panel, bool turned) {
  CutNode& n = tree_.nodes[node];
  n.kind = NodeKind::take;
  n.panel = panel;
  n.turned = turned;
}

void TreeBuilder::fill(int node, const CutTable& table, int x, int y, bool flip) {
  const Choice choice = table.choice(x, y);
  switch (choice.move) {
    case Move::leave: return;
    case Move::take: {
      const Shape& shape = (*shapes_)[choice.index];
      return take(node, shape.panel, shape.turned);
    }
    case Move::trim_across:
    case Move::trim_along: return trim(node, table, choice.move, x, y, flip);
    default: return part(node, table, choice, x, y, flip);
  }
}

void TreeBuilder::trim(int node, const CutTable& table, Move move, int x, int y, bool flip) {
  const bool across = move == Move::trim_across;
  const int place = across ? table.best_place_across(x - 1, y) : table.best_place_along(x, y - 1);
  const Length keep = across ? table.across()[place] : table.along()[place];
  const int kept = cut_keeping(node, across ? Direction::along : Direction::across, keep, flip, nullptr);
  across ? fill(kept, table, place, y, flip) : fill(kept, table, x, place, flip);
}

void TreeBuilder::fill_remainder(int node, const CutTable& table, const Remainder& rest, bool flip) {
  if (rest.across < 0) return;
  const Rect rect = tree_.nodes[node].rect;
  const Length width = table.across()[rest.across], height = table.along()[rest.along];
  const bool odd_width = rect.across.size() != width;
  const bool odd_height = rect.along.size() != height;
  int kept = node;
  const auto trim_width = [&] {
    if (odd_width) kept = cut_keeping(kept, Direction::along, width, flip, nullptr);
  };
  if (!rest.height_first) trim_width();
  if (odd_height) kept = cut_keeping(kept, Direction::across, height, flip, nullptr);
  if (rest.height_first) trim_width();
  fill(kept, table, rest.across, rest.along, flip);
}

void TreeBuilder::part(int node, const CutTable& table, const Choice& choice, int x, int y, bool flip) {
  const bool across = choice.move == Move::part_across;
  const Length whole = across ? table.across()[x] : table.along()[y];
  const Length low = across ? table.across()[choice.index] : table.along()[choice.index];
  int upper = -1;
  const int lower = cut_keeping(node, across ? Direction::along : Direction::across, low, flip, &upper);
  if (across) {
    fill(lower, table, choice.index, y, flip);
    fill_remainder(upper, table.beyond(), table.beyond().remainder_across(whole - low, y), flip);
  } else {
    fill(lower, table, x, choice.index, flip);
    fill_remainder(upper, table.above(), table.above().remainder_along(x, whole - low), flip);
  }
}

}  // namespace foldyard
