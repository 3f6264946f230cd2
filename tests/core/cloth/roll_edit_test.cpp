#include "cloth/roll_edit.h"

#include <gtest/gtest.h>

#include "cloth/length_estimate.h"
#include "core/support/lengths.h"

namespace foldyard {
namespace {

using test::mm;

Roll a_roll() {
  Roll roll;
  roll.fabric.width = Length::mm(1400);
  roll.length = Length::mm(20'000);
  return roll;
}

TEST(WithWidth, KeepsAFlawOverTheWholeWidthWhole) {
  Roll roll = a_roll();
  roll.flaws = {{mm(10, 20), mm(0, 1350), "near"}, {mm(10, 20), mm(0, 1400), "join"}};
  const Roll wider = with_width(roll, Length::mm(1500));
  EXPECT_EQ(wider.fabric.width, Length::mm(1500));
  EXPECT_EQ(wider.flaws[0].across, mm(0, 1350));
  EXPECT_EQ(wider.flaws[1].across, mm(0, 1500));
  // Narrower than its neighbour now, the join lies before it.
  const Roll narrower = with_width(roll, Length::mm(1300));
  EXPECT_EQ(narrower.flaws[0], (Flaw{mm(10, 20), mm(0, 1300), "join"}));
}

TEST(WithWidth, LeavesALengthThatIsKnown) {
  EXPECT_EQ(with_width(a_roll(), Length::mm(700)).length, Length::mm(20'000));
  Roll found = a_roll();
  found.measured = ByWeight{{7'000, 0}, {0, 0}, {2'500, 0}};
  found.is_found = true;
  EXPECT_EQ(with_width(found, Length::mm(700)).length, Length::mm(20'000));
}

// 7 kg at 250 g a square metre are 28 m²: 20 m at 1.4 m, 40 m at 0.7 m.
TEST(WithWidth, EstimatesTheLengthByWeightAnew) {
  Roll roll = a_roll();
  roll.measured = ByWeight{{7'000, 0}, {0, 0}, {2'500, 0}};
  EXPECT_EQ(with_width(roll, Length::mm(1400)).length, Length::mm(20'000));
  EXPECT_EQ(with_width(roll, Length::mm(700)).length, Length::mm(40'000));
  EXPECT_EQ(with_width(roll, Length()).length, Length::mm(20'000));
}

// At a width of 1 mm the same cloth would be 28 km long, and wider than a kilometre there is none.
TEST(WithWidth, LeavesTheLengthWhereTheFiguresGiveNone) {
  Roll roll = a_roll();
  roll.measured = ByWeight{{7'000, 0}, {0, 0}, {2'500, 0}};
  for (const Length width : {Length::mm(1), kLongest + Length::units(1)}) {
    EXPECT_EQ(with_width(roll, width).length, Length::mm(20'000));
    EXPECT_EQ(with_width(roll, width).fabric.width, width);
  }
  EXPECT_LT(with_width(roll, Length::mm(28)).length, kLongest + Length::units(1));
}

TEST(WithLength, OfAMeasuredRollIsFound) {
  Roll roll = a_roll();
  EXPECT_FALSE(with_length(roll, Length::mm(5000)).is_found);
  roll.measured = ByTurns{{60, 1}, {Length::mm(200), {}}, {Length::mm(50), {}}};
  const Roll found = with_length(roll, Length::mm(5000));
  EXPECT_TRUE(found.is_found);
  EXPECT_EQ(found.length, Length::mm(5000));
  EXPECT_EQ(found.measured, roll.measured);
}

}  // namespace
}  // namespace foldyard
