#include "measure/write_length.h"

#include <gtest/gtest.h>

#include <cstdio>
#include <cstdlib>
#include <ostream>
#include <random>

#include "measure/read_length.h"

namespace foldyard {
namespace {

constexpr Unit kEveryUnit[] = {Unit::mm, Unit::cm, Unit::m, Unit::inch, Unit::yard};

struct Written {
  const char* row;
  Length length;
  Unit unit;
  const char* text;
  const char* number;
};
void PrintTo(const Written& written, std::ostream* out) { *out << written.text; }

class WriteLength : public testing::TestWithParam<Written> {};

TEST_P(WriteLength, IsWhatPeopleRead) {
  EXPECT_EQ(write_length(GetParam().length, GetParam().unit), GetParam().text);
  EXPECT_EQ(write_number(GetParam().length, GetParam().unit), GetParam().number);
}

const Written kWritten[] = {
    {"whole_mm", Length::mm(450), Unit::mm, "450 mm", "450"},
    {"tenth_mm", Length::units(32), Unit::mm, "0.1 mm", "0.1"},
    {"mm_as_cm", Length::mm(451), Unit::cm, "45.1 cm", "45.1"},
    {"half_mm_as_cm", Length::units(450 * 320 + 160), Unit::cm, "45.05 cm", "45.05"},
    {"m", Length::mm(1500), Unit::m, "1.5 m", "1.5"},
    {"tenth_mm_as_m", Length::units(32), Unit::m, "0.0001 m", "0.0001"},
    {"whole_m_keeps_its_zeros", Length::mm(100'000), Unit::m, "100 m", "100"},
    {"zero_mm", Length(), Unit::mm, "0 mm", "0"},
    {"zero_yd", Length(), Unit::yard, "0 yd", "0"},
    // 16 of 32 units is half a step and goes up, 15 goes down.
    {"half_step_up", Length::units(16), Unit::mm, "0.1 mm", "0.1"},
    {"under_half_step", Length::units(15), Unit::mm, "0 mm", "0"},
    {"half_step_below_zero", Length::units(-16), Unit::mm, "-0.1 mm", "-0.1"},
    {"nothing_has_no_sign", Length::units(-15), Unit::mm, "0 mm", "0"},
    // 17.75 in = 450.85 mm.
    {"inches_as_mm", Length::inches64(1136), Unit::mm, "450.9 mm", "450.9"},
    {"mixed_inches", Length::inches64(1136), Unit::inch, "17 3/4 in", "17 3/4"},
    {"whole_inches", Length::inches64(64 * 18), Unit::inch, "18 in", "18"},
    {"fraction", Length::inches64(48), Unit::inch, "3/4 in", "3/4"},
    {"finest", Length::inches64(1), Unit::inch, "1/64 in", "1/64"},
    {"zero_inches", Length(), Unit::inch, "0 in", "0"},
    {"inches_below_zero", Length::inches64(-96), Unit::inch, "-1 1/2 in", "-1 1/2"},
    // 127 units are 1/64 in: 63 round to 0, 64 to 1/64.
    {"under_half_a_64th", Length::units(63), Unit::inch, "0 in", "0"},
    {"over_half_a_64th", Length::units(64), Unit::inch, "1/64 in", "1/64"},
    // 450 mm = 17.7165 in; × 64 = 1133.86, so 1134/64 = 17 23/32.
    {"mm_as_inches", Length::mm(450), Unit::inch, "17 23/32 in", "17 23/32"},
    {"whole_yards", Length::inches64(72 * 64), Unit::yard, "2 yd", "2"},
    {"yards_and_inches", Length::inches64(54 * 64), Unit::yard, "1 yd 18 in", "1.5"},
    {"under_a_yard", Length::inches64(18 * 64), Unit::yard, "18 in", "0.5"},
    // 1/64 in = 1/2304 yd = 0.000434.
    {"yards_and_fraction", Length::inches64(36 * 64 + 1), Unit::yard, "1 yd 1/64 in", "1.0004"},
    // 1 m = 1.09361 yd; over the yard 3.37008 in = 215.69/64, so 3 24/64.
    {"metre_as_yards", Length::mm(1000), Unit::yard, "1 yd 3 3/8 in", "1.0936"},
    {"longest", kLongest, Unit::m, "1000 m", "1000"},
};

INSTANTIATE_TEST_SUITE_P(Table, WriteLength, testing::ValuesIn(kWritten),
                         [](const auto& row) { return std::string(row.param.row); });

TEST(UnitName, IsTheShortOneThatReadLengthKnows) {
  for (Unit unit : kEveryUnit) EXPECT_TRUE(read_length("1 " + unit_name(unit))) << unit_name(unit);
}

TEST(WriteExact, KeepsToThePreferredUnitWhereItCan) {
  EXPECT_EQ(write_exact(Length::mm(450), Unit::cm), "45 cm");
  EXPECT_EQ(write_exact(Length::inches64(1136), Unit::inch), "17 3/4 in");
  EXPECT_EQ(write_exact(Length::inches64(54 * 64), Unit::yard), "1 yd 18 in");
  // 5 in = 127 mm is whole in both.
  EXPECT_EQ(write_exact(Length::mm(127), Unit::mm), "127 mm");
  EXPECT_EQ(write_exact(Length::mm(127), Unit::inch), "5 in");
}

TEST(WriteExact, ChangesTheUnitRatherThanTheLength) {
  EXPECT_EQ(write_exact(Length::inches64(1), Unit::cm), "1/64 in");
  EXPECT_EQ(write_exact(Length::mm(450), Unit::inch), "450 mm");
  EXPECT_EQ(write_exact(Length::mm(450), Unit::yard), "450 mm");
  // 656 units: 2.05 mm, neither 32nds nor 127ths.
  EXPECT_EQ(write_exact(Length::units(656), Unit::cm), "2.05 mm");
  EXPECT_EQ(write_exact(Length::units(1), Unit::inch), "0.003125 mm");
}

TEST(WriteExact, IsEmptyBelowZeroAndOverTheLongest) {
  EXPECT_EQ(write_exact(Length::units(-1), Unit::mm), "");
  EXPECT_EQ(write_exact(Length(), Unit::mm), "0 mm");
  EXPECT_NE(write_exact(kLongest, Unit::mm), "");
  EXPECT_EQ(write_exact(kLongest + Length::units(1), Unit::mm), "");
}

TEST(WriteExact, IsReadBackToTheSameLength) {
  const unsigned seed = std::random_device{}();
  std::printf("seed %u\n", seed);
  std::mt19937_64 random(seed);
  std::uniform_int_distribution<int> bits(1, 28);
  for (int trial = 0; trial < 20000; ++trial) {
    const std::int64_t n = static_cast<std::int64_t>(random() >> (64 - bits(random)));
    const Length any = Length::units(n);
    const Length tenths = Length::units(n / 32 * 32), sixty_fourths = Length::units(n / 127 * 127);
    for (Unit unit : kEveryUnit) {
      for (Length length : {any, tenths, sixty_fourths}) {
        const std::string text = write_exact(length, unit);
        const Result<Length> read = read_length(text);
        ASSERT_TRUE(read) << length.units() << ": " << read.problem().sentence();
        EXPECT_EQ(*read, length) << text;
      }
    }
  }
}

TEST(WriteLengthForPeople, IsWithinHalfAStepAndReadable) {
  const unsigned seed = std::random_device{}();
  std::printf("seed %u\n", seed);
  std::mt19937_64 random(seed);
  std::uniform_int_distribution<std::int64_t> any(0, kLongest.units() - 100);
  for (int trial = 0; trial < 5000; ++trial) {
    const Length length = Length::units(any(random));
    for (Unit unit : kEveryUnit) {
      const Result<Length> read = read_length(write_length(length, unit));
      ASSERT_TRUE(read) << read.problem().sentence();
      const bool imperial = unit == Unit::inch || unit == Unit::yard;
      EXPECT_LE(std::abs((*read - length).units()), imperial ? 63 : 16) << length.units();
    }
  }
}

}  // namespace
}  // namespace foldyard
