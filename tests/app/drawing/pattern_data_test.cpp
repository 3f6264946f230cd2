#include "drawing/pattern_data.h"

#include <gtest/gtest.h>

#include "app/drawing/sample_plans.h"

namespace foldyard {
namespace {

TEST(PatternData, ZonesCountThePlies) {
  const samples::Sample sample = samples::both_edges_in();
  const auto zones = ply_zones(pattern_data(sample.job, sample.plan(), 0).map);
  // Flaps of 290 and 390 mm on a middle of 720: single between 290 and 330.
  ASSERT_EQ(zones.size(), 3u);
  EXPECT_EQ(zones[1].across, (Span{Length::mm(290), Length::mm(330)}));
  EXPECT_EQ(zones[0].plies, 2);
  EXPECT_EQ(zones[1].plies, 1);
}

TEST(PatternData, EndToEndDoublesThePlies) {
  const samples::Sample sample = samples::end_to_end();
  const PatternData data = pattern_data(sample.job, sample.plan(), 0);
  EXPECT_EQ(ply_zones(data.map).front().plies, 6);
  EXPECT_EQ(near_end_name(data.map), "fold edge");
}

TEST(PatternData, ATakenRectangleTellsItsPanels) {
  const samples::Sample sample = samples::carriers();
  std::vector<std::pair<int, int>> taken;
  for (const CutNode& node : sample.plan().patterns[0].tree.nodes)
    if (node.kind == NodeKind::take) {
      const Taken each = taken_from(sample.plan().patterns[0], node);
      taken.push_back({each.panels, each.on_fold});
    }
  // 225 mm at the fold: one on the fold; the next 450 mm: two.
  EXPECT_EQ(taken, (std::vector<std::pair<int, int>>{{1, 1}, {2, 0}}));
  EXPECT_EQ(left_edge_name(pattern_data(sample.job, sample.plan(), 0).map), "fold edge");
}

// The flaps of both edges in lie on top, face down; fans of odd legs end face up.
TEST(PatternData, TheTopPlyShowsAFace) {
  const auto top = [](const samples::Sample& sample) {
    return top_face_name(pattern_data(sample.job, sample.plan(), 0).map).toStdString();
  };
  EXPECT_EQ(top(samples::open_long_names()), "face");
  EXPECT_EQ(top(samples::carriers()), "back");
  EXPECT_EQ(top(samples::fan_of_five()), "face");
}

}  // namespace
}  // namespace foldyard
