#include "cutting/reflected.h"

#include <gtest/gtest.h>

#include "core/support/lengths.h"
#include "cutting/tree_builder.h"

namespace foldyard {
namespace {

using test::u_rect;

// 10 × 8, cut along at 3, then the right part across at 5; its lower part taken.
CutTree tree() {
  TreeBuilder builder;
  const int root = builder.add(u_rect(0, 10, 0, 8));
  const int right = builder.cut(root, Direction::along, Length::units(3)).second;
  builder.take(builder.cut(right, Direction::across, Length::units(5)).first, 0, false);
  return builder.take_tree();
}

TEST(Reflected, AcrossSwapsTheSidesOfCutsAlong) {
  const CutTree t = reflected_across(tree());
  EXPECT_EQ(t.nodes[0].at, Length::units(7));
  EXPECT_EQ(t.nodes[static_cast<std::size_t>(t.nodes[0].first)].rect, u_rect(0, 7, 0, 8));
  EXPECT_EQ(t.nodes[static_cast<std::size_t>(t.nodes[0].second)].rect, u_rect(7, 10, 0, 8));
  EXPECT_EQ(t.nodes[3].rect, u_rect(0, 7, 0, 5));
  EXPECT_EQ(t.nodes[3].kind, NodeKind::take);
}

TEST(Reflected, AlongSwapsTheSidesOfCutsAcross) {
  const CutTree t = reflected_along(tree());
  EXPECT_EQ(t.nodes[0].at, Length::units(3));
  EXPECT_EQ(t.nodes[2].at, Length::units(3));
  EXPECT_EQ(t.nodes[static_cast<std::size_t>(t.nodes[2].first)].rect, u_rect(3, 10, 0, 3));
  EXPECT_EQ(t.nodes[static_cast<std::size_t>(t.nodes[2].second)].rect, u_rect(3, 10, 3, 8));
  EXPECT_EQ(t.nodes[3].rect, u_rect(3, 10, 3, 8));
}

TEST(Reflected, TwiceIsAsBefore) {
  EXPECT_EQ(reflected_across(reflected_across(tree())), tree());
  EXPECT_EQ(reflected_along(reflected_along(tree())), tree());
}

}  // namespace
}  // namespace foldyard
