#include "cutting/laid_strips.h"

#include <gtest/gtest.h>

#include "core/support/lengths.h"

namespace foldyard {
namespace {

using test::cm;

LaidStrips::Fill taking(int panel) {
  return [=](TreeBuilder& builder, int node, bool flip) { builder.take(node, panel, flip); };
}

// What lies where, from the near rim: the panel that is taken, -1 where it is left.
std::vector<std::pair<Span, int>> pieces(const CutTree& tree) {
  std::vector<std::pair<Span, int>> found;
  for (const CutNode& node : tree.nodes)
    if (node.kind != NodeKind::cut) found.emplace_back(node.rect.across, node.kind == NodeKind::take ? node.panel : -1);
  std::sort(found.begin(), found.end(), [](const auto& a, const auto& b) { return a.first.from < b.first.from; });
  return found;
}

LaidStrips two_strips() {
  LaidStrips strips(cm(100));
  strips.add(Length(), cm(40), false, taking(0));
  strips.add(cm(100), cm(30), true, taking(1));
  return strips;
}

TEST(LaidStrips, LeavesWhatLiesBetween) {
  const CutTree tree = two_strips().tree(cm(50));
  EXPECT_EQ(pieces(tree), (std::vector<std::pair<Span, int>>{
                              {{Length(), cm(40)}, 0}, {{cm(40), cm(70)}, -1}, {{cm(70), cm(100)}, 1}}));
  EXPECT_EQ(tree.nodes[0].rect.along, (Span{Length(), cm(50)}));
}

TEST(LaidStrips, LiesMirrored) {
  LaidStrips strips = two_strips();
  strips.mirror();
  EXPECT_EQ(pieces(strips.tree(cm(50))), (std::vector<std::pair<Span, int>>{
                                             {{Length(), cm(30)}, 1}, {{cm(30), cm(60)}, -1}, {{cm(60), cm(100)}, 0}}));
}

// A strip from the far rim is flipped, one from the near rim is when all lies mirrored.
TEST(LaidStrips, TellsWhichStripIsFlipped) {
  for (const bool mirrored : {false, true}) {
    LaidStrips strips = two_strips();
    if (mirrored) strips.mirror();
    for (const CutNode& node : strips.tree(cm(50)).nodes)
      if (node.kind == NodeKind::take) { EXPECT_EQ(node.turned, (node.panel == 1) != mirrored) << node.panel; }
  }
}

TEST(LaidStrips, AreOneNodeWhereOneTakesAll) {
  LaidStrips strips(cm(100));
  strips.add(Length(), cm(100), false, taking(2));
  EXPECT_EQ(strips.tree(cm(50)).nodes.size(), 1u);
}

}  // namespace
}  // namespace foldyard
