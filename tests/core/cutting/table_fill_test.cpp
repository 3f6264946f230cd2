// Whole rows at once against the recursion cell by cell, gain, cuts and travel.

#include "cutting/table_fill.h"

#include <gtest/gtest.h>

#include "core/support/small_goods.h"
#include "core/support/slow_table.h"
#include "cutting/table_set.h"

namespace foldyard {
namespace {

using test::Dice;
using test::SlowTable;

struct FillCase {
  std::vector<Shape> shapes;
  Objective aim;
  TableLimits limits;
  std::int64_t copies = 1;
};

// stretch: sizes on no common step, so that rows cannot be spread; dear: worths
// that need 128 bits.
FillCase throw_case(unsigned seed, int stretch, bool dear) {
  Dice dice(seed);
  FillCase c;
  std::vector<Panel> panels = test::small_panels(dice, 4, 14, 14);
  for (Panel& p : panels) {
    p.across = p.across * stretch + Length::units(stretch > 1 ? dice.from_to(0, 9) : 0);
    p.along = p.along * stretch + Length::units(stretch > 1 ? dice.from_to(0, 9) : 0);
    if (dear) p.worth = Worth::parts((std::int64_t{1} << 42) + dice.from_to(0, 999));
  }
  if (dear) panels.push_back({"cheap", Length::units(5), Length::units(4), false, true, Worth::parts(1)});
  c.shapes = test::shapes_with_worth(panels, Nap::none);
  c.aim = dice.from_to(0, 2) > 0 ? Objective{true, 1'000'000, 1}
                                 : Objective{false, dice.from_to(0, 9), dice.from_to(0, 2)};
  c.limits = {Length::units(dice.from_to(20, 44) * stretch), Length::units(dice.from_to(10, 40) * stretch),
              Length::units(dice.from_to(1, 3) * stretch)};
  c.copies = dice.from_to(1, 3);
  return c;
}

// The slow tables of all four kinds, each on those it needs.
class SlowSet {
 public:
  SlowSet(const FillCase& c, const TableSet& grids) : case_(c), grids_(grids) {}

  const SlowTable& table(TableKind kind) {
    if (case_.aim.worth_first) kind.copies = 1;
    auto& made = made_[kind];
    if (!made) {
      const SlowTable* beyond = kind.joint_across ? &table({false, kind.joint_along, 2 * kind.copies}) : nullptr;
      const SlowTable* above = kind.joint_along ? &table({kind.joint_across, false, 2 * kind.copies}) : nullptr;
      made = std::make_unique<SlowTable>(kind, grids_.across(kind.joint_across), grids_.along(kind.joint_along),
                                         case_.shapes, case_.aim, beyond, above);
    }
    return *made;
  }

 private:
  const FillCase& case_;
  const TableSet& grids_;
  std::map<TableKind, std::unique_ptr<SlowTable>> made_;
};

void expect_equal_cells(const FillCase& c, TableSet& tables, const TableKind& kind, const SlowTable& slow) {
  const CutTable& table = tables.table(kind);
  for (int y = 0; y < table.along().size(); ++y)
    for (int x = 0; x < table.across().size(); ++x) {
      const Cell expected = slow.at(x, y);
      if (c.aim.worth_first)
        ASSERT_EQ(table.at(x, y), expected) << x << ", " << y;
      else
        ASSERT_TRUE(table.value(x, y) == c.copies * expected.gain - expected.cost) << x << ", " << y;
    }
}

void expect_as_cell_by_cell(int rounds, int stretch, bool dear) {
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + static_cast<unsigned>(rounds); ++seed) {
    SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed));
    const FillCase c = throw_case(seed, stretch, dear);
    TableSet tables(c.shapes, c.aim, c.limits);
    if (dear && c.aim.worth_first) {
      ASSERT_TRUE(tables.packing().is_wide());
    }
    SlowSet slow(c, tables);
    for (const bool across : {false, true})
      for (const bool along : {false, true}) {
        const TableKind kind{across, along, c.copies};
        SCOPED_TRACE(across ? "joint across" : "");
        SCOPED_TRACE(along ? "joint along" : "");
        expect_equal_cells(c, tables, kind, slow.table(kind));
        if (testing::Test::HasFailure()) return;
      }
  }
}

TEST(FillTable, GivesEachCellWhatTheRecursionGives) { expect_as_cell_by_cell(150, 1, false); }
TEST(FillTable, DoesSoWhereNoStepIsShared) { expect_as_cell_by_cell(40, 31, false); }
TEST(FillTable, DoesSoInOneHundredAndTwentyEightBits) { expect_as_cell_by_cell(40, 1, true); }

TEST(FillTable, LeavesTheHigherRowsUncutOnceCancelled) {
  const FillCase c = throw_case(test::first_seed(), 1, false);
  const std::atomic<bool> cancelled = true;
  TableLimits limits = c.limits;
  limits.cancelled = &cancelled;
  TableSet tables(c.shapes, c.aim, limits);
  const CutTable& table = tables.table({});
  // Panels of exactly that size may be taken, but nothing is cut.
  for (int y = 0; y < table.along().size(); ++y)
    for (int x = 0; x < table.across().size(); ++x) {
      const Move move = table.choice(x, y).move;
      EXPECT_TRUE(move == Move::leave || move == Move::take);
    }
}

}  // namespace
}  // namespace foldyard
