#include <gtest/gtest.h>

#include "core/inspect/sound_plans.h"
#include "core/support/fold_ways.h"
#include "inspect/inspect_plan.h"

namespace foldyard {
namespace {

using test::kFlaps;
using test::kHalf;
using test::kPlainFlaps;
using test::kPlainQuarters;
using test::kPlainThirds;
using test::kThirds;

std::vector<std::string> found_in(const Bare& fold) {
  const Sound sound = bare(fold);
  return inspect_plan(sound.job, sound.plan);
}

TEST(InspectFold, FindsLinesAndLevelsThatFoldNothing) {
  expect_found({
      {"another way than the plan's",
       selvedge_to_selvedge,
       [](Sound& s) { s.plan.way.plain = false; },
       {"Pattern 1: its way of folding is not that of the plan."}},
      {"number of legs",
       selvedge_to_selvedge,
       [](Sound& s) { s.plan.way.legs = s.pattern().fold.way.legs = 3; },
       {"Pattern 1: the number of legs does not belong to its way of folding."}},
      {"a line too many",
       selvedge_to_selvedge,
       [](Sound& s) {
         s.pattern().fold.lines.push_back(Length::mm(800));
         s.pattern().fold.levels.push_back(2);
       },
       {"Pattern 1: the number of fold lines does not belong to its way."}},
      {"a line at the selvedge",
       selvedge_to_selvedge,
       [](Sound& s) { s.pattern().fold.lines[0] = Length(); },
       {"Pattern 1: the fold lines do not ascend inside the width."}},
      {"a line at the far selvedge",
       selvedge_to_selvedge,
       [](Sound& s) { s.pattern().fold.lines[0] = Length::mm(1500); },
       {"Pattern 1: the fold lines do not ascend inside the width."}},
      {"lines out of order",
       thirds,
       [](Sound& s) { std::swap(s.pattern().fold.lines[0], s.pattern().fold.lines[1]); },
       {"Pattern 1: the fold lines do not ascend inside the width."}},
      {"two legs at one level",
       selvedge_to_selvedge,
       [](Sound& s) {
         s.pattern().fold.levels = {1, 1};
       },
       {"Pattern 1: the levels do not put each leg at one place of the stack."}},
      {"a level too few",
       selvedge_to_selvedge,
       [](Sound& s) { s.pattern().fold.levels = {0}; },
       {"Pattern 1: the levels do not put each leg at one place of the stack."}},
      {"fewer levels than legs",
       selvedge_to_selvedge,
       [](Sound& s) { s.pattern().fold.levels.pop_back(); },
       {"Pattern 1: the levels do not put each leg at one place of the stack."}},
      {"no length",
       selvedge_to_selvedge,
       [](Sound& s) {
         s.pattern().length = Length();
         settle(s);
       },
       {"Pattern 1: its length is not above zero."}},
      {"odd length end to end",
       end_to_end,
       [](Sound& s) {
         s.pattern().length += Length::units(1);
         settle(s);
       },
       {"Pattern 1: its length cannot be halved end to end."}},
  });
}

TEST(InspectFold, FindsBrokenPromises) {
  expect_found({
      {"one-way cloth end to end",
       end_to_end,
       [](Sound& s) { s.roll().fabric.nap = Nap::one_way; },
       {"Pattern 1: one-way cloth is folded end to end."}},
      {"one-way railroaded cloth folded along",
       selvedge_to_selvedge,
       [](Sound& s) {
         s.roll().fabric.nap = Nap::one_way;
         s.roll().fabric.railroaded = true;
         std::swap(s.job.panels[0].across, s.job.panels[0].along);
       },
       {"Pattern 1: one-way cloth whose nap runs across is folded along the roll."}},
      {"not at half the width",
       off_centre,
       [](Sound& s) {
         s.plan.way = s.pattern().fold.way = kHalf;
       },
       {"Pattern 1: the fold line of selvedge to selvedge is not at half the width."}},
      {"folded size across",
       selvedge_to_selvedge,
       [](Sound& s) { s.pattern().folded_across += Length::units(1); },
       {"Pattern 1: the folded size across is given as 750 mm (240001 units of 1/320 mm), but "
        "comes "
        "to 750 mm."}},
      {"folded size along",
       end_to_end,
       [](Sound& s) { s.pattern().folded_along = Length::mm(1361); },
       {"Pattern 1: the folded size along is given as 1361 mm, but comes to 1360 mm."}},
      {"plies",
       both_edges_in,
       [](Sound& s) { s.pattern().plies = 3; },
       {"Pattern 1: the number of plies is given as 3, but comes to 2."}},
      {"plies end to end",
       end_to_end,
       [](Sound& s) { s.pattern().plies = 2; },
       {"Pattern 1: the number of plies is given as 2, but comes to 4."}},
  });
}

TEST(InspectFold, FindsAFoldThatIsNotWhatItsWayNames) {
  struct Row {
    const char* name;
    Bare fold;
    std::string expected;
  };
  // Folded sizes and plies by hand: follow the cloth leg by leg, e.g. legs 600,
  // 500, 400 to and fro run 0 → 600 → 100 → 500: 600 across, 3 plies.
  const Row rows[] = {
      {"flaps overlap",
       {kFlaps, {500, 1000}, {1, 0, 2}, 500, 3},
       "the flaps of both edges in overlap each other"},
      {"flaps below",
       {kFlaps, {300, 1100}, {0, 1, 2}, 800, 2},
       "the flaps of both edges in do not lie on top"},
      {"plain flaps",
       {kPlainFlaps, {300, 1100}, {1, 0, 2}, 800, 2},
       "the folds of both edges in are plain but not at a quarter of the width"},
      {"inner legs",
       {{FoldKind::fan, 4, false, false}, {300, 700, 1150}, {0, 1, 2, 3}, 450, 4},
       "the inner legs differ"},
      {"first leg",
       {kThirds, {600, 1100}, {0, 1, 2}, 600, 3},
       "the first leg is longer than the inner legs"},
      {"last leg",
       {kThirds, {400, 900}, {0, 1, 2}, 600, 3},
       "the last leg is longer than the inner legs"},
      {"plain thirds",
       {kPlainThirds, {490, 1000}, {0, 1, 2}, 510, 3},
       "the fold is plain but its legs are not an equal share of the width"},
      {"to and fro",
       {kThirds, {500, 1000}, {1, 0, 2}, 500, 3},
       "the legs of the fan do not run to and fro"},
      {"double twice",
       {kPlainQuarters, {375, 750, 1125}, {0, 1, 2, 3}, 375, 4},
       "the legs in quarters cannot come from folding double twice"},
      {"one pair of legs over the other",
       {kPlainQuarters, {375, 750, 1125}, {2, 3, 1, 0}, 375, 4},
       "the legs in quarters cannot come from folding double twice"},
      {"tangled the other way round",
       {kPlainQuarters, {375, 750, 1125}, {3, 1, 0, 2}, 375, 4},
       "folds 1 and 3 pass through each other"},
      {"tangled",
       {kPlainQuarters, {375, 750, 1125}, {2, 0, 1, 3}, 375, 4},
       "folds 1 and 3 pass through each other"},
  };
  for (const Row& row : rows) {
    SCOPED_TRACE(row.name);
    EXPECT_EQ(found_in(row.fold), std::vector<std::string>{"Pattern 1: " + row.expected + "."});
  }
}

// Leg 0 (600 long, level 1) lies between legs 1 and 2, joined at 500, and
// reaches past that fold.
TEST(InspectFold, FindsClothThatPassesThroughAFold) {
  const std::vector<std::string> expected = {
      "Pattern 1: the legs of the fan do not run to and fro.",
      "Pattern 1: the first leg is longer than the inner legs.",
      "Pattern 1: a leg passes through fold 2.",
  };
  EXPECT_EQ(found_in({kThirds, {600, 1100}, {1, 0, 2}, 600, 3}), expected);
}

TEST(InspectFold, PassesEveryStackThatHandsCanMake) {
  const std::vector<std::string> nothing;
  for (const std::vector<int>& levels :
       std::vector<std::vector<int>>{{2, 1, 0, 3}, {3, 0, 1, 2}, {1, 2, 3, 0}, {0, 3, 2, 1}}) {
    EXPECT_EQ(found_in({kPlainQuarters, {375, 750, 1125}, levels, 375, 4}), nothing) << levels[0];
  }
  EXPECT_EQ(found_in({kFlaps, {300, 1100}, {2, 0, 1}, 800, 2}), nothing);
  EXPECT_EQ(found_in({kThirds, {500, 1000}, {2, 1, 0}, 500, 3}), nothing);
}

// Width 1500 mm and 1 unit: either of the two whole places nearest the middle.
TEST(InspectFold, TakesEitherHalfOfAnOddWidth) {
  for (const std::int64_t line : {240'000, 240'001}) {
    Sound sound = bare({kHalf, {750}, {1, 0}, 750, 2});
    sound.roll().fabric.width += Length::units(1);
    sound.pattern().fold.lines = {Length::units(line)};
    sound.pattern().folded_across = Length::units(240'001);
    sound.node(0).rect.across.to = Length::units(240'001);
    fill_rests(sound);
    settle(sound);
    EXPECT_EQ(inspect_plan(sound.job, sound.plan), std::vector<std::string>()) << line;
  }
}

}  // namespace

}  // namespace foldyard
