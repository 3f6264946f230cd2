#include "cutting/tree_builder.h"

#include <gtest/gtest.h>

#include "core/support/lengths.h"
#include "cutting/table_set.h"

namespace foldyard {
namespace {

using test::u;
using test::u_rect;

const std::vector<Shape> kOneShape{{u(4), u(3), 7, true, true, 1}};

TEST(TreeBuilder, CutsANodeInTwo) {
  TreeBuilder builder(&kOneShape);
  EXPECT_EQ(builder.add(u_rect(0, 10, 0, 6)), 0);
  EXPECT_EQ(builder.cut(0, Direction::along, u(4)), std::make_pair(1, 2));
  EXPECT_EQ(builder.cut(2, Direction::across, u(5)), std::make_pair(3, 4));
  const CutTree tree = builder.take_tree();
  EXPECT_EQ(tree.nodes[0].kind, NodeKind::cut);
  EXPECT_EQ(tree.nodes[0].at, u(4));
  EXPECT_EQ(tree.nodes[1].rect, u_rect(0, 4, 0, 6));
  EXPECT_EQ(tree.nodes[1].kind, NodeKind::leave);
  EXPECT_EQ(tree.nodes[3].rect, u_rect(4, 10, 0, 5));
  EXPECT_EQ(tree.nodes[4].rect, u_rect(4, 10, 5, 6));
}

class Filled : public testing::Test {
 protected:
  TableSet tables_{kOneShape, {true, 1000, 1}, {u(16), u(6), u(1)}};

  CutTree filled(TableKind kind, int across, int along, bool flip) {
    const CutTable& table = tables_.table(kind);
    TreeBuilder builder(&kOneShape);
    builder.add(u_rect(100, 100 + across, 0, along));
    builder.fill(0, table, table.across().index_of(u(across)), table.along().index_of(u(along)),
                 flip);
    return builder.take_tree();
  }
};

TEST_F(Filled, TakesAPanelAsItsShapeSays) {
  const CutTree tree = filled({}, 4, 3, false);
  ASSERT_EQ(tree.nodes.size(), 1u);
  EXPECT_EQ(tree.nodes[0].kind, NodeKind::take);
  EXPECT_EQ(tree.nodes[0].panel, 7);
  EXPECT_TRUE(tree.nodes[0].turned);
}

TEST_F(Filled, BeginsAtTheFoldEdge) {
  // 2 on the fold, then 4: cut at 2 from the left rim, or flipped from the right.
  const CutTree tree = filled({true, false, 1}, 6, 3, false);
  ASSERT_EQ(tree.nodes.size(), 3u);
  EXPECT_EQ(tree.nodes[0].at, u(102));
  EXPECT_EQ(tree.nodes[1].kind, NodeKind::take);
  EXPECT_EQ(tree.nodes[2].kind, NodeKind::take);
  EXPECT_EQ(filled({true, false, 1}, 6, 3, true).nodes[0].at, u(104));
}

// Every taken rectangle is a panel; children part their node.
TEST_F(Filled, PartsEveryNodeWhole) {
  const CutTree tree = filled({}, 16, 6, false);
  int taken = 0;
  for (const CutNode& node : tree.nodes) {
    taken += node.kind == NodeKind::take;
    if (node.kind == NodeKind::take) {
      EXPECT_EQ(node.rect.area(), u(4) * u(3));
    }
    if (node.kind != NodeKind::cut) continue;
    const Rect& low = tree.nodes[static_cast<std::size_t>(node.first)].rect;
    const Rect& high = tree.nodes[static_cast<std::size_t>(node.second)].rect;
    EXPECT_EQ(low.area() + high.area(), node.rect.area());
  }
  EXPECT_EQ(taken, 8);  // 4 across, 2 along
}

}  // namespace
}  // namespace foldyard
