#include "measure/read_length.h"

#include <gtest/gtest.h>

#include <ostream>
#include <string>

namespace foldyard {
namespace {

constexpr std::int64_t kMm = 320, kIn = 8128, kYd = 292608;

struct Read {
  const char* row;
  const char* text;
  std::int64_t units;
};
void PrintTo(const Read& read, std::ostream* out) { *out << read.text; }

struct Refused {
  const char* row;
  std::string text;
  const char* reason;  // a part of the sentence
};
void PrintTo(const Refused& refused, std::ostream* out) { *out << refused.text; }

template <class Row>
std::string row_name(const testing::TestParamInfo<Row>& info) {
  return info.param.row;
}

class ReadLength : public testing::TestWithParam<Read> {};

TEST_P(ReadLength, GivesExactUnits) {
  const Result<Length> length = read_length(GetParam().text);
  ASSERT_TRUE(length) << length.problem().sentence();
  EXPECT_EQ(length->units(), GetParam().units);
}

INSTANTIATE_TEST_SUITE_P(
    Metric, ReadLength,
    testing::Values(Read{"centimetres", "45 cm", 450 * kMm}, Read{"no_space", "450mm", 450 * kMm},
                    Read{"decimal_metres", "1.5 m", 1500 * kMm},
                    Read{"decimal_comma", "1,5 m", 1500 * kMm},
                    Read{"two_digits_after_a_comma", "1,25 m", 1250 * kMm},
                    Read{"four_digits_after_a_comma", "1,2345 m", 1234 * kMm + 160},
                    Read{"three_digits_after_a_point", "1.234 m", 1234 * kMm},
                    Read{"point_first", ".5 m", 500 * kMm},
                    Read{"zero", "0 mm", 0}, Read{"zero_with_decimals", "0.000 m", 0},
                    Read{"leading_zeros", "000000000045 cm", 450 * kMm},
                    Read{"trailing_zeros", "1.500000000000000000000 m", 1500 * kMm},
                    Read{"capitals", "45 CM", 450 * kMm},
                    Read{"blanks_around", " \t45  cm ", 450 * kMm},
                    Read{"narrow_blank", "45\u202f\u00a0cm", 450 * kMm},
                    Read{"tenth_of_a_millimetre", "0.1 mm", 32},
                    Read{"twentieth_of_a_millimetre", "0.05 mm", 16},
                    Read{"one_unit", "0.003125 mm", 1}, Read{"one_unit_as_fraction", "1/320 mm", 1},
                    Read{"one_unit_in_metres", "0.000003125 m", 1},
                    Read{"half_a_metre", "1/2 m", 500 * kMm},
                    // ISO 216: A4 is 210 × 297 mm.
                    Read{"a4_across", "21 cm", 210 * kMm}, Read{"a4_along", "29.7 cm", 297 * kMm},
                    Read{"longest", "1000 m", 320'000'000}),
    row_name<Read>);

INSTANTIATE_TEST_SUITE_P(
    Imperial, ReadLength,
    testing::Values(Read{"inches", "18 in", 18 * kIn}, Read{"inch", "1 inch", kIn},
                    Read{"inches_in_words", "2 inches", 2 * kIn}, Read{"mark", "18\"", 18 * kIn},
                    Read{"typeset_mark", "18″", 18 * kIn}, Read{"curly_mark", "18”", 18 * kIn},
                    Read{"mixed", "17 3/4 in", 1136 * 127}, Read{"mixed_sign", "17¾ in", 1136 * 127},
                    Read{"spaced_sign", "17 ¾ in", 1136 * 127},
                    Read{"fraction", "3/4 in", 48 * 127}, Read{"improper", "5/4 in", 80 * 127},
                    Read{"finest", "1/64 in", 127}, Read{"decimal_inches", "17.75 in", 1136 * 127},
                    Read{"mixed_yards", "1 1/2 yd", 3 * kYd / 2}, Read{"half_sign", "½ yd", kYd / 2},
                    Read{"third_of_a_yard", "1/3 yd", 12 * kIn}, Read{"thirds_sign", "⅔yd", 24 * kIn},
                    Read{"yard", "1 yard", kYd}, Read{"yards", "2 yards", 2 * kYd},
                    // International yard and pound agreement of 1959.
                    Read{"yard_of_1959", "0.9144 m", kYd}, Read{"inch_of_1959", "25.4 mm", kIn},
                    Read{"feet_and_inches", "2'6\"", 30 * kIn},
                    Read{"feet_and_inches_in_words", "2 ft 6 in", 30 * kIn},
                    Read{"feet_in_words", "2 feet 6 inches", 30 * kIn},
                    Read{"typeset_feet", "2′6″", 30 * kIn}, Read{"curly_feet", "2’6”", 30 * kIn},
                    Read{"feet_and_mixed_inches", "2' 6 1/2\"", 61 * kIn / 2},
                    Read{"feet_alone", "3 ft", kYd}, Read{"foot", "1 foot", 12 * kIn},
                    Read{"most_inches_after_feet", "2' 11 63/64\"", 36 * kIn - 127},
                    Read{"yards_and_inches", "1 yd 18 in", 54 * kIn},
                    Read{"most_inches_after_yards", "1 yd 35 63/64 in", 72 * kIn - 127},
                    // 1 km / 0.9144 m = 1093.6: the last whole yard.
                    Read{"longest_in_yards", "1093 yd", 1093 * kYd}),
    row_name<Read>);

class RefuseLength : public testing::TestWithParam<Refused> {};

TEST_P(RefuseLength, SaysWhy) {
  const Result<Length> length = read_length(GetParam().text);
  ASSERT_FALSE(length) << length->units();
  EXPECT_NE(length.problem().sentence().find(GetParam().reason), std::string::npos)
      << length.problem().sentence();
}

INSTANTIATE_TEST_SUITE_P(
    Number, RefuseLength,
    testing::Values(Refused{"empty", "", "it is empty"}, Refused{"blank", "  ", "it is empty"},
                    Refused{"minus", "-5 cm", "sign"}, Refused{"plus", "+5 cm", "sign"},
                    Refused{"typeset_minus", "\u22125 cm", "sign"},
                    Refused{"minus_in_the_second", "2' -6\"", "sign"},
                    Refused{"nan", "nan", "start with a number"},
                    Refused{"infinity", "inf cm", "start with a number"},
                    Refused{"unit_alone", "cm", "start with a number"},
                    Refused{"exponent", "1e3 mm", "no such unit"},
                    Refused{"hexadecimal", "0x10 mm", "no such unit"},
                    Refused{"thousands", "1,234 mm", "thousands"},
                    Refused{"three_zeros", "1,000 m", "thousands"},
                    Refused{"three_after_zero", "0,125 m", "thousands"},
                    Refused{"both_separators", "1,234.5 mm", "more than one point or comma"},
                    Refused{"separators_swapped", "1.234,5 mm", "more than one point or comma"},
                    Refused{"two_points", "1.2.3 m", "more than one point or comma"},
                    Refused{"open_point", "1. m", "digit is missing"},
                    Refused{"comma_first", ",5 m", "start with a number"},
                    Refused{"open_fraction", "3/ in", "under the fraction line"},
                    Refused{"no_upper", "/4 in", "start with a number"},
                    Refused{"nothing_below", "3/0 in", "0 below"},
                    Refused{"fraction_of_fraction", "3/4/5 in", "no unit"},
                    Refused{"full_fraction_after_whole", "1 4/4 in", "less than one"},
                    Refused{"decimal_with_fraction", "1.5 1/2 in", "two numbers"},
                    Refused{"two_numbers", "17 3 in", "two numbers"}),
    row_name<Refused>);

INSTANTIATE_TEST_SUITE_P(
    UnitAndPair, RefuseLength,
    testing::Values(Refused{"no_unit", "45", "no unit"}, Refused{"no_second_unit", "2'6", "no unit"},
                    Refused{"unknown_unit", "45 km", "no such unit as \"km\""},
                    Refused{"long_unit", "45 centimetreslong", "no such unit"},
                    Refused{"other_sign", "45 €", "no unit"}, Refused{"sign_behind_the_letters", "45 ~", "no unit"},
                    Refused{"metres_and_centimetres", "1 m 20 cm", "only feet or yards"},
                    Refused{"inches_and_feet", "6\" 2'", "only feet or yards"},
                    Refused{"yards_and_feet", "1 yd 1 ft", "only feet or yards"},
                    Refused{"twelve_inches_after_feet", "2'12\"", "carry them over"},
                    Refused{"thirty_six_after_yards", "1 yd 36 in", "carry them over"},
                    Refused{"half_feet_and_inches", "2.5' 6\"", "must be whole"},
                    Refused{"three_measures", "2'6\" 1 in", "something follows"},
                    Refused{"text_after", "45 cm wide", "start with a number"}),
    row_name<Refused>);

INSTANTIATE_TEST_SUITE_P(
    SizeAndExactness, RefuseLength,
    testing::Values(Refused{"hundredth_of_a_millimetre", "0.01 mm", "1/320 mm"},
                    Refused{"half_a_unit", "0.0015625 mm", "1/320 mm"},
                    Refused{"endless_upper", std::string(30, '9') + "/2 in", "1/320 mm"},
                    Refused{"endless_lower", "1/" + std::string(30, '9') + " in", "1/320 mm"},
                    Refused{"third_of_an_inch", "1/3 in", "1/320 mm"},
                    Refused{"half_a_64th", "1/128 in", "1/320 mm"},
                    Refused{"tenth_of_an_inch", "0.1 in", "1/320 mm"},
                    Refused{"endless_decimals", "0." + std::string(5000, '3') + " m", "1/320 mm"},
                    Refused{"one_over_the_longest", "1000.000003125 m", "longer than 1 km"},
                    Refused{"longest_in_millimetres", "1000000.1 mm", "longer than 1 km"},
                    Refused{"yards_over", "1094 yd", "longer than 1 km"},
                    Refused{"eight_digits", "10000000 mm", "longer than 1 km"},
                    Refused{"past_64_bits", "99999999999999999999 mm", "longer than 1 km"},
                    Refused{"huge_fraction", "99999999999999999999/2 mm", "1/320 mm"},
                    Refused{"pair_over_the_longest", "1093 yd 35 in", "longer than 1 km"}),
    row_name<Refused>);

TEST(ReadLengthProblem, QuotesAShortTextAndNotALongOne) {
  EXPECT_EQ(read_length("45").problem().sentence(),
            "\"45\" is not a length: a number has no unit; write mm, cm, m, in, ft or yd after it.");
  EXPECT_EQ(read_length(std::string(41, '7')).problem().what.substr(0, 10), "this text ");
  EXPECT_EQ(read_length(std::string("4\0005", 3)).problem().what.substr(0, 10), "this text ");
}

TEST(ReadLengthExample, IsTheHeaders) {
  EXPECT_EQ(read_length("17 3/4 in").value(), Length::inches64(1136));
}

}  // namespace
}  // namespace foldyard
