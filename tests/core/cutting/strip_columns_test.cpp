#include "cutting/strip_columns.h"

#include <gtest/gtest.h>

#include "cutting/table_set.h"

namespace foldyard {
namespace {

Shape shape(int across, int along) {
  return {Length::units(across), Length::units(along), 0, false, false, 10};
}

// 4 × 2 on cloth 12 wide: places 4, 8, 12; and 5 × 3: 5, 9, 10. Lengths 2 and 3.
class Columns : public testing::Test {
 protected:
  TableSet tables_{{shape(4, 2), shape(5, 3)}, {true, 1000, 1},
                   {Length::units(12), Length::units(3), Length::units(1)}};
  const CutTable& table_ = tables_.table({});
  int x(int width) const { return table_.across().index_of(Length::units(width)); }
  Cell unpacked(std::int64_t value) const { return tables_.packing().unpack(value); }
};

TEST_F(Columns, HoldWhatTheTableGivesAtEveryLength) {
  const auto& columns = tables_.columns<std::int64_t>({}, 1);
  for (int place = 0; place < table_.across().size(); ++place)
    for (std::size_t i = 0; i < tables_.lengths(false).size(); ++i)
      EXPECT_EQ(unpacked(columns.exact(place)[i]), table_.at(place, tables_.lengths(false)[i]));
}

TEST_F(Columns, GoUpToTheBestNarrowerStripWithoutTheCut) {
  // At 9 wide and 2 long two of 4 × 2 lie in 8; the slit comes on top, not here.
  const auto& columns = tables_.columns<std::int64_t>({}, 1);
  EXPECT_EQ(unpacked(columns.upto(x(9))[0]), (Cell{20, 1002}));
  EXPECT_EQ(unpacked(columns.exact(x(9))[0]), (Cell{20, 2004}));
}

TEST_F(Columns, AreFullOnlyWhereTheWholeStripIsUsed) {
  const auto& columns = tables_.columns<std::int64_t>({}, 1);
  EXPECT_EQ(unpacked(columns.full(x(8))[0]), (Cell{20, 1002}));
  EXPECT_EQ(columns.full(x(5))[0], kNever<std::int64_t>);  // 4 of 5 at length 2
  EXPECT_EQ(unpacked(columns.full(x(5))[1]), (Cell{10, 0}));
}

TEST_F(Columns, CountEveryPlyOfTheStrip) {
  const auto& columns = tables_.columns<std::int64_t>({}, 3);
  EXPECT_EQ(unpacked(columns.full(x(8))[0]), (Cell{60, 1002}));
}

}  // namespace
}  // namespace foldyard
