#include "cloth/roll_estimate.h"

#include <gtest/gtest.h>

#include "core/support/measured.h"

namespace foldyard {
namespace {

// 31.1 to 42.1 m by the example of length_estimate.h.
Roll measured_roll() {
  Roll roll;
  roll.fabric.width = Length::mm(1'400);
  roll.measured = test::some_diameters();
  return roll;
}

TEST(RollEstimate, IsOneUntilTheRollIsUnrolled) {
  Roll roll = measured_roll();
  EXPECT_TRUE(is_estimated(roll));
  roll.is_found = true;
  EXPECT_FALSE(is_estimated(roll));
  EXPECT_FALSE(is_estimated(Roll{}));
}

TEST(RollEstimate, IsWhatWasMeasuredWhileNothingIsCut) {
  const Roll roll = measured_roll();
  const auto full = estimate(*roll.measured, roll.fabric.width);
  ASSERT_TRUE(full);
  EXPECT_EQ(*estimate_of(roll), *full);
}

TEST(RollEstimate, IsLessByWhatWasCutSince) {
  Roll roll = measured_roll();
  const auto full = estimate(*roll.measured, roll.fabric.width);
  roll.cut_since = Length::mm(30'000);
  const auto left = estimate_of(roll);
  ASSERT_TRUE(left);
  EXPECT_EQ(left->least, full->least - Length::mm(30'000));
  EXPECT_EQ(left->likely, full->likely - Length::mm(30'000));
  EXPECT_EQ(left->most, full->most - Length::mm(30'000));
}

TEST(RollEstimate, LeavesALittleWhereAllMayBeGone) {
  Roll roll = measured_roll();
  roll.cut_since = Length::mm(35'000);
  const auto left = estimate_of(roll);
  ASSERT_TRUE(left);
  EXPECT_EQ(left->least, kLeastLeft);
  EXPECT_GT(left->likely, kLeastLeft);
}

TEST(RollEstimate, RefusesMoreCutThanThereWas) {
  Roll roll = measured_roll();
  roll.cut_since = Length::mm(43'000);
  const auto left = estimate_of(roll);
  ASSERT_FALSE(left);
  EXPECT_EQ(left.problem().sentence(),
            "more was cut off the roll since than it could hold by these figures; "
            "measure it again, or give the length that is found.");
}

TEST(RollEstimate, TakesNewFiguresAsOfTheRollAsItIs) {
  Roll roll = measured_roll();
  roll.cut_since = Length::mm(20'000);
  const ByDiameters anew{{Length::mm(150), Length::mm(5)}, {Length::mm(50), Length::mm(1)},
                         {Length::mm(1), Length::units(32)}};
  EXPECT_EQ(*estimate_of(roll, anew), *estimate(anew, roll.fabric.width));
  EXPECT_EQ(*estimate_of(roll, *roll.measured), *estimate_of(roll));
}

}  // namespace
}  // namespace foldyard
