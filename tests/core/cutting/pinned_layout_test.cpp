#include "cutting/pinned_layout.h"

#include <gtest/gtest.h>

#include "core/support/fold_ways.h"
#include "core/support/lengths.h"
#include "core/support/small_cloth.h"
#include "core/support/way_title.h"
#include "cutting/given_layout.h"

namespace foldyard {
namespace {

using test::kDeepTable;
using test::kFanOf5;
using test::kFlaps;
using test::kWorthFirst;
using test::SmallCase;
using test::u;

TEST(LayoutsWithin, PutThePinnedFlapWhereItIsPinned) {
  const Fabric fabric{u(1500), u(10), u(1), Nap::none, ""};
  const Grid joint({u(150), u(225), u(300)});
  const PinnedLayouts left = layouts_within(kFlaps, {u(200), std::nullopt}, fabric, kDeepTable, joint);
  ASSERT_EQ(left.layouts.size(), 1u);
  EXPECT_TRUE(left.is_complete);
  EXPECT_EQ(left.layouts[0]->left().least, u(190));
  EXPECT_EQ(left.layouts[0]->left().most, u(190));
  EXPECT_EQ(left.layouts[0]->lines(u(190), u(225)), (std::vector<Length>{u(200), u(1265)}));
  const PinnedLayouts right = layouts_within(kFlaps, {std::nullopt, u(1265)}, fabric, kDeepTable, joint);
  ASSERT_EQ(right.layouts.size(), 1u);
  EXPECT_EQ(right.layouts[0]->right(u(100)).least, u(225));
}

TEST(LayoutsWithin, AreNoneWhereTheFoldCannotLieSo) {
  const Fabric fabric{u(1500), u(10), u(1), Nap::none, ""};
  const Grid joint({u(150), u(225), u(300)});
  EXPECT_TRUE(layouts_within(kFlaps, {u(800), std::nullopt}, fabric, kDeepTable, joint).layouts.empty());
  EXPECT_TRUE(layouts_within(kFlaps, {u(10), std::nullopt}, fabric, kDeepTable, joint).layouts.empty());
  // Inner legs of 100: the five would not reach over 1500.
  EXPECT_TRUE(layouts_within(kFanOf5, {u(90), u(190)}, fabric, kDeepTable, joint).layouts.empty());
}

// Lines 2 and 3 of a fan of five at 550 and 900: inner legs of 350, the first 200
// and the last 250.
TEST(LayoutsWithin, TwoPinnedLinesOfAFanLeaveOneFold) {
  const Fabric fabric{u(1500), u(10), u(1), Nap::none, ""};
  const PinnedLayouts found = layouts_within(kFanOf5, {std::nullopt, u(550), u(900), std::nullopt}, fabric, kDeepTable,
                                             Grid({u(150)}));
  ASSERT_FALSE(found.layouts.empty());
  EXPECT_TRUE(found.is_complete);
  EXPECT_EQ(found.layouts.back()->lines({}, {}), (std::vector<Length>{u(200), u(550), u(900), u(1250)}));
}

// Pins that no equal inner legs reach: 701 is no two legs, and 340 and 360 are not one leg.
TEST(LayoutsWithin, PinsOfAFanWithUnequalLegsLeaveNone) {
  const Fabric fabric{u(1500), u(10), u(1), Nap::none, ""};
  const auto count = [&](const std::vector<std::optional<Length>>& pins) {
    return layouts_within(kFanOf5, pins, fabric, kDeepTable, Grid({u(150)})).layouts.size();
  };
  EXPECT_GT(count({u(200), std::nullopt, u(900), std::nullopt}), 0u);
  EXPECT_EQ(count({u(200), std::nullopt, u(901), std::nullopt}), 0u);
  EXPECT_GT(count({u(200), u(550), u(900), std::nullopt}), 0u);
  EXPECT_EQ(count({u(200), u(540), u(900), std::nullopt}), 0u);
}

class EveryPinnedWay : public testing::TestWithParam<FoldWay> {
 protected:
  static std::vector<test::Lines> with_pin(const std::vector<test::Lines>& all, std::size_t line, int at) {
    std::vector<test::Lines> some;
    for (const test::Lines& lines : all)
      if (lines[line] == at) some.push_back(lines);
    return some;
  }
};

// Against every place of the other lines, slit at every unit: where all folds
// were searched none is better, and never is one given that cannot be had.
TEST_P(EveryPinnedWay, GivesTheBestOfAllFoldsWithTheLineThere) {
  const FoldWay way = GetParam();
  const unsigned first = test::first_seed();
  int compared = 0;
  for (unsigned seed = first; seed < first + 80; ++seed) {
    const SmallCase c = test::throw_small_case(seed, true, kWorthFirst);
    TableSet tables = test::tables_of(c, 1);
    const std::vector<test::Lines> all = test::all_lines(c, way, static_cast<int>(tables.least_flap().units()));
    if (all.empty()) continue;
    test::Dice dice(seed);
    const auto line = static_cast<std::size_t>(dice.from_to(0, way.legs - 2));
    const int at = all[static_cast<std::size_t>(dice.from_to(0, static_cast<int>(all.size()) - 1))][line];
    std::vector<std::optional<Length>> pins(line + 1);
    pins[line] = u(at);
    const PinnedLayouts found = layouts_within(way, pins, test::fabric_of(c, 1),
                                               {tables.fold_trim(), tables.least_flap(), u(c.cloth.depth)}, tables.across(true));
    ASSERT_FALSE(found.layouts.empty()) << "FOLDYARD_SEED=" << seed << ": line " << line << " at " << at;
    test::SlowRectangle rectangles(test::slow_shapes(c.panels, false), c.aim, c.trim);
    test::SlowStrips slow(rectangles, way.end_to_end, 1);
    const StripSearch search(tables, found.layouts, way.end_to_end, 1);
    for (const int v : tables.lengths(way.end_to_end)) {
      const int height = static_cast<int>(tables.along(way.end_to_end)[v].units());
      std::int64_t best = 0;
      for (const test::Lines& lines : with_pin(all, line, at))
        best = std::max<std::int64_t>(best, slow.best(test::SlowFold(c.cloth, lines), height).gain);
      const std::int64_t gain = search.cells()[static_cast<std::size_t>(v)].gain;
      ++compared;
      if (found.is_complete) {
        EXPECT_EQ(gain, best) << "FOLDYARD_SEED=" << seed << ": " << test::text(c) << "; line " << line << " at " << at
                              << ", length " << height;
      } else {
        EXPECT_LE(gain, best) << "FOLDYARD_SEED=" << seed << ": " << test::text(c) << "; line " << line << " at " << at;
      }
      const StripChoice choice = search.choice(v);
      if (choice.layout) {
        EXPECT_EQ(choice.layout->lines(choice.left.size, choice.right.size)[line], u(at));
      }
      if (HasFailure()) return;
    }
  }
  EXPECT_GT(compared, 0);
}

std::vector<FoldWay> found_ways() {
  std::vector<FoldWay> ways;
  for (const FoldWay& way : all_ways(6))
    if (!way.plain && way.legs > 2) ways.push_back(way);
  return ways;
}

INSTANTIATE_TEST_SUITE_P(LayoutsWithin, EveryPinnedWay, testing::ValuesIn(found_ways()), test::way_title);

}  // namespace
}  // namespace foldyard
