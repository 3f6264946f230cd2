#include "cutting/given_layout.h"

#include <gtest/gtest.h>

#include "core/support/fold_ways.h"
#include "core/support/lengths.h"
#include "core/support/small_cloth.h"
#include "core/support/way_title.h"

namespace foldyard {
namespace {

using test::kDeepTable;
using test::kOffCentre;
using test::kWorthFirst;
using test::SmallCase;
using test::u;

FoldPlan fold_of(const FoldWay& way, const test::Lines& lines) {
  FoldPlan fold{way, {}, levels_of(way)};
  for (const int line : lines) fold.lines.push_back(u(line));
  return fold;
}

TEST(LayoutsAt, AreThoseOfTheHeadersExample) {
  const Fabric fabric{u(1500), u(10), u(1), Nap::none, ""};
  const auto layouts = layouts_at(fold_of(kOffCentre, {500}), fabric, kDeepTable);
  ASSERT_FALSE(layouts.empty());
  EXPECT_EQ(layouts.front()->folded({}, {}), u(1000));
  EXPECT_EQ(layouts.front()->left().most, u(490));
  // The widest strip of one ply and of two, from 225 on.
  std::vector<Length> widest(3);
  for (const auto& layout : layouts) {
    Length& most = widest[static_cast<std::size_t>(layout->shares().plies)];
    most = std::max(most, layout->middle(u(225), Length()));
  }
  EXPECT_EQ(widest[1], u(990 - 225));
  EXPECT_EQ(widest[2], u(490 - 225));
}

TEST(LayoutsAt, AreNoneWhereAFoldEdgeLiesInside) {
  // Legs of 5, 4, 6, 5: the second and the third fold edge do not lie at rims.
  const Fabric fabric{u(20), u(0), u(1), Nap::none, ""};
  const FoldPlan fold{{FoldKind::fan, 4, false, false}, {u(5), u(9), u(15)}, {0, 1, 2, 3}};
  EXPECT_TRUE(layouts_at(fold, fabric, kDeepTable).empty());
}

// Slit at every unit by hand, folds where they are.
class EveryGivenWay : public testing::TestWithParam<FoldWay> {};

TEST_P(EveryGivenWay, GivesWhatSlittingAtEveryUnitGives) {
  const FoldWay way = GetParam();
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + 120; ++seed) {
    const SmallCase c = test::throw_small_case(seed, true, kWorthFirst);
    const std::vector<test::Lines> all = way.plain && !test::folds_evenly(c, way)
                                             ? std::vector<test::Lines>()
                                             : test::all_lines(c, way, test::least_flap(c));
    if (all.empty()) continue;
    test::Dice dice(seed);
    const test::Lines& lines = all[static_cast<std::size_t>(dice.from_to(0, static_cast<int>(all.size()) - 1))];
    test::SlowRectangle rectangles(test::slow_shapes(c.panels, false), c.aim, c.trim);
    test::SlowStrips slow(rectangles, way.end_to_end, 1);
    TableSet tables = test::tables_of(c, 1);
    const Layouts layouts = layouts_at(fold_of(way, lines), test::fabric_of(c, 1), {tables.fold_trim(), tables.least_flap(), u(c.cloth.depth)});
    const StripSearch search(tables, layouts, way.end_to_end, 1);
    for (const int v : tables.lengths(way.end_to_end)) {
      const int height = static_cast<int>(tables.along(way.end_to_end)[v].units());
      const test::SlowCell best = slow.best(test::SlowFold(c.cloth, lines), height);
      std::string at;
      for (const int line : lines) at.append(" ").append(std::to_string(line));
      EXPECT_EQ(search.cells()[static_cast<std::size_t>(v)].gain, best.gain)
          << "FOLDYARD_SEED=" << seed << ": " << test::text(c) << "; folds at" << at << ", length " << height;
      if (HasFailure()) return;
    }
  }
}

INSTANTIATE_TEST_SUITE_P(LayoutsAt, EveryGivenWay, testing::ValuesIn(all_ways(6)), test::way_title);

}  // namespace
}  // namespace foldyard
