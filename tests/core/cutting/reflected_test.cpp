#include "cutting/reflected.h"

#include <gtest/gtest.h>

#include "cutting/tree_builder.h"

namespace foldyard {
namespace {

Rect rect(int x0, int x1, int y0, int y1) {
  return {{Length::units(x0), Length::units(x1)}, {Length::units(y0), Length::units(y1)}};
}

// 10 × 8, cut along at 3, then the right part across at 5; its lower part taken.
CutTree tree() {
  TreeBuilder builder;
  const int root = builder.add(rect(0, 10, 0, 8));
  const int right = builder.cut(root, Direction::along, Length::units(3)).second;
  builder.take(builder.cut(right, Direction::across, Length::units(5)).first, 0, false);
  return builder.take_tree();
}

TEST(Reflected, AcrossSwapsTheSidesOfCutsAlong) {
  const CutTree t = reflected_across(tree());
  EXPECT_EQ(t.nodes[0].at, Length::units(7));
  EXPECT_EQ(t.nodes[static_cast<std::size_t>(t.nodes[0].first)].rect, rect(0, 7, 0, 8));
  EXPECT_EQ(t.nodes[static_cast<std::size_t>(t.nodes[0].second)].rect, rect(7, 10, 0, 8));
  EXPECT_EQ(t.nodes[3].rect, rect(0, 7, 0, 5));
  EXPECT_EQ(t.nodes[3].kind, NodeKind::take);
}

TEST(Reflected, AlongSwapsTheSidesOfCutsAcross) {
  const CutTree t = reflected_along(tree());
  EXPECT_EQ(t.nodes[0].at, Length::units(3));
  EXPECT_EQ(t.nodes[2].at, Length::units(3));
  EXPECT_EQ(t.nodes[static_cast<std::size_t>(t.nodes[2].first)].rect, rect(3, 10, 0, 3));
  EXPECT_EQ(t.nodes[static_cast<std::size_t>(t.nodes[2].second)].rect, rect(3, 10, 3, 8));
  EXPECT_EQ(t.nodes[3].rect, rect(3, 10, 3, 8));
}

TEST(Reflected, TwiceIsAsBefore) {
  EXPECT_EQ(reflected_across(reflected_across(tree())), tree());
  EXPECT_EQ(reflected_along(reflected_along(tree())), tree());
}

}  // namespace
}  // namespace foldyard
