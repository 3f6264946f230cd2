#include "cutting/table_set.h"

#include <gtest/gtest.h>

#include "core/support/grids.h"

namespace foldyard {
namespace {

using test::Places;
using test::places;

Shape fold_shape(int across, int along, bool on_fold) {
  return {Length::units(across), Length::units(along), 0, false, on_fold, 1};
}

TableLimits limits(int widest, int tallest, int trim, int most_places = 1000) {
  return {Length::units(widest), Length::units(tallest), Length::units(trim), most_places};
}

TEST(TableSet, BeginsBesideAJointWithHalvesAndTheTrim) {
  TableSet tables({fold_shape(10, 6, true)}, {}, limits(40, 13, 2));
  EXPECT_EQ(places(tables.across(false)), (Places{10, 20, 30, 40}));
  // Half the cloth: 20. Trim 2, half 5, each alone or with tens. And what tens
  // leave of 20: 10.
  EXPECT_EQ(places(tables.across(true)), (Places{2, 5, 10, 12, 15, 20}));
  // Along, a joint does not halve: 2 and 3, each alone or with 6 and 12, to 13;
  // and 13 with what sixes leave of it: 7 (1 is less than the trim).
  EXPECT_EQ(places(tables.along(true)), (Places{2, 3, 7, 8, 9, 13}));
}

TEST(TableSet, HalvesNoPanelThatMayNotBeCutOnTheFold) {
  TableSet tables({fold_shape(10, 6, false), fold_shape(7, 6, true)}, {}, limits(14, 6, 2));
  // 10 may not, and 7 has no half; the trim alone begins. 7 is half the cloth.
  EXPECT_EQ(places(tables.across(true)), (Places{2, 7}));
}

TEST(TableSet, HalvesNoPanelThatTheTrimWouldSpoil) {
  TableSet tables({fold_shape(10, 6, true)}, {}, limits(20, 6, 6));
  // The trim, and half the cloth.
  EXPECT_EQ(places(tables.across(true)), (Places{6, 10}));
}

TEST(TableSet, KnowsTheLeastFlapThatHoldsAPanel) {
  const auto flap = [](std::vector<Shape> shapes, int trim) {
    return TableSet(std::move(shapes), {}, limits(40, 12, trim)).least_flap();
  };
  EXPECT_EQ(flap({fold_shape(10, 6, true)}, 2), Length::units(5));           // half of 10
  EXPECT_EQ(flap({fold_shape(10, 6, false)}, 2), Length::units(12));         // 2 + 10
  EXPECT_EQ(flap({fold_shape(10, 6, true), fold_shape(2, 6, false)}, 2), Length::units(4));  // 2 + 2
  EXPECT_EQ(flap({fold_shape(10, 6, true)}, 6), Length::units(16));          // half is too near
  EXPECT_EQ(flap({fold_shape(10, 6, true)}, 5), Length::units(5));           // just far enough
}

// The cloth is narrower than the panel: beside a joint there is the trim, beyond it nothing.
TEST(TableSet, GivesNothingOfClothThatNoPanelFits) {
  TableSet tables({fold_shape(10, 6, true)}, {}, limits(9, 13, 2));
  ASSERT_EQ(tables.across(false).size(), 0);
  ASSERT_GT(tables.across(true).size(), 0);
  const CutTable& joint = tables.table({true, false, 1});
  for (int x = 0; x < joint.across().size(); ++x) EXPECT_EQ(joint.value(x, joint.along().size() - 1), 0) << x;
  EXPECT_NE(tables.columns<std::int64_t>({true, false, 1}, 1).upto(0), nullptr);
  tables.columns<std::int64_t>({false, false, 1}, 1).upto(0);  // no row is read; the checks would stop here
}

TEST(TableSet, MakesEachTableOnce) {
  TableSet tables({fold_shape(10, 6, true)}, {}, limits(40, 12, 2));
  const CutTable& first = tables.table({true, false, 1});
  EXPECT_EQ(&tables.table({true, false, 1}), &first);
  // Where worth comes first, copies do not matter.
  EXPECT_EQ(&tables.table({true, false, 3}), &first);
  EXPECT_EQ(&first.beyond(), &tables.table({}));
}

TEST(TableSet, TellsCopiesApartWhereTimeIsWeighed) {
  TableSet tables({fold_shape(10, 6, true)}, {false, 1, 0}, limits(40, 12, 2));
  const CutTable& three = tables.table({true, true, 3});
  EXPECT_EQ(three.kind().copies, 3);
  EXPECT_EQ(three.beyond().kind(), (TableKind{false, true, 6}));
  EXPECT_EQ(three.above().kind(), (TableKind{true, false, 6}));
}

TEST(TableSet, SaysWhenItIsThinned) {
  TableSet whole({fold_shape(10, 6, true)}, {}, limits(40, 12, 2));
  EXPECT_FALSE(whole.is_thinned());
  TableSet thin({fold_shape(10, 6, true)}, {}, limits(40, 12, 2, 2));
  EXPECT_TRUE(thin.is_thinned());
  EXPECT_LE(thin.across(false).size(), 2);
}

TEST(TableSet, KnowsWhatItsTablesTakeAtMost) {
  TableSet tables({fold_shape(10, 6, true)}, {}, limits(40, 13, 2));
  std::int64_t cells = 0, strips = 0;
  for (const bool across : {false, true})
    for (const bool along : {false, true}) {
      cells += tables.across(across).size() * tables.along(along).size();
      strips += tables.across(across).size() * std::ssize(tables.lengths(along));
    }
  EXPECT_EQ(tables.most_bytes(1), 8 * (cells + 3 * strips));
  EXPECT_EQ(tables.most_bytes(5), 8 * (cells + 15 * strips));  // worth alone: one table for all copies
  TableSet timed({fold_shape(10, 6, true)}, {false, 1, 1}, limits(40, 13, 2));
  const std::int64_t value = timed.packing().is_wide() ? 16 : 8;
  EXPECT_EQ(timed.most_bytes(5), value * 5 * (cells + 3 * strips));
}

}  // namespace
}  // namespace foldyard
