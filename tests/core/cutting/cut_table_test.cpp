#include "cutting/cut_table.h"

#include <gtest/gtest.h>

#include <functional>

#include "core/support/grids.h"
#include "core/support/lengths.h"
#include "core/support/small_goods.h"
#include "cutting/table_set.h"

namespace foldyard {
namespace {

using test::Dice;
using test::grid;
using test::shape;
using test::SlowAim;
using test::SlowCell;
using test::SlowRectangle;
using test::units_of;

const Objective kByWorth{true, 1000, 1};

// Large enough for every table here.
Packing packing(const std::vector<Shape>& shapes, const Objective& aim = kByWorth) {
  return Packing(aim, shapes, Length::units(1000), Length::units(1000));
}

TEST(CutTable, IsTheHeadersExample) {
  // 1000 × 900 with 450 × 900: cuts at 450 and at 900, each 900 of travel. The
  // places across are 450 and 900; 1000 is no sum of panels.
  const std::vector<Shape> shapes{shape(450, 900, 1)};
  const CutTable table({}, grid({450, 900}), grid({900}), shapes, packing(shapes), nullptr, nullptr);
  EXPECT_EQ(table.at(1, 0), (Cell{2, 1900}));
  const Remainder whole = table.remainder_across(Length::units(1000), 0);
  EXPECT_EQ(whole.cell, (Cell{2, 2 * 1900}));
  EXPECT_EQ(whole.across, 1);
  EXPECT_EQ(whole.cuts, 1);
}

TEST(CutTable, TakesAPanelOfDoubleWidthAtAJoint) {
  // On the fold 225 gives one of 450; each 450 beyond it gives two.
  const std::vector<Shape> shapes{shape(450, 900, 1)};
  const CutTable beyond({}, grid({450, 900}), grid({900}), shapes, packing(shapes), nullptr, nullptr);
  const CutTable table({true, false, 1}, grid({225, 675}), grid({900}), shapes, packing(shapes),
                       &beyond, nullptr);
  EXPECT_EQ(table.at(0, 0), (Cell{1, 0}));
  EXPECT_EQ(table.at(1, 0), (Cell{3, 1900}));
}

TEST(CutTable, PrefersFewerCutsAmongEqualGains) {
  // 4 × 6 gives 4 either as two of 4 × 3 with a cut or whole without one.
  const std::vector<Shape> shapes{shape(4, 3, 2), shape(4, 6, 4)};
  const CutTable table({}, grid({4}), grid({3, 6}), shapes, packing(shapes), nullptr, nullptr);
  EXPECT_EQ(table.at(0, 1), (Cell{4, 0}));
  EXPECT_EQ(table.choice(0, 1).move, Move::take);
}

TEST(CutTable, LeavesWhatDoesNotPayItsCut) {
  // A cut costs 9 + 1. One ply gains 4 by it, three plies 12.
  const Objective by_time{false, 9, 1};
  const auto at = [&](std::int64_t copies) {
    const std::vector<Shape> shapes{shape(2, 1, 4)};
    return CutTable({false, false, copies}, grid({2, 3}), grid({1}), shapes, packing(shapes, by_time),
                    nullptr, nullptr)
        .at(1, 0);
  };
  EXPECT_EQ(at(1), Cell{});
  EXPECT_EQ(at(3), (Cell{4, 10}));
}

// A joint 5 wide, panels of 3 that may not be cut on the fold: slit at 2, leave
// what is below, take two above. One cut, though no sum of panels is 2.
TEST(CutTable, LeavesTheRestBesideAJointWithoutFurtherCuts) {
  Shape panel = shape(3, 2, 9);
  TableSet tables({panel, shape(2, 3, 9)}, kByWorth,
                  {Length::units(20), Length::units(12), Length::units(1)});
  const CutTable& table = tables.table({true, false, 1});
  const int x = table.across().index_of(Length::units(5));
  const int y = table.along().index_of(Length::units(2));
  EXPECT_EQ(table.at(x, y), (Cell{18, 1002}));
}

// 12 × 7 with 7 × 5 (gain 29) and 3 × 4 either way (gain 4). Beside 7 × 5 lie
// 5 × 7, no sum of widths: trimmed to 4 first, then parted at 3; one of the two
// is 3 wide and trimmed again. Travel 7 for the first cut, 7 to free 7 × 5, 7, 4
// and 4 or 3: five cuts. Parting first would travel 26 (docs/method.md, trims).
TEST(CutTable, TrimsARemainderBeforeItPartsIt) {
  TableSet tables({shape(7, 5, 29), shape(3, 4, 4), shape(4, 3, 4)}, kByWorth,
                  {Length::units(20), Length::units(12), Length::units(1)});
  const CutTable& table = tables.table({});
  const int x = table.across().index_of(Length::units(12));
  const int y = table.along().index_of(Length::units(7));
  EXPECT_EQ(table.at(x, y), (Cell{37, 5028}));
}

// One random set of goods, and how it is to be cut.
struct CutCase {
  std::vector<Panel> panels;
  SlowAim aim;
  int trim = 1;
  int copies = 1;
};

using AimOf = std::function<SlowAim(Dice&)>;

CutCase throw_case(unsigned seed, const AimOf& aim_of) {
  Dice dice(seed);
  CutCase c;
  c.panels = test::small_panels(dice, 3, 9, 9);
  c.trim = dice.from_to(1, 2);
  c.copies = dice.from_to(1, 4);
  c.aim = aim_of(dice);
  return c;
}

constexpr int kWidest = 20, kTallest = 12;

TableSet tables_of(const CutCase& c) {
  return TableSet(test::shapes_with_worth(c.panels, Nap::none),
                  {c.aim.worth_first, c.aim.per_cut, c.aim.per_unit},
                  {Length::units(kWidest), Length::units(kTallest), Length::units(c.trim)});
}

// What is compared of a cell.
using Measure = std::function<std::int64_t(std::int64_t gain, std::int64_t cost, const CutCase&)>;

void expect_every_place(const CutCase& c, const TableKind& kind, TableSet& tables,
                        SlowRectangle& slow, const Measure& measure) {
  const CutTable& table = tables.table(kind);
  for (int x = 0; x < table.across().size(); ++x)
    for (int y = 0; y < table.along().size(); ++y) {
      const int across = units_of(table.across()[x]), along = units_of(table.along()[y]);
      const SlowCell s = slow.best(across, along, kind.joint_across, kind.joint_along, c.copies);
      const Cell found = table.at(x, y);
      EXPECT_EQ(measure(found.gain, found.cost, c), measure(s.gain, s.cost, c))
          << across << " x " << along << (kind.joint_across ? ", joint across" : "")
          << (kind.joint_along ? ", joint along" : "");
      if (testing::Test::HasFailure()) return;
    }
}

// All four kinds of table, every place, against trying every unit.
// trim_first: by that rule, which speaks of sums only, so without joints.
void expect_as_slow(const AimOf& aim_of, const Measure& measure, bool trim_first = false) {
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + 300 && !testing::Test::HasFailure(); ++seed) {
    SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed));
    const CutCase c = throw_case(seed, aim_of);
    SlowRectangle slow(test::slow_shapes(c.panels, false), c.aim, c.trim, trim_first);
    TableSet tables = tables_of(c);
    for (const bool across : {false, true})
      for (const bool along : {false, true})
        if (!trim_first || (!across && !along))
          expect_every_place(c, {across, along, c.copies}, tables, slow, measure);
  }
}

constexpr std::int64_t kCut = 1000;  // more than any travel here

SlowAim worth_first(Dice&) { return {true, kCut, 1}; }

TEST(CutTable, GivesAsMuchAsTryingEveryUnit) {
  expect_as_slow(worth_first,
                 [](std::int64_t gain, std::int64_t, const CutCase&) { return gain; });
}

TEST(CutTable, NeedsNoMoreCutsThanTryingEveryUnit) {
  expect_as_slow(worth_first,
                 [](std::int64_t, std::int64_t cost, const CutCase&) { return cost / kCut; });
}

// Travel is least where uneven rests are trimmed first.
TEST(CutTable, TravelsNoFurtherThanTryingEveryUnit) {
  expect_as_slow(worth_first,
                 [](std::int64_t, std::int64_t cost, const CutCase&) { return cost % kCut; }, true);
}

std::int64_t net(std::int64_t gain, std::int64_t cost, const CutCase& c) {
  return c.copies * gain - cost;
}

TEST(CutTable, NetsAsMuchAsTryingEveryUnitWhereCutsCost) {
  expect_as_slow([](Dice& dice) { return SlowAim{false, dice.from_to(0, 12), 0}; }, net);
}

TEST(CutTable, NetsAsMuchAsTryingEveryUnitWhereTravelCostsToo) {
  expect_as_slow([](Dice& dice) { return SlowAim{false, dice.from_to(0, 12), dice.from_to(1, 2)}; },
                 net, true);
}

// Between the places, a rectangle gives what its remainder says.
TEST(CutTable, GivesFromAnyRemainderWhatTryingEveryUnitGives) {
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + 200 && !HasFailure(); ++seed) {
    SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed));
    const CutCase c = throw_case(seed, worth_first);
    SlowRectangle slow(test::slow_shapes(c.panels, false), c.aim, c.trim);
    TableSet tables = tables_of(c);
    const CutTable& table = tables.table({false, false, 1});
    for (int y = 0; y < table.along().size(); ++y)
      for (int width = 1; width <= kWidest; ++width)
        EXPECT_EQ(table.remainder_across(Length::units(width), y).cell.gain,
                  slow.best(width, units_of(table.along()[y]), false, false, 1).gain);
    for (int x = 0; x < table.across().size(); ++x)
      for (int height = 1; height <= kTallest; ++height)
        EXPECT_EQ(table.remainder_along(x, Length::units(height)).cell.gain,
                  slow.best(units_of(table.across()[x]), height, false, false, 1).gain);
  }
}

}  // namespace
}  // namespace foldyard
