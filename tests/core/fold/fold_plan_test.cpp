#include "fold/fold_plan.h"

#include <gtest/gtest.h>

#include <set>

namespace foldyard {
namespace {

struct WayRow {
  FoldWay way;
  const char* key;
  const char* name;
  int folds;
  int plies;
};

const WayRow kWays[] = {
    {{FoldKind::open, 1, false, true}, "open", "open", 0, 1},
    {{FoldKind::selvedge_to_selvedge, 2, false, true}, "selvedge-to-selvedge",
     "selvedge to selvedge", 1, 2},
    {{FoldKind::off_centre, 2, false, false}, "off-centre", "off-centre", 1, 2},
    {{FoldKind::both_edges_in, 3, false, true}, "both-edges-in-plain",
     "both edges in, edges meeting", 2, 2},
    {{FoldKind::both_edges_in, 3, false, false}, "both-edges-in", "both edges in", 2, 2},
    {{FoldKind::fan, 3, false, true}, "thirds-plain", "in thirds, equal legs", 2, 3},
    {{FoldKind::fan, 3, false, false}, "thirds", "in thirds", 2, 3},
    {{FoldKind::quarters, 4, false, true}, "quarters-plain", "in quarters, equal legs", 2, 4},
    {{FoldKind::quarters, 4, false, false}, "quarters", "in quarters", 2, 4},
    {{FoldKind::fan, 5, false, true}, "fan-5-plain", "fan of 5, equal legs", 4, 5},
    {{FoldKind::fan, 5, false, false}, "fan-5", "fan of 5", 4, 5},
};

TEST(FoldPlan, NamesEveryWayInTheOrderOfTheComparison) {
  const std::vector<FoldWay> ways = all_ways(5);
  ASSERT_EQ(ways.size(), 2 * std::size(kWays));
  for (std::size_t i = 0; i < std::size(kWays); ++i) {
    const WayRow& row = kWays[i];
    EXPECT_EQ(ways[i], row.way) << row.key;
    EXPECT_EQ(way_key(row.way), row.key);
    EXPECT_EQ(way_name(row.way), row.name);
    EXPECT_EQ(folds_made(row.way), row.folds) << row.key;
    EXPECT_EQ(most_plies(row.way), row.plies) << row.key;
  }
}

TEST(FoldPlan, RepeatsTheListEndToEndWithOneFoldMoreAndTwiceThePlies) {
  const std::vector<FoldWay> ways = all_ways(5);
  const std::size_t half = ways.size() / 2;
  for (std::size_t i = 0; i < half; ++i) {
    FoldWay doubled = ways[i];
    doubled.end_to_end = true;
    EXPECT_EQ(ways[half + i], doubled);
    EXPECT_EQ(way_key(doubled), way_key(ways[i]) + "+end-to-end");
    EXPECT_EQ(way_name(doubled), way_name(ways[i]) + ", end to end");
    EXPECT_EQ(folds_made(doubled), folds_made(ways[i]) + 1);
    EXPECT_EQ(most_plies(doubled), most_plies(ways[i]) * 2);
  }
}

TEST(FoldPlan, OffersFansUpToTheLongestAndNeverOneOfFour) {
  // open, selvedge to selvedge, off-centre, 2 both edges in, 2 quarters = 7,
  // and 2 for each fan; all again end to end.
  EXPECT_EQ(all_ways(2).size(), 14u);
  EXPECT_EQ(all_ways(3).size(), 18u);
  EXPECT_EQ(all_ways(4).size(), 18u);
  EXPECT_EQ(all_ways(5).size(), 22u);
  EXPECT_EQ(all_ways(8).size(), 34u);
  for (const FoldWay& way : all_ways(8)) {
    EXPECT_FALSE(way.kind == FoldKind::fan && way.legs == 4);
  }
}

TEST(FoldPlan, ReadsBackTheKeyOfEveryWay) {
  std::set<std::string> keys;
  for (const FoldWay& way : all_ways(kLongestFan)) {
    FoldWay read;
    EXPECT_TRUE(way_from_key(way_key(way), read)) << way_key(way);
    EXPECT_EQ(read, way);
    EXPECT_TRUE(keys.insert(way_key(way)).second) << way_key(way) << " stands twice";
  }
}

class RefusedKey : public testing::TestWithParam<const char*> {};

TEST_P(RefusedKey, IsRefusedAndLeavesTheWayAlone) {
  const FoldWay before{FoldKind::quarters, 4, true, false};
  FoldWay way = before;
  EXPECT_FALSE(way_from_key(GetParam(), way));
  EXPECT_EQ(way, before);
}

INSTANTIATE_TEST_SUITE_P(
    FoldPlan, RefusedKey,
    testing::Values("", "Open", "open ", "halves", "open-plain", "selvedge-to-selvedge-plain",
                    "off-centre-plain", "fan", "fan-", "fan-2", "fan-3", "fan-4", "fan-4-plain",
                    "fan-05", "fan-+5", "fan--5", "fan-5x", "fan-100", "fan-99999999999",
                    "+end-to-end", "-plain", "thirds+end-to-end-plain", "thirds-plain-plain",
                    "thirds+end-to-end+end-to-end"));

TEST(FoldPlan, HasALongestFan) {
  FoldWay way;
  EXPECT_TRUE(way_from_key("fan-99", way));
  EXPECT_EQ(way.legs, kLongestFan);
  EXPECT_FALSE(way_from_key("fan-100", way));
}

}  // namespace
}  // namespace foldyard
