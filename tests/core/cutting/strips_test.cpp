#include "cutting/strips.h"

#include <gtest/gtest.h>

namespace foldyard {
namespace {

// Both edges in, plain: cloth 40 with no selvedge folds to 20, flaps of 10.
class StripsOfFlaps : public testing::Test {
 protected:
  StripsOfFlaps() {
    const Fabric fabric{Length::units(40), {}, Length::units(1), Nap::none, ""};
    layouts_ = layouts_of({FoldKind::both_edges_in, 3, false, true}, fabric,
                          {Length::units(1), Length::units(1), Length::units(100)});
  }
  StripsAt at(int left, int right) const {
    const Length x = Length::units(left), y = Length::units(right);
    return StripsAt(*layouts_[0], {x, x, Strip{}}, {y, y, Strip{}}, 1000);
  }

  std::vector<std::unique_ptr<FoldLayout>> layouts_;
};

const Strip kExact{{5, 10}, 0, true};
const Strip kNarrower{{5, 10}, 0, false};
const Strip kUnused{};

TEST_F(StripsOfFlaps, ShareTheSlitsBetweenNeighbours) {
  // 8, 6 and 6 fill 20: two slits.
  EXPECT_EQ(slits(at(8, 6), kExact, kExact, Length::units(6), kExact), 2);
}

TEST_F(StripsOfFlaps, NeedASlitMoreWhereAStripIsNarrowerThanItsPlace) {
  // The left strip ends short of 8: its slit is not the middle's.
  EXPECT_EQ(slits(at(8, 6), kNarrower, kExact, Length::units(6), kExact), 3);
  EXPECT_EQ(slits(at(8, 6), kExact, kExact, Length::units(5), kExact), 3);
  EXPECT_EQ(slits(at(8, 6), kNarrower, kNarrower, Length::units(5), kNarrower), 4);
}

TEST_F(StripsOfFlaps, NeedNoSlitsForWhatIsNotUsed) {
  EXPECT_EQ(slits(at(8, 6), kUnused, kUnused, Length(), kUnused), 0);
  EXPECT_EQ(slits(at(8, 6), kExact, kUnused, Length(), kUnused), 1);
  EXPECT_EQ(slits(at(8, 6), kUnused, kUnused, Length(), kExact), 1);
  EXPECT_EQ(slits(at(8, 6), kUnused, kExact, Length::units(6), kUnused), 2);
}

TEST_F(StripsOfFlaps, NeedOneSlitWhereTheTwoEndsMeet) {
  EXPECT_EQ(slits(at(10, 10), kExact, kUnused, Length(), kExact), 1);
}

TEST_F(StripsOfFlaps, AddUpGainByPairsAndPlies) {
  // Left 5 × 1 pair, middle 5 × 1 ply, right 5 × 1 pair; cost 3 × 10 and two slits.
  EXPECT_EQ(total(at(8, 6), kExact, kExact, Length::units(6), kExact), (Cell{15, 2030}));
}

Shape shape(int across, int along) {
  return {Length::units(across), Length::units(along), 0, false, true, 1};
}

TEST(ForcedStrips, CutNarrowerOrWholeIfThePlaceIsThere) {
  TableSet tables({shape(4, 2)}, {true, 1000, 1},
                  {Length::units(12), Length::units(2), Length::units(1)});
  const CutTable& table = tables.table({});  // places 4, 8 and 12
  const std::vector<Sized> at_8 = forced_strips(&table, Length::units(8), 0);
  ASSERT_EQ(at_8.size(), 2u);
  EXPECT_FALSE(at_8[0].strip.exact);
  EXPECT_TRUE(at_8[1].strip.exact);
  EXPECT_EQ(at_8[1].strip.cell, (Cell{2, 1002}));
  const std::vector<Sized> at_7 = forced_strips(&table, Length::units(7), 0);
  ASSERT_EQ(at_7.size(), 1u);
  EXPECT_EQ(at_7[0].strip.cell, (Cell{1, 0}));
  EXPECT_EQ(at_7[0].size, Length::units(7));
}

TEST(ForcedStrips, AreEmptyWithoutATableOrAPlace) {
  TableSet tables({shape(4, 2)}, {}, {Length::units(12), Length::units(2), Length::units(1)});
  for (const CutTable* table : {static_cast<const CutTable*>(nullptr), &tables.table({})}) {
    const std::vector<Sized> list = forced_strips(table, Length::units(3), 0);
    ASSERT_EQ(list.size(), 1u);
    EXPECT_FALSE(list[0].strip.is_used());
  }
}

TEST(StripTables, AreThoseOfTheShares) {
  TableSet tables({shape(4, 2)}, {false, 1, 0},
                  {Length::units(12), Length::units(4), Length::units(1)});
  const StripTables fan = strip_tables(tables, {1, 3, 2}, true, 5);
  EXPECT_EQ(fan.left->kind(), (TableKind{true, true, 5}));
  EXPECT_EQ(fan.middle->kind(), (TableKind{false, true, 15}));
  EXPECT_EQ(fan.right->kind(), (TableKind{true, true, 10}));
  const StripTables open = strip_tables(tables, {0, 1, 0}, false, 1);
  EXPECT_EQ(open.left, nullptr);
  EXPECT_EQ(open.right, nullptr);
}

}  // namespace
}  // namespace foldyard
