#include <gtest/gtest.h>

#include "core/inspect/sound_plans.h"
#include "inspect/inspect_plan.h"

namespace foldyard {

namespace {

TEST(InspectTable, FindsWhatDoesNotFit) {
  expect_found({
      {"table too short",
       selvedge_to_selvedge,
       [](Sound& s) { s.job.table.length = Length::mm(900) - Length::units(1); },
       {"Pattern 1: folded it is 900 mm long, longer than the table."}},
      {"table too shallow",
       selvedge_to_selvedge,
       [](Sound& s) { s.job.table.depth = Length::mm(750) - Length::units(1); },
       {"Pattern 1: folded it is 750 mm deep, deeper than the table."}},
      {"out of reach from both sides",
       selvedge_to_selvedge,
       [](Sound& s) { s.job.table.reach = Length::mm(374); },
       {"Pattern 1: folded it is 750 mm deep, deeper than the cutter reaches."}},
      {"out of reach from one side",
       selvedge_to_selvedge,
       [](Sound& s) {
         s.job.table.reach = Length::mm(749);
         s.job.table.both_sides = false;
       },
       {"Pattern 1: folded it is 750 mm deep, deeper than the cutter reaches."}},
      {"thicker than the cutter",
       selvedge_to_selvedge,
       [](Sound& s) { s.job.cutter.height = Length::mm(4) - Length::units(1); },
       {"Lay 1: its 4 plies are thicker than the cutter's height."}},
      {"more plies than the cutter takes",
       selvedge_to_selvedge,
       [](Sound& s) { s.job.cutter.most_plies = 3; },
       {"Lay 1: its 4 plies are more than the cutter may take."}},
  });
}

// 2 lengths of 2 plies of 1 mm: exactly 4 mm; 750 mm deep, 900 mm long.
TEST(InspectTable, PassesWhatJustFits) {
  Sound sound = selvedge_to_selvedge();
  sound.job.table = {Length::mm(900), Length::mm(750), Length::mm(375), true};
  sound.job.cutter = {Length::mm(4), 4};
  EXPECT_EQ(inspect_plan(sound.job, sound.plan), std::vector<std::string>());
}

}  // namespace

}  // namespace foldyard
