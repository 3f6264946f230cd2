#include "job/decimal.h"

#include <gtest/gtest.h>

namespace foldyard {
namespace {

struct DecimalText {
  const char* name;
  const char* text;
  int places;
  std::optional<std::int64_t> value;  // none: refused
};

class ReadDecimal : public testing::TestWithParam<DecimalText> {};

TEST_P(ReadDecimal, GivesTheLastPlaceOrNothing) {
  EXPECT_EQ(read_decimal(GetParam().text, GetParam().places), GetParam().value);
}

const DecimalText kDecimalTexts[] = {
    {"whole", "7", 4, 70'000},           {"half", "7.5", 4, 75'000},
    {"all_places", "0.0001", 4, 1},      {"trailing_zero", "7.50", 4, 75'000},
    {"no_places", "12", 0, 12},          {"nine_digits", "999999999", 0, 999'999'999},
    {"ten_digits", "1000000000", 0, {}}, {"one_place_too_many", "0.00001", 4, {}},
    {"point_without_places", "1.5", 0, {}}, {"ends_in_point", "1.", 4, {}},
    {"starts_with_point", ".5", 4, {}},  {"empty", "", 4, {}},
    {"minus", "-1", 4, {}},              {"plus", "+1", 4, {}},
    {"exponent", "1e3", 4, {}},          {"comma", "7,5", 4, {}},
    {"two_points", "1.2.3", 4, {}},      {"space", " 1", 4, {}},
    {"nan", "nan", 4, {}},
};

INSTANTIATE_TEST_SUITE_P(Rows, ReadDecimal, testing::ValuesIn(kDecimalTexts),
                         [](const auto& row) { return std::string(row.param.name); });

TEST(WriteDecimal, LeavesNeedlessZerosOut) {
  EXPECT_EQ(write_decimal(0, 4), "0");
  EXPECT_EQ(write_decimal(1, 4), "0.0001");
  EXPECT_EQ(write_decimal(75'000, 4), "7.5");
  EXPECT_EQ(write_decimal(70'000, 4), "7");
  EXPECT_EQ(write_decimal(100, 0), "100");
}

TEST(WriteDecimal, IsReadBack) {
  for (std::int64_t value : {0, 1, 9, 10, 99'999, 100'000, 123'456'789}) {
    EXPECT_EQ(read_decimal(write_decimal(value, 4), 4), value);
    EXPECT_EQ(read_decimal(write_decimal(value, 0), 0), value);
  }
}

}  // namespace
}  // namespace foldyard
