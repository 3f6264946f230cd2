#include "drawing/tape.h"

#include <gtest/gtest.h>

namespace foldyard {
namespace {

TEST(Tape, NumbersAreFarEnoughApartToRead) {
  // 1 : 75: 1 m takes 13.3 mm, 50 cm only 6.7 mm; ticks of 10 cm take 1.33 mm.
  const TapeSteps steps = tape_steps({75}, Unit::cm, 10);
  EXPECT_EQ(steps.number, Length::mm(1000));
  EXPECT_EQ(steps.tick, Length::mm(100));
}

TEST(Tape, CountsInYardsWhereTheJobDoes) {
  // 1 : 50: 36 in = 914.4 mm take 18.3 mm.
  EXPECT_EQ(tape_steps({50}, Unit::yard, 14).number, Length::inches64(36 * 64));
}

TEST(Tape, AnyScaleHasSteps) {
  for (double denominator : {0.5, 1.0, 30.0, 900.0, 5000.0})
    for (Unit unit : {Unit::mm, Unit::cm, Unit::m, Unit::inch, Unit::yard}) {
      const TapeSteps steps = tape_steps({denominator}, unit, 10);
      EXPECT_EQ(steps.number.units() % steps.tick.units(), 0);
    }
}

}  // namespace
}  // namespace foldyard
