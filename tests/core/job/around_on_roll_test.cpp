#include "job/around_on_roll.h"

#include <gtest/gtest.h>

#include "core/support/fold_ways.h"
#include "core/support/lengths.h"
#include "job/defaults.h"
#include "job/lost_panels.h"

namespace foldyard {
namespace {

using test::kHalf;
using test::kOpen;
using test::mm;

// Cloth of 1020 with selvedges of 10; 40 of allowance; carriers of 500 × 900.
class AroundOnARoll : public testing::Test {
 protected:
  AroundOnARoll() {
    job_.rolls = {{"cloth", {Length::mm(1020), Length::mm(10), Length::mm(1), Nap::none, "#808080"},
                   Length::mm(5000)}};
    job_.panels = {{"carrier", Length::mm(500), Length::mm(900), false, true, Worth::parts(9)}};
    job_.losses.allowance = Length::mm(40);
    cloth_ = {mm(0, 5000), Length::mm(20), {{mm(0, 1020), mm(940, 950)}}};
  }

  AimScale scale(const FoldWay& way) const { return aim_scale(job_, job_.rolls[0], way, Aim::most_worth); }
  TableSet tables(const AimScale& scale) const {
    return TableSet(scale.shapes, scale.objective, {Length::mm(1000), Length::mm(2000), Length::mm(5)});
  }

  Job job_ = default_job();
  FlawedCloth cloth_;
};

TEST(AroundOnRoll, CutsOnlyOpenClothAndClothFoldedDouble) {
  for (const FoldWay& way : all_ways(4))
    EXPECT_EQ(AroundOnRoll::can_cut(way), way == kOpen || way == kHalf) << way_key(way);
}

// The example of the header, in mm: the pattern begins at 20, the seam 920
// behind that and is 10 long; carriers on 0 … 900 and 930 … 1830.
TEST_F(AroundOnARoll, CutsOneLengthOverASeam) {
  const AimScale aim = scale(kOpen);
  TableSet set = tables(aim);
  const AroundOnRoll around({job_, job_.rolls[0], kOpen, aim, set, cloth_});
  const std::vector<Length> sizes = around.sizes(Length());
  EXPECT_NE(std::find(sizes.begin(), sizes.end(), Length::mm(930 + 900 + 40)), sizes.end());
  EXPECT_TRUE(std::is_sorted(sizes.begin(), sizes.end()));
  EXPECT_EQ(around.best(Length(), Length::mm(1870)).gain, 4 * 9);
  EXPECT_EQ(around.best(Length(), Length::mm(1869)).gain, 2 * 9);
  EXPECT_GE(around.most_gain(Length::mm(1870)), 4 * 9);
  const Pattern pattern = around.pattern(mm(0, 1870));
  EXPECT_EQ(pattern.worth, Worth::parts(4 * 9));
  for (const PlacedPanel& placed : pattern.panels)
    EXPECT_FALSE(placed.flat.along.overlaps(mm(920, 930)));
}

TEST_F(AroundOnARoll, CountsFlawsOfEitherPly) {
  job_.panels[0].across = Length::mm(250);
  // u from the fold at 510: 110 … 130 of the left ply, 300 … 310 of the right.
  cloth_.flaws = {{mm(380, 400), mm(200, 210)}, {mm(810, 820), mm(200, 210)}};
  const AimScale aim = scale(kHalf);
  TableSet set = tables(aim);
  const AroundOnRoll around({job_, job_.rolls[0], kHalf, aim, set, cloth_});
  EXPECT_EQ(around.best(Length(), Length::mm(940)).gain, 0);  // no 250 clear of both
  cloth_.flaws.pop_back();
  // From 130 on there are 370: one of 250 from each ply, at its far end.
  EXPECT_EQ(around.best(Length(), Length::mm(940)).gain, 2 * 9);
  EXPECT_EQ(around.pattern(mm(0, 940)).panels.size(), 2u);
}

TEST_F(AroundOnARoll, CutsNothingWhereNoPanelFitsTheWidthOrTheTable) {
  for (const auto& [across, along] : {std::pair{1100, 900}, {500, 2100}, {1100, 2100}}) {
    job_.panels[0].across = Length::mm(across);
    job_.panels[0].along = Length::mm(along);
    const AimScale aim = scale(kOpen);
    TableSet set = tables(aim);
    const AroundOnRoll around({job_, job_.rolls[0], kOpen, aim, set, cloth_});
    EXPECT_EQ(around.most_gain(Length::mm(1870)), 0) << across << " x " << along;
    EXPECT_EQ(around.best(Length(), Length::mm(1870)).gain, 0) << across << " x " << along;
    EXPECT_EQ(around.sizes(Length()).empty(), along > 2000) << across << " x " << along;
  }
}

}  // namespace
}  // namespace foldyard
