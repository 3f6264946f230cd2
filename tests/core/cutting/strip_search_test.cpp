// The search of fold positions and slits against folding and slitting small
// cloth at every unit.
//
// The search counts in units, so legs that do not divide evenly differ by one;
// on cloth of 12 to 24 units that matters, on real cloth it is a few thousandths
// of a millimetre. So the search must never give more than the enumeration on
// the same cloth, and on the same cloth sixty times as fine (where halves,
// thirds, quarters and fifths come out even) never less.

#include "cutting/strip_search.h"

#include <gtest/gtest.h>

#include "core/support/fold_ways.h"
#include "core/support/lengths.h"
#include "core/support/small_cloth.h"
#include "core/support/way_title.h"

namespace foldyard {
namespace {

using test::kHalf;
using test::kOffCentre;
using test::kOpen;
using test::kPlainQuarters;
using test::kPlainThirds;
using test::kThirds;
using test::kWorthFirst;
using test::SlowCell;
using test::SlowRectangle;
using test::SmallCase;
using test::units_of;

constexpr int kFine = 60;

// One search, with the height of each choice; heights that are no sums, or no
// multiple of the scale, are left out.
struct Found {
  int height;
  Cell cell;
};

std::vector<Found> search(const SmallCase& c, const FoldWay& way, int scale) {
  TableSet tables = test::tables_of(c, scale);
  const Layouts layouts = test::layouts_for(c, way, scale, tables);
  const auto choices = strip_choices(tables, layouts, way.end_to_end, c.copies);
  std::vector<Found> found;
  for (std::size_t v = 0; v < choices.size(); ++v) {
    const Grid& along = tables.along(way.end_to_end);
    const int height = units_of(along[static_cast<int>(v)]);
    if (along.is_sum(static_cast<int>(v)) && height % scale == 0) found.push_back({height / scale, choices[v].cell});
  }
  return found;
}

class EveryWay : public testing::TestWithParam<FoldWay> {
 protected:
  // Calls compare(enumeration's best, found) for each length of 150 cases. The
  // enumeration takes flaps that can hold a panel, or with any_flap all that
  // are as wide as the trim.
  template <class Compare>
  void compare_all(bool deep, bool any_flap, int scale, Compare compare) {
    const FoldWay way = GetParam();
    const unsigned first = test::first_seed();
    for (unsigned seed = first; seed < first + 150; ++seed) {
      const SmallCase c = test::throw_small_case(seed, deep, kWorthFirst);
      if (way.plain && !test::folds_evenly(c, way)) continue;
      SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed) + ": " + test::text(c));
      SlowRectangle rectangles(test::slow_shapes(c.panels, false), c.aim, c.trim);
      for (const Found& found : search(c, way, scale)) {
        SCOPED_TRACE("length " + std::to_string(found.height));
        const int flap = any_flap ? c.trim : test::least_flap(c);
        compare(test::slow_best(c, way, rectangles, found.height, flap), found.cell);
        if (HasFailure()) return;
      }
    }
  }
};

TEST_P(EveryWay, GivesNoMoreThanFoldingAtEveryUnit) {
  compare_all(false, true, 1, [](const SlowCell& slow, const Cell& found) {
    EXPECT_LE(found.gain, slow.gain);
  });
}

TEST_P(EveryWay, GivesNoLessThanFoldingAtEveryUnit) {
  compare_all(true, false, kFine, [](const SlowCell& slow, const Cell& found) {
    EXPECT_GE(found.gain, slow.gain);
  });
}

TEST_P(EveryWay, GivesNoLessWhereTheTableIsShallow) {
  compare_all(false, false, kFine, [](const SlowCell& slow, const Cell& found) {
    EXPECT_GE(found.gain, slow.gain);
  });
}

// Every folded length unfolds to an open one (docs/method.md).
TEST_P(EveryWay, GivesNoMoreThanOpenCloth) {
  const FoldWay way = GetParam();
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + 100 && !HasFailure(); ++seed) {
    const SmallCase c = test::throw_small_case(seed, true, kWorthFirst);
    SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed) + ": " + test::text(c));
    SlowRectangle rectangles(test::slow_shapes(c.panels, false), c.aim, c.trim);
    const int usable = c.cloth.width - 2 * c.cloth.selvedge;
    for (const Found& found : search(c, way, 1)) {
      const int length = found.height * (way.end_to_end ? 2 : 1);
      EXPECT_LE(found.cell.gain, rectangles.best(usable, length, false, false, 1).gain)
          << "length " << length;
    }
  }
}

INSTANTIATE_TEST_SUITE_P(StripSearch, EveryWay, testing::ValuesIn(all_ways(6)), test::way_title);

// Cuts and travel too, where the folds have one place.
void expect_cheapest(const FoldWay& way, std::int64_t (*measure)(std::int64_t), bool trim_first) {
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + 200 && !testing::Test::HasFailure(); ++seed) {
    SmallCase c = test::throw_small_case(seed, true, kWorthFirst);
    if (!test::folds_evenly(c, way)) continue;
    // Without selvedges the cloth itself may be uneven; its strip is slit first.
    if (trim_first && c.cloth.selvedge == 0) continue;
    SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed) + ": " + test::text(c));
    SlowRectangle rectangles(test::slow_shapes(c.panels, false), c.aim, c.trim, trim_first);
    for (const Found& found : search(c, way, 1)) {
      const SlowCell slow = test::slow_best(c, way, rectangles, found.height, c.trim);
      EXPECT_EQ(found.cell.gain, slow.gain) << "length " << found.height;
      EXPECT_EQ(measure(found.cell.cost), measure(slow.cost)) << "length " << found.height;
    }
  }
}

std::int64_t cuts(std::int64_t cost) { return cost / kWorthFirst.per_cut; }
std::int64_t travel(std::int64_t cost) { return cost % kWorthFirst.per_cut; }

TEST(StripChoices, NeedTheFewestCutsOpen) { expect_cheapest(kOpen, cuts, false); }
TEST(StripChoices, NeedTheFewestCutsSelvedgeToSelvedge) { expect_cheapest(kHalf, cuts, false); }
TEST(StripChoices, TravelTheLeastOpen) { expect_cheapest(kOpen, travel, true); }
TEST(StripChoices, TravelTheLeastSelvedgeToSelvedge) { expect_cheapest(kHalf, travel, true); }

// A case by hand: the goods, the cloth, the trim, and one length.
SmallCase by_hand(std::vector<Panel> panels, test::SlowCloth cloth, int trim, int tallest) {
  SmallCase c;
  c.panels = std::move(panels);
  c.cloth = cloth;
  c.trim = trim;
  c.tallest = tallest;
  c.aim = kWorthFirst;
  return c;
}

Panel panel(int across, int along, bool on_fold) {
  return {"panel", Length::units(across), Length::units(along), false, on_fold, Worth::parts(1)};
}

Cell longest(const SmallCase& c, const FoldWay& way) { return search(c, way, 1).back().cell; }

TEST(StripChoices, TakeASingleStripUnderAFlapThatTheTableForces) {
  // 20 wide on a table 12 deep: the flap is 8 to 10. Folded at 8, 4 at the fold
  // edge give one of 8; [4, 12] of the base gives one more, flap or not. Two
  // loose plies of 8 beyond a trim of 3 would need 11.
  const SmallCase c = by_hand({panel(8, 2, true)}, {20, 0, 12}, 3, 2);
  EXPECT_EQ(longest(c, kOffCentre).gain, 2);
}

TEST(StripChoices, CutOnceWhereTwoStripsMeet) {
  // Thirds of 4: half of 4 at each fold edge, 2 + 2 = 4: one slit of travel 2
  // frees both.
  const SmallCase c = by_hand({panel(4, 2, true)}, {12, 1, 100}, 2, 2);
  EXPECT_EQ(longest(c, kPlainThirds), (Cell{2, 1002}));
}

TEST(StripChoices, TakeNothingThatTheFarFoldEdgeHolds) {
  // Quarters of 4 without selvedges, trim 2: the inner pair spans all 4, but at
  // its far rim both its plies are joined to the outer ones, so [2, 4] of it
  // comes off in no two pieces of 2.
  const SmallCase c = by_hand({panel(2, 2, false)}, {16, 0, 100}, 2, 2);
  EXPECT_EQ(longest(c, kPlainQuarters).gain, 0);
}

TEST(StripChoices, KeepTheTrimFromBothFoldEdgesOfALeg) {
  // Quarters of 3 with selvedges of 1, trim 2: a slit at 2 from either edge is
  // 1 from the other.
  const SmallCase c = by_hand({panel(4, 2, true)}, {12, 1, 100}, 2, 2);
  EXPECT_EQ(longest(c, kPlainQuarters).gain, 0);
}

TEST(StripChoices, MakeTheLegsOfThirdsAsLongAsOnePanelNeeds) {
  // 15 with selvedges of 1: legs of 5; 4 of each outer leg are usable, half of 8.
  // On 12 an outer leg would have less than the least flap of 4.
  EXPECT_EQ(longest(by_hand({panel(8, 2, true)}, {15, 1, 100}, 1, 2), kThirds).gain, 1);
  EXPECT_EQ(longest(by_hand({panel(8, 2, true)}, {12, 1, 100}, 1, 2), kThirds).gain, 0);
}

TEST(StripChoices, TakeTheBaseUnderAFlapThatHoldsNothing) {
  // 12 off-centre: the flap is 4 at least (trim 1 and a panel of 3). Folded at
  // 4, the base is 8 wide and gives one of 6, flap or not; flat beside the flap
  // are only 4.
  const SmallCase c = by_hand({panel(6, 3, false), panel(3, 6, false)}, {12, 0, 100}, 1, 3);
  EXPECT_EQ(longest(c, kOffCentre).gain, 1);
}

TEST(StripChoices, TakeWhatOnlyTheInnerLegOfPlainThirdsIsWideEnoughFor) {
  // Legs of 8, the outer ones 6 usable: [1, 7] of the inner leg is 6 wide; all
  // three cover only [2, 6].
  const SmallCase c = by_hand({panel(6, 2, false)}, {24, 2, 100}, 1, 2);
  EXPECT_EQ(longest(c, kPlainThirds).gain, 1);
}

}  // namespace
}  // namespace foldyard
