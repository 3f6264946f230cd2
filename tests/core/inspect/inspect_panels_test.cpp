#include <gtest/gtest.h>

#include "core/inspect/sound_plans.h"
#include "core/support/fold_ways.h"
#include "core/support/lengths.h"
#include "inspect/inspect_plan.h"

namespace foldyard {
namespace {

using test::kHalf;
using test::mm;
using test::mm_rect;

PlacedPanel& placed(Sound& s, std::size_t i) {
  return s.pattern().panels[i];
}

// Selvedge to selvedge, cut at 450: both plies are joined at the fold, so that
// a carrier on [750, 1200] is never cut free there.
Sound unfreed() {
  Sound sound = bare({kHalf, {750}, {1, 0}, 750, 2});
  cut_along(sound, 0, 450);
  take(sound, 1, 0, false, {{mm_rect(750, 1200, 0, 900)}});
  list_cuts(sound);
  fill_rests(sound);
  settle(sound);
  return sound;
}

TEST(InspectPanels, FindsPanelsThatAreNotTheGoods) {
  expect_found({
      {"size",
       quarters,
       [](Sound& s) {
         s.job.panels[0].across += Length::units(1);
         settle(s);
       },
       {"Pattern 1: panel 1 (carrier) is not cut to its size."}},
      {"size, turned",
       open_turned,
       [](Sound& s) {
         s.job.panels[0].along = Length::mm(901);
         settle(s);
       },
       {"Pattern 1: panel 1 (carrier) is not cut to its size."}},
      {"turned against its grain",
       open_turned,
       [](Sound& s) { s.job.panels[0].may_turn = false; },
       {"Pattern 1: panel 1 (carrier) is turned but may not be."}},
      {"turned on one-way cloth",
       open_turned,
       [](Sound& s) { s.roll().fabric.nap = Nap::one_way; },
       {"Pattern 1: panel 1 (carrier) is turned on one-way cloth."}},
      {"not cut for the wash",
       quarters,
       [](Sound& s) { s.roll().fabric.shrinkage.along = 1; },
       {"Pattern 1: panel 1 (carrier) is not cut to its size."}},
      {"not laid along the pattern",
       quarters,
       [](Sound& s) { s.roll().fabric.railroaded = true; },
       {"Pattern 1: panel 1 (carrier) is not cut to its size."}},
      {"a crease it may not carry",
       selvedge_to_selvedge,
       [](Sound& s) { s.job.panels[0].on_fold = false; },
       {"Pattern 1: panel 1 (carrier) carries a crease but may not."}},
      {"a crease not told",
       selvedge_to_selvedge,
       [](Sound& s) { placed(s, 0).on_fold = false; },
       {"Pattern 1: panel 1 (carrier) carries a crease but is not marked on the fold."}},
      {"an end crease not told",
       open_end_to_end,
       [](Sound& s) { placed(s, 0).on_fold = false; },
       {"Pattern 1: panel 1 (carrier) carries a crease but is not marked on the fold."}},
      {"a crease made up",
       selvedge_to_selvedge,
       [](Sound& s) { placed(s, 1).on_fold = true; },
       {"Pattern 1: panel 2 (carrier) is marked on the fold but carries no crease."}},
  });
}

// Sewn 432 × 873 on cloth that loses 4 % across and 3 % along is cut 450 × 900;
// a unit more or less in the goods wants another size.
TEST(InspectPanels, PassesPanelsCutForTheWash) {
  Sound sound = quarters();
  sound.roll().fabric.shrinkage = {300, 400};
  sound.job.panels[0].across = Length::mm(432);
  sound.job.panels[0].along = Length::mm(873);
  EXPECT_EQ(inspect_plan(sound.job, sound.plan), std::vector<std::string>{});
  for (const int units : {-2, 1}) {
    Sound other = sound;
    other.job.panels[0].along += Length::units(units);
    EXPECT_EQ(inspect_plan(other.job, other.plan),
              std::vector<std::string>{"Pattern 1: panel 1 (carrier) is not cut to its size."});
  }
}

TEST(InspectPanels, LaysPanelsAlongThePatternOfRailroadedCloth) {
  Sound sound = quarters();
  sound.roll().fabric.railroaded = true;
  std::swap(sound.job.panels[0].across, sound.job.panels[0].along);
  EXPECT_EQ(inspect_plan(sound.job, sound.plan), std::vector<std::string>{});
  sound.job.panels[0].grain = Grain::warp;
  EXPECT_EQ(inspect_plan(sound.job, sound.plan),
            std::vector<std::string>{"Pattern 1: panel 1 (carrier) is not cut to its size."});
}

TEST(InspectPanels, FindsPanelsWhereNoneCanBe) {
  expect_found({
      {"in the selvedges",
       selvedge_to_selvedge,
       [](Sound& s) {
         s.roll().fabric.selvedge = Length::mm(75) + Length::units(1);
         fill_rests(s);
       },
       {"Pattern 1: panel 2 (carrier) lies outside the usable width.",
        "Pattern 1: panel 3 (carrier) lies outside the usable width."}},
      {"off the length",
       selvedge_to_selvedge,
       [](Sound& s) { placed(s, 1).flat.along = mm(1, 901); },
       {"Pattern 1: panel 2 (carrier) lies outside the length.",
        "Pattern 1: panel 2 (carrier) does not fold onto its place in the folded cloth.",
        "Pattern 1: panel 2 runs off the cloth."}},
      {"under another rectangle",
       selvedge_to_selvedge,
       [](Sound& s) { placed(s, 1).folded = placed(s, 0).folded; },
       {"Pattern 1: panel 2 (carrier) does not fold onto its place in the folded cloth."}},
      {"aside of its crease",
       both_edges_in,
       [](Sound& s) {
         placed(s, 0).flat.across = mm(76, 526);
         fill_rests(s);
       },
       {"Pattern 1: panel 1 (carrier) does not fold onto its place in the folded cloth."}},
      {"from a rectangle left",
       quarters,
       [](Sound& s) { s.node(1).kind = NodeKind::leave; },
       {"Pattern 1: panel 1 (carrier) comes from no taken rectangle."}},
      {"from no rectangle",
       quarters,
       [](Sound& s) { placed(s, 0).folded.along.to = Length::mm(899); },
       {"Pattern 1: panel 1 (carrier) does not fold onto its place in the folded cloth.",
        "Pattern 1: panel 1 (carrier) comes from no taken rectangle.",
        "Pattern 1: the rectangle taken at 0 mm across and 0 mm along gives no panel."}},
      {"from another panel's rectangle",
       quarters,
       [](Sound& s) { s.node(1).panel = 1; },
       {"Pattern 1: panel 1 (carrier) is not the one its rectangle is taken for."}},
      {"from a turned rectangle",
       quarters,
       [](Sound& s) { s.node(1).turned = true; },
       {"Pattern 1: panel 1 (carrier) does not lie as its rectangle is taken."}},
      {"a rectangle that gives none",
       selvedge_to_selvedge,
       [](Sound& s) {
         s.pattern().panels.erase(s.pattern().panels.begin());
         fill_rests(s);
         settle(s);
       },
       {"Pattern 1: the rectangle taken at 0 mm across and 0 mm along gives no panel."}},
  });
}

// A panel that is cut to an odd number of units cannot be the least even one.
TEST(InspectPanels, FindsPanelsCutForTheWashToAnOddSize) {
  Sound sound = quarters();
  sound.roll().fabric.shrinkage = {300, 400};
  sound.job.panels[0].across = Length::mm(432);
  sound.job.panels[0].along = Length::mm(873);
  placed(sound, 0).flat.along.to += Length::units(1);
  const auto found = inspect_plan(sound.job, sound.plan);
  ASSERT_FALSE(found.empty());
  EXPECT_EQ(found.front(), "Pattern 1: panel 1 (carrier) is not cut to its size.");
}

// The ends meet at 900, from where the carrier reaches to the end of its ply.
TEST(InspectPanels, FindsAPanelThatNoCutFreesFromTheEndFold) {
  Sound sound = bare({test::kOpenEndToEnd, {}, {0}, 1500, 2, 1800});
  cut_along(sound, 0, 10);
  cut_along(sound, 2, 460);
  take(sound, 3, 0, false, {{mm_rect(10, 460, 900, 1800)}});
  list_cuts(sound);
  fill_rests(sound);
  settle(sound);
  EXPECT_EQ(inspect_plan(sound.job, sound.plan),
            std::vector<std::string>{"Pattern 1: panel 1 (carrier) ends on a fold edge, where no cut frees it."});
}

TEST(InspectPanels, FindsAPanelThatNoCutFreesFromTheFold) {
  const Sound sound = unfreed();
  EXPECT_EQ(
      inspect_plan(sound.job, sound.plan),
      std::vector<std::string>{"Pattern 1: panel 1 (carrier) ends on a fold edge, where no cut "
                               "frees it."});
}

}  // namespace

}  // namespace foldyard
