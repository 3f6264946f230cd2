#include "cloth/calibration.h"

#include <gtest/gtest.h>

#include <numbers>

#include "cloth/length_estimate.h"
#include "core/support/dice.h"
#include "core/support/measured.h"

namespace foldyard {
namespace {

using test::about;
using test::Dice;

MeasuredLength units(std::int64_t value, std::int64_t give) { return {Length::units(value), Length::units(give)}; }

double low_of(MeasuredLength m) { return (m.value - m.give).in_mm(); }
double high_of(MeasuredLength m) { return (m.value + m.give).in_mm(); }

// Half a unit is 0.0016 mm.
constexpr double kHalfUnit = 0.5001 / 320;

// 40 m on 238 mm and 50 mm: π (56644 − 2500) / 160 000 = 1.0631 mm, and
// 12.5 turns a centimetre do not come into it.
TEST(ThicknessOfARoll, ComesFromItsKnownLength) {
  const MeasuredLength t = thickness_of_roll(about(238), about(50), about(40'000)).value();
  EXPECT_NEAR(t.value.in_mm(), 1.0631, kHalfUnit + 0.00005);
  EXPECT_LE(t.give, Length::units(1));
}

// Math Forum, "Length of a Roll of Carpet": 128 π cm on 24 cm and 8 cm is 1 cm thick.
TEST(ThicknessOfARoll, IsThatOfAPublishedRollOfCarpet) {
  const MeasuredLength length{Length::units(1'286'797), Length()};  // 402.1239 cm
  EXPECT_EQ(thickness_of_roll(about(240), about(80), length).value().value, Length::mm(10));
}

TEST(ThicknessOfARoll, RangesOverTheWorstCorners) {
  const MeasuredLength t = thickness_of_roll(about(238, 3), about(50, 1), about(40'000, 500)).value();
  const double low = std::numbers::pi * (235 * 235 - 51 * 51) / (4 * 40'500.0);
  const double high = std::numbers::pi * (241 * 241 - 49 * 49) / (4 * 39'500.0);
  EXPECT_LE(low_of(t), low);
  EXPECT_GE(high_of(t), high);
  // One end is reached but for the rounding of both.
  EXPECT_LT(std::min(low - low_of(t), high_of(t) - high), 4 * kHalfUnit);
}

// 21 ± 1 mm over 20 layers: 1.00 to 1.10 mm.
TEST(ThicknessOfAStack, IsThatOfOneLayer) {
  const MeasuredLength t = thickness_of_stack(about(21, 1), 20).value();
  EXPECT_EQ(t.value, Length::units(336));
  EXPECT_EQ(t.give, Length::units(16));
}

// 10 units over 3 layers: 3 1/3 is nearest to 3, and the give reaches 3 1/3 and 3 2/3.
TEST(ThicknessOfAStack, GivesSoMuchThatNoTrueThicknessIsLeftOut) {
  EXPECT_EQ(thickness_of_stack(units(10, 0), 3).value().give, Length::units(1));
  EXPECT_EQ(thickness_of_stack(units(10, 1), 3).value().give, Length::units(1));
  EXPECT_EQ(thickness_of_stack(units(9, 0), 3).value().give, Length());
}

// 28 000 g over 70 m² is 400 g; 27.9 over 71.4 and 28.1 over 68.6 m² are 390.7 and 409.7.
TEST(WeightOfARoll, IsThatOfASquareMetre) {
  EXPECT_EQ(weight_of_roll({28'500, 0}, {500, 0}, about(50'000), Length::mm(1400)).value(), (MeasuredCount{4000, 0}));
  const MeasuredCount loose = weight_of_roll({28'500, 50}, {500, 50}, about(50'000, 1000), Length::mm(1400)).value();
  EXPECT_EQ(loose.value, 4000);
  EXPECT_EQ(loose.give, 97);  // 4096.2 rounded up
}

// 85 turns of 135 π mm are 36.0498 m.
TEST(TurnsOfARoll, AreThoseThatTheLengthMakes) {
  const MeasuredLength length{Length::units(11'535'928), Length()};
  EXPECT_EQ(turns_of_roll(about(220), about(50), length).value().value, 85);
  const MeasuredCount loose = turns_of_roll(about(220, 5), about(50, 1), {length.value, Length::mm(200)}).value();
  EXPECT_LE(85 - loose.give, 35'849.8 * 2 / (std::numbers::pi * 276));
  EXPECT_GE(85 + loose.give, 36'249.8 * 2 / (std::numbers::pi * 264));
}

TEST(Refused, AreFiguresThatSayNothing) {
  EXPECT_EQ(thickness_of_stack(about(21), 0).problem().where, "layers");
  EXPECT_EQ(thickness_of_stack(about(0), 5).problem().where, "stack");
  EXPECT_EQ(thickness_of_stack(about(1, 1), 5).problem().where, "stack");
  EXPECT_EQ(thickness_of_roll(about(50), about(50), about(40'000)).problem().where, "tube");
  EXPECT_EQ(thickness_of_roll(about(238), about(50), about(0)).problem().where, "length");
  EXPECT_EQ(weight_of_roll({500, 0}, {500, 0}, about(50'000), Length::mm(1400)).problem().where, "tube");
  EXPECT_EQ(weight_of_roll({900, 0}, {500, 0}, about(0), Length::mm(1400)).problem().where, "length");
  EXPECT_EQ(turns_of_roll(about(238), about(-1), about(40'000)).problem().where, "tube");
  EXPECT_FALSE(corrected(ByDiameters{about(238), about(50), about(1)}, Length(), Length::mm(1400)));
}

TEST(Refused, IsNoCorrectionByALengthThatWasNotFound) {
  const RollMeasure measures[] = {test::some_diameters(), test::some_turns(), test::some_weight()};
  for (const RollMeasure& measure : measures) {
    const Result<RollMeasure> next = corrected(measure, Length(), Length::mm(1400));
    ASSERT_FALSE(next) << measure.index();
    EXPECT_EQ(next.problem().where, "length") << measure.index();
  }
}

TEST(Refused, IsNoRollOfTheLongestLength) {
  EXPECT_TRUE(thickness_of_roll(about(1200), about(50), {kLongest, Length()}));
}

RollMeasure any_measure(Dice& dice) {
  const MeasuredLength outer = about(dice.from_to(150, 400), dice.from_to(0, 9));
  const MeasuredLength tube = about(dice.from_to(0, 80), dice.from_to(0, 3));
  switch (dice.from_to(0, 2)) {
    case 0: return ByDiameters{outer, tube, units(dice.from_to(250, 900), dice.from_to(0, 99))};
    case 1: return ByTurns{{dice.from_to(20, 120), dice.from_to(0, 3)}, outer, tube};
    default:
      return ByWeight{{dice.from_to(5000, 30'000), dice.from_to(0, 200)}, {dice.from_to(0, 600), dice.from_to(0, 90)},
                      {dice.from_to(1500, 7000), dice.from_to(0, 300)}};
  }
}

// Whatever was found, in the estimate or far from it, the next estimate holds it.
TEST(Corrected, HoldsTheLengthFound) {
  Dice dice(test::first_seed());
  for (int n = 0; n < 500; ++n) {
    const RollMeasure measure = any_measure(dice);
    const Length found = Length::mm(dice.from_to(5'000, 90'000)), width = Length::mm(dice.from_to(800, 1600));
    const RollMeasure next = corrected(measure, found, width).value();
    EXPECT_EQ(next.index(), measure.index());
    const LengthEstimate range = estimate(next, width).value();
    EXPECT_LE(range.least, found);
    EXPECT_GE(range.most, found);
  }
}

// A roll that is measured without any give and corrected to its own length stays.
TEST(Corrected, LeavesARightFigureAsItIs) {
  const ByDiameters m{about(220), about(50), about(1)};
  const Length found = estimate(m, Length::mm(1400)).value().likely;
  EXPECT_EQ(std::get<ByDiameters>(corrected(m, found, Length::mm(1400)).value()).thickness.value, Length::mm(1));
}

}  // namespace
}  // namespace foldyard
