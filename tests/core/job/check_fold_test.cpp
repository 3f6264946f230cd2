#include "job/check_fold.h"

#include <gtest/gtest.h>

#include "core/support/fold_ways.h"
#include "core/support/lengths.h"

namespace foldyard {
namespace {

using test::kFanOf5;
using test::kFlaps;
using test::kHalf;
using test::kOffCentre;
using test::kPlainThirds;
using test::kQuarters;
using test::kThirds;
using test::mm;

std::string why(const FoldWay& way, const std::vector<int>& lines, int depth = 2000) {
  const Fabric fabric{mm(1500), mm(10), mm(1), Nap::none, ""};
  FoldPlan fold{way, {}, {}};
  for (const int line : lines) fold.lines.push_back(mm(line));
  return why_no_such_fold(fold, fabric, mm(depth), Unit::mm);
}

TEST(WhyNoSuchFold, IsEmptyWhereFoldsCanLieSo) {
  EXPECT_EQ(why({}, {}), "");
  EXPECT_EQ(why(kHalf, {750}), "");
  EXPECT_EQ(why(kOffCentre, {235}), "");
  EXPECT_EQ(why(kFlaps, {300, 1100}), "");
  EXPECT_EQ(why(kThirds, {400, 1000}), "");
  EXPECT_EQ(why(kFanOf5, {200, 550, 900, 1250}), "");
  EXPECT_EQ(why(kQuarters, {350, 750, 1150}), "");
}

TEST(WhyNoSuchFold, CountsTheLines) {
  EXPECT_EQ(why(kThirds, {500}), "2 fold lines are needed, and 1 given");
  EXPECT_EQ(why(kOffCentre, {}), "1 fold line is needed, and 0 given");
}

TEST(WhyNoSuchFold, HoldsLinesInsideTheWidthInOrder) {
  EXPECT_EQ(why(kOffCentre, {1500}), "the fold line at 1500 mm does not lie between 0 mm and 1500 mm");
  EXPECT_EQ(why(kOffCentre, {0}), "the fold line at 0 mm does not lie between 0 mm and 1500 mm");
  EXPECT_EQ(why(kThirds, {900, 500}), "the fold line at 500 mm does not lie between 900 mm and 1500 mm");
}

TEST(WhyNoSuchFold, KnowsTheOnePlaceOfPlainWays) {
  EXPECT_EQ(why(kHalf, {700}),
            "it has one place, with the folds at 750 mm");
  EXPECT_EQ(why({FoldKind::selvedge_to_selvedge, 2, false, false}, {700}),
            "it has one place, with the folds at 750 mm");
  EXPECT_EQ(why(kPlainThirds, {400, 1000}),
            "it has one place, with the folds at 500 mm, 1000 mm");
}

TEST(WhyNoSuchFold, RefusesFlapsThatOverlap) {
  EXPECT_EQ(why(kFlaps, {500, 1100}),
            "the flaps of 500 mm and 400 mm overlap on the 600 mm between the folds");
}

TEST(WhyNoSuchFold, RefusesUnevenFans) {
  EXPECT_EQ(why(kThirds, {600, 1000}), "an end leg of 600 mm is longer than the inner legs of 400 mm");
  EXPECT_EQ(why(kQuarters, {350, 800, 1150}), "the inner legs differ: 450 mm and 350 mm");
}

TEST(WhyNoSuchFold, KeepsTheFoldedClothOnTheTable) {
  EXPECT_EQ(why(kOffCentre, {235}, 1200),
            "folded so it is 1265 mm deep, and 1200 mm fit the table and can be reached");
}

}  // namespace
}  // namespace foldyard
