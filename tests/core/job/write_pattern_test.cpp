#include "job/write_pattern.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/support/fold_ways.h"
#include "core/support/lengths.h"

namespace foldyard {
namespace {

using test::kHalf;
using test::kOpenEndToEnd;
using test::mm;
using test::mm_rect;

Job job_of_cloth() {
  Job job;
  job.rolls = {{"blue", {mm(1500), mm(10), mm(1), Nap::none, ""}, mm(5000)}};
  job.panels = {{"seat", mm(450), mm(900), true, true, Worth::whole(3)}};
  job.losses = {mm(20), mm(10), mm(5), mm(200), mm(300)};
  return job;
}

CutNode node(Rect rect) {
  CutNode n;
  n.rect = rect;
  return n;
}

// Folded in half to 750: cut at 225 and 675, both lower parts taken.
CutTree half_tree() {
  CutTree tree;
  tree.nodes = {node(mm_rect(0, 750, 0, 900)), node(mm_rect(0, 225, 0, 900)), node(mm_rect(225, 750, 0, 900)),
                node(mm_rect(225, 675, 0, 900)), node(mm_rect(675, 750, 0, 900))};
  for (const int cut : {0, 2}) {
    CutNode& n = tree.nodes[static_cast<std::size_t>(cut)];
    n.kind = NodeKind::cut;
    n.at = mm(cut == 0 ? 225 : 675);
    n.first = cut + 1;
    n.second = cut + 2;
  }
  for (const int taken : {1, 3}) {
    tree.nodes[static_cast<std::size_t>(taken)].kind = NodeKind::take;
    tree.nodes[static_cast<std::size_t>(taken)].panel = 0;
  }
  return tree;
}

Pattern half_pattern(const Job& job) {
  const FoldPlan fold{kHalf, {mm(750)}, {1, 0}};
  return write_pattern(job, job.rolls[0], fold, mm(900), half_tree());
}

TEST(WritePattern, FindsEachPanelFoldedAndFlat) {
  const Pattern p = half_pattern(job_of_cloth());
  ASSERT_EQ(p.panels.size(), 3u);
  // On the fold: 750 ± 225. Through both plies: 750 − 675 … − 225 and mirrored.
  EXPECT_EQ(p.panels[0], (PlacedPanel{0, false, true, mm_rect(525, 975, 0, 900), mm_rect(0, 225, 0, 900)}));
  EXPECT_EQ(p.panels[1].flat, mm_rect(75, 525, 0, 900));
  EXPECT_EQ(p.panels[2].flat, mm_rect(975, 1425, 0, 900));
  EXPECT_FALSE(p.panels[1].on_fold);
  EXPECT_EQ(p.worth, Worth::whole(9));
}

TEST(WritePattern, ListsCutsInTheirOrder) {
  const Pattern p = half_pattern(job_of_cloth());
  const Span whole{Length(), mm(900)};
  EXPECT_EQ(p.cuts, (std::vector<Cut>{{Direction::along, mm(225), whole},
                                      {Direction::along, mm(675), whole}}));
  EXPECT_EQ(p.travel, mm(1800));
  EXPECT_EQ(p.plies, 2);
  EXPECT_EQ(p.folded_across, mm(750));
  EXPECT_EQ(p.folded_along, mm(900));
}

TEST(WritePattern, PartsRestsFromSelvedges) {
  // 65 usable beside each outer panel, and two selvedges of 10: no 200 wide.
  const Pattern p = half_pattern(job_of_cloth());
  ASSERT_EQ(p.rests.size(), 4u);
  const auto has = [&](RestKind kind, Rect flat) {
    return std::count(p.rests.begin(), p.rests.end(), Rest{kind, flat}) == 1;
  };
  EXPECT_TRUE(has(RestKind::selvedge, mm_rect(0, 10, 0, 900)));
  EXPECT_TRUE(has(RestKind::offcut, mm_rect(10, 75, 0, 900)));
  EXPECT_TRUE(has(RestKind::offcut, mm_rect(1425, 1490, 0, 900)));
  EXPECT_TRUE(has(RestKind::selvedge, mm_rect(1490, 1500, 0, 900)));
}

TEST(WritePattern, KeepsARestThatIsLargeEnough) {
  Job job = job_of_cloth();
  job.losses.keep_across = mm(65);
  job.losses.keep_along = mm(900);
  const Pattern p = half_pattern(job);
  EXPECT_EQ(std::count_if(p.rests.begin(), p.rests.end(),
                          [](const Rest& r) { return r.kind == RestKind::remnant; }),
            2);
}

TEST(WritePattern, CoversTheClothOnce) {
  const Pattern p = half_pattern(job_of_cloth());
  Area area;
  for (const PlacedPanel& panel : p.panels) area += panel.flat.area();
  for (const Rest& rest : p.rests) area += rest.flat.area();
  EXPECT_EQ(area, mm(1500) * mm(900));
}

TEST(WritePattern, FoldsEndToEndAtHalf) {
  const Job job = job_of_cloth();
  CutTree tree;
  tree.nodes = {node(mm_rect(0, 1500, 0, 450))};
  const FoldPlan fold{kOpenEndToEnd, {}, {0}};
  const Pattern p = write_pattern(job, job.rolls[0], fold, mm(900), tree);
  EXPECT_EQ(p.folded_along, mm(450));
  EXPECT_EQ(p.plies, 2);
  EXPECT_EQ(p.rests.size(), 3u);  // two selvedges and a remnant, each unfolded to 900
}

// One cut across at 900, then the tree as it was; nodes move up by one.
TEST(WithRestBeyond, CutsTheRestOffFirst) {
  const CutTree tree = half_tree(), longer = with_rest_beyond(tree, mm(960));
  ASSERT_EQ(longer.nodes.size(), tree.nodes.size() + 2);
  EXPECT_EQ(longer.nodes[0].rect, mm_rect(0, 750, 0, 960));
  EXPECT_EQ(longer.nodes[0].direction, Direction::across);
  EXPECT_EQ(longer.nodes[0].at, mm(900));
  EXPECT_EQ(longer.nodes[1].first, tree.nodes[0].first + 1);
  EXPECT_EQ(longer.nodes[static_cast<std::size_t>(longer.nodes[0].second)].rect, mm_rect(0, 750, 900, 960));
  EXPECT_EQ(with_rest_beyond(tree, mm(900)), tree);
}

}  // namespace
}  // namespace foldyard
