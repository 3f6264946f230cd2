#include "cloth/length_estimate.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <vector>

#include "core/support/dice.h"
#include "core/support/lengths.h"
#include "core/support/measured.h"

namespace foldyard {
namespace {

using test::about;
using test::Dice;
using test::exact;
using test::inches;
constexpr Length kWidth = Length::mm(1400);

MeasuredLength mils(std::int64_t thousandths) { return exact(Length::units(thousandths * 8128 / 1000)); }

Length likely(const RollMeasure& measure) { return estimate(measure, kWidth).value().likely; }

double in_metres(Length length) { return length.in_mm() / 1000; }
double in_inches(Length length) { return length.in_mm() / 25.4; }

// Math Forum, "Length of a Roll of Carpet", 22 Aug 1997,
// mathforum.org/library/drmath/view/56471.html: a roll of 24 cm on 8 cm, 1 cm
// thick, is 128 π, "about 402 cm". 128 π = 402.1239 cm.
TEST(LengthByDiameters, IsThatOfAPublishedRollOfCarpet) {
  EXPECT_NEAR(likely(ByDiameters{about(240), about(80), about(10)}).in_mm(), 4021.239, 0.002);
}

// calculator.academy/roll-length-calculator, a roll of tape: 5 in, 2 in, 0.011 in
// give 1499.39 in. 0.011 in is 89.408 units: taken as 89, or 0.46 % less.
TEST(LengthByDiameters, IsThatOfAPublishedRollOfTape) {
  const double by_unit = 1499.396 * 89.408 / 89;
  EXPECT_NEAR(in_inches(likely(ByDiameters{exact(inches(5)), exact(inches(2)), mils(11)})), by_unit, 0.01);
  EXPECT_NEAR(in_inches(likely(ByDiameters{exact(inches(5)), exact(inches(2)), mils(11)})), 1499.39, 0.005 * 1499.39);
}

// calcbee.com/calculators/productivity/general/roll-length: 10 in, 3 in, 0.003 in
// give 1985 ft (rounded up a little on the way). 0.003 in is 24.384 units: taken as 24.
TEST(LengthByDiameters, IsThatOfAPublishedThinWeb) {
  const double feet = in_inches(likely(ByDiameters{exact(inches(10)), exact(inches(3)), mils(3)})) / 12;
  EXPECT_NEAR(feet * 24 / 24.384, 1985, 0.001 * 1985);
}

// npmjs.com/package/roll-calc (after giangrandi.ch/soft/spiral): D 3, d 2, t 0.1
// give the exact spiral 39.27313461871. The ring gives 39.26990817, and what it
// leaves out is at most t ln(D/d) / 4π = 0.0032266.
TEST(LengthByDiameters, LeavesOutOfAPublishedSpiralLessThanItsBound) {
  const double ring = in_metres(likely(ByDiameters{about(3000), about(2000), about(100)}));
  EXPECT_NEAR(ring, 39.26990817, 1e-5);
  EXPECT_GT(39.27313461871, ring);
  EXPECT_LE(39.27313461871 - ring, 0.1 * std::log(1.5) / (4 * std::numbers::pi) + 1e-5);
}

// 220 mm on 50 mm at 1.0 mm: π (48400 − 2500) / 4 = 36049.8 mm; 85 turns.
TEST(LengthByDiameters, HasTheHeadersExample) {
  EXPECT_NEAR(in_metres(likely(ByDiameters{about(220), about(50), about(1)})), 36.0498, 0.0001);
  const ByDiameters loose{about(220, 5), about(50, 1), {Length::mm(1), Length::units(32)}};
  const LengthEstimate range = estimate(loose, kWidth).value();
  // π (215² − 51²) / 4.4 and π (225² − 49²) / 3.6.
  EXPECT_NEAR(in_metres(range.least), std::numbers::pi * (215 * 215 - 51 * 51) / 4.4e3, 1e-5);
  EXPECT_NEAR(in_metres(range.most), std::numbers::pi * (225 * 225 - 49 * 49) / 3.6e3, 1e-5);
}

// The same by turns: (220 − 50) / 2 = 85 turns of a mean girth of 135 π.
TEST(LengthByTurns, AgreesWithDiametersWhereTheTurnsFit) {
  EXPECT_EQ(likely(ByTurns{{85, 0}, about(220), about(50)}), likely(ByDiameters{about(220), about(50), about(1)}));
}

// The same page of calcbee.com counts 1167 turns.
TEST(LengthByTurns, IsThatOfAPublishedRoll) {
  EXPECT_NEAR(in_inches(likely(ByTurns{{1167, 0}, exact(inches(10)), exact(inches(3))})) / 12, 1985, 0.001 * 1985);
}

// Case Paper, casepaper.com, formulas: 100 lb of basis 50 (500 sheets of 25 × 38
// in weigh 50 lb) in a roll 26 in wide: 3,045 ft. 100 lb = 45 359.237 g, and
// basis 50 = 50 × 453.59237 / (500 × 25 × 38 × 0.0254²) = 74.0 g/m².
TEST(LengthByWeight, IsThatOfAPublishedRollOfPaper) {
  const Length width = Length::units(26 * Length::kUnitsPerInch);
  const LengthEstimate range = estimate(ByWeight{{45359, 1}, {0, 0}, {740, 1}}, width).value();
  const Length published = Length::units(3045 * 12 * Length::kUnitsPerInch);
  EXPECT_LE(range.least, published);
  EXPECT_GE(range.most, published);
  EXPECT_NEAR(in_inches(range.likely) / 12, 3045, 0.001 * 3045);
}

// 28 kg of 400 g/m², 1.40 m wide: 28 000 / 560 = 50 m, on a tube of 0.5 kg.
TEST(LengthByWeight, TakesTheTubeOff) {
  EXPECT_EQ(likely(ByWeight{{28'500, 0}, {500, 0}, {4000, 0}}), Length::mm(50'000));
}

// 28.3 to 28.7 kg less 0.4 to 0.6 kg is 27.7 to 28.3; over 1.4 × 380 to 420.
TEST(LengthByWeight, RangesOverTheWorstCorners) {
  const LengthEstimate range =
      estimate(ByWeight{{28'500, 200}, {500, 100}, {4000, 200}}, kWidth).value();
  EXPECT_NEAR(in_metres(range.least), 27.7e3 / (1.4 * 420), 1e-5);
  EXPECT_NEAR(in_metres(range.most), 28.3e3 / (1.4 * 380), 1e-5);
}

// briandunning.com/cf/2523, sample output: 520 m when 260 mm on 83 mm, now 200 mm:
// 283.60132430696 m.
TEST(RestOfAKnownRoll, IsThePublishedOne) {
  const LengthEstimate rest = estimate_of_rest(about(520'000), about(260), about(200), about(83)).value();
  EXPECT_NEAR(in_metres(rest.likely), 283.60132430696, 2e-6);
  EXPECT_LE(rest.most - rest.least, Length::units(1));
}

TEST(RestOfAKnownRoll, RangesOverTheWorstCorners) {
  const LengthEstimate rest =
      estimate_of_rest(about(520'000, 1000), about(260, 2), about(200, 1), about(83, 1)).value();
  EXPECT_NEAR(in_metres(rest.least), 519.0 * (199 * 199 - 84 * 84) / (262 * 262 - 84 * 84), 1e-5);
  EXPECT_NEAR(in_metres(rest.most), 521.0 * (201 * 201 - 82 * 82) / (258 * 258 - 82 * 82), 1e-5);
}

TEST(RestOfAKnownRoll, RefusesARollLargerThanWhenFull) {
  EXPECT_EQ(estimate_of_rest(about(520'000), about(260), about(261), about(83)).problem().where, "outer");
  EXPECT_EQ(estimate_of_rest(about(520'000), about(260, 1), about(259, 1), about(83)).problem().where, "outer");
  EXPECT_TRUE(estimate_of_rest(about(520'000), about(260, 1), about(258, 1), about(83)));
}

// A figure anywhere within its give.
Length within(Dice& dice, MeasuredLength m) {
  const Length low = std::max(Length(), m.value - m.give);
  return Length::units(dice.from_to(static_cast<int>(low.units()), static_cast<int>((m.value + m.give).units())));
}

// In extended floating point, which this project's results never use.
long double ring_of(Length outer, Length tube, Length thickness) {
  const long double D = outer.units(), d = tube.units(), t = thickness.units();
  return std::numbers::pi_v<long double> * (D - d) * (D + d) / (4 * t);
}

TEST(Range, HoldsWhateverTheTrueFiguresAreAndIsNoWider) {
  Dice dice(test::first_seed());
  for (int n = 0; n < 300; ++n) {
    const ByDiameters m{about(dice.from_to(150, 400), dice.from_to(0, 9)),
                        about(dice.from_to(0, 80), dice.from_to(0, 3)),
                        {Length::units(dice.from_to(200, 900)), Length::units(dice.from_to(0, 99))}};
    const LengthEstimate range = estimate(m, kWidth).value();
    for (int i = 0; i < 20; ++i) {
      const long double length = ring_of(within(dice, m.outer), within(dice, m.tube), within(dice, m.thickness));
      EXPECT_LE(range.least.units(), length);
      EXPECT_GE(range.most.units(), length);
    }
    const Length bare = std::max(Length(), m.tube.value - m.tube.give);
    EXPECT_LT(range.most.units() - 1, ring_of(m.outer.value + m.outer.give, bare, m.thickness.value - m.thickness.give));
    EXPECT_LT(ring_of(m.outer.value - m.outer.give, m.tube.value + m.tube.give, m.thickness.value + m.thickness.give),
              range.least.units() + 1);
    EXPECT_NEAR(range.likely.units(), ring_of(m.outer.value, m.tube.value, m.thickness.value), 0.5001);
  }
}

// A roll wound turn by turn: the centre line of a spiral that begins on the tube
// and climbs one thickness a turn, summed in small straight steps.
struct Wound {
  double tube, thickness, turns;  // mm
  double radius_at(double turn) const { return tube / 2 + thickness / 2 + thickness * turn; }
  double length() const {
    const int steps = static_cast<int>(turns * 720);
    double sum = 0;
    for (int i = 0; i < steps; ++i) sum += step(i * turns / steps, (i + 1) * turns / steps);
    return sum;
  }
  // What a calliper reads across the last turn, `back` turns (0 to ½) before its end.
  double reading(double back) const {
    return radius_at(turns - back) + radius_at(turns - back - 0.5) + thickness;
  }

 private:
  double step(double from, double to) const {
    const double a = radius_at(from), b = radius_at(to), angle = 2 * std::numbers::pi * (to - from);
    return std::sqrt(a * a + b * b - 2 * a * b * std::cos(angle));
  }
};

MeasuredLength read_off(double mm, double give_mm) {
  return {Length::units(std::llround(mm * 320)), Length::units(static_cast<std::int64_t>(std::ceil(give_mm * 320)))};
}

TEST(Range, HoldsASpiralWoundTurnByTurnWhereverItsEndLies) {
  for (const double tube : {30.0, 50.0, 83.0})
    for (const double thickness : {0.4, 1.0, 2.5, 8.0})
      for (const double turns : {3.0, 20.25, 60.5}) {
        const Wound roll{tube, thickness, turns};
        for (const double back : {0.0, 0.2, 0.49}) {
          const MeasuredLength outer = read_off(roll.reading(back), 1.5 * thickness + 0.01);
          const RollMeasure ring = ByDiameters{outer, read_off(tube, 0), read_off(thickness, 0)};
          // A part of a turn is the give of a count of whole turns.
          const RollMeasure count = ByTurns{{std::llround(std::floor(turns)), turns > std::floor(turns) ? 1 : 0}, outer, read_off(tube, 0)};
          for (const RollMeasure& measure : {ring, count}) {
            const LengthEstimate range = estimate(measure, kWidth).value();
            EXPECT_LE(range.least.in_mm(), roll.length()) << tube << " " << thickness << " " << turns;
            EXPECT_GE(range.most.in_mm(), roll.length()) << tube << " " << thickness << " " << turns;
          }
        }
      }
}

struct Refusal {
  const char* about;
  RollMeasure measure;
  std::string where;
};

TEST(Refused, IsWhatHasNoLengthOrMightHaveNone) {
  const MeasuredLength one{Length::mm(1), Length::mm(0)};
  const std::vector<Refusal> refusals = {
      {"tube wider", ByDiameters{about(50), about(51), one}, "tube"},
      {"tube as wide", ByDiameters{about(50), about(50), one}, "tube"},
      {"tube wider with gives", ByDiameters{about(60, 5), about(50, 5), one}, "tube"},
      {"no thickness", ByDiameters{about(220), about(50), about(0)}, "thickness"},
      {"no thickness with give", ByDiameters{about(220), about(50), about(1, 1)}, "thickness"},
      {"give below zero", ByDiameters{about(220, -1), about(50), one}, "outer"},
      {"too large to count", ByDiameters{exact(kLongest), about(50), one}, "outer"},
      {"over 1 km", ByDiameters{about(1200), about(50), one}, ""},
      {"no turns", ByTurns{{0, 0}, about(220), about(50)}, "turns"},
      {"no turns with give", ByTurns{{5, 5}, about(220), about(50)}, "turns"},
      {"tube wider, by turns", ByTurns{{85, 0}, about(220), about(220)}, "tube"},
      {"roll lighter than its tube", ByWeight{{400, 0}, {500, 0}, {4000, 0}}, "tube"},
      {"nothing left", ByWeight{{500, 0}, {500, 0}, {4000, 0}}, "tube"},
      {"nothing left with gives", ByWeight{{700, 100}, {500, 100}, {4000, 0}}, "tube"},
      {"weightless cloth", ByWeight{{700, 0}, {500, 0}, {0, 0}}, "per_square_metre"},
      {"weightless with give", ByWeight{{700, 0}, {500, 0}, {10, 10}}, "per_square_metre"},
      {"too heavy to count", ByWeight{{2'000'000'000, 0}, {500, 0}, {4000, 0}}, "roll"},
  };
  for (const Refusal& refusal : refusals) {
    const Result<LengthEstimate> range = estimate(refusal.measure, kWidth);
    ASSERT_FALSE(range) << refusal.about;
    EXPECT_EQ(range.problem().where, refusal.where) << refusal.about;
    EXPECT_FALSE(range.problem().next.empty()) << refusal.about;
  }
}

TEST(Refused, IsNothingThatStaysClearByOneUnit) {
  const Length unit = Length::units(1);
  EXPECT_TRUE(estimate(ByDiameters{about(60, 5), {Length::mm(50) - unit, Length::mm(5)}, about(1)}, kWidth));
  const ByDiameters thinnest{about(220), about(50), {Length::mm(1), Length::mm(1) - unit}};
  EXPECT_TRUE(estimate(thinnest, kWidth).problem().where.empty());
  EXPECT_TRUE(estimate(ByTurns{{6, 5}, about(220), about(50)}, kWidth));
  EXPECT_TRUE(estimate(ByWeight{{701, 100}, {500, 100}, {4000, 0}}, kWidth));
}

// A roll without a tube: its give reaches below zero, where no diameter is.
TEST(Range, TakesNoTubeForAnEmptyOne) {
  EXPECT_EQ(estimate(ByDiameters{about(220), about(0, 2), about(1)}, kWidth).value().most,
            estimate(ByDiameters{about(220), about(0), about(1)}, kWidth).value().most);
}

TEST(Refused, IsARollThatCouldBeBareAndAFullOneOfNoWidth) {
  const MeasuredLength none{};
  const MeasuredLength tube{Length::mm(50), {}}, outer{Length::mm(50) + Length::units(1), {}}, thick{Length::mm(500), {}};
  EXPECT_EQ(estimate(ByDiameters{outer, tube, thick}, Length::mm(1'000)).problem().what,
            "by these figures the roll could be bare");
  EXPECT_FALSE(estimate_of_rest({Length::mm(9'000), {}}, none, outer, tube));
}

}  // namespace
}  // namespace foldyard
