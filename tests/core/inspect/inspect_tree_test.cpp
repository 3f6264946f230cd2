#include <gtest/gtest.h>

#include "core/inspect/sound_plans.h"
#include "inspect/inspect_plan.h"

namespace foldyard {

namespace {

TEST(InspectTree, FindsCutsThatDoNotDivideTheCloth) {
  expect_found({
      {"child that is not there",
       selvedge_to_selvedge,
       [](Sound& s) { s.node(0).second = 9; },
       {"Pattern 1: node 9 of the cuts does not exist."}},
      {"child below zero",
       selvedge_to_selvedge,
       [](Sound& s) { s.node(0).first = -1; },
       {"Pattern 1: node -1 of the cuts does not exist."}},
      {"no node at all",
       selvedge_to_selvedge,
       [](Sound& s) { s.pattern().tree.nodes.clear(); },
       {"Pattern 1: node 0 of the cuts does not exist."}},
      {"a child twice",
       selvedge_to_selvedge,
       [](Sound& s) { s.node(0).second = 1; },
       {"Pattern 1: node 1 of the cuts is reached twice.",
        "Pattern 1: node 1 of the cuts is not the rectangle that its cuts leave."}},
      {"a circle",
       selvedge_to_selvedge,
       [](Sound& s) { s.node(2).second = 0; },
       {"Pattern 1: node 0 of the cuts is reached twice.",
        "Pattern 1: node 0 of the cuts is not the rectangle that its cuts leave."}},
      {"a node that no cut reaches",
       selvedge_to_selvedge,
       [](Sound& s) { s.pattern().tree.nodes.push_back(s.node(4)); },
       {"Pattern 1: node 5 of the cuts is reached by no cut."}},
      {"a unit too wide",
       selvedge_to_selvedge,
       [](Sound& s) { s.node(4).rect.across.to += Length::units(1); },
       {"Pattern 1: node 4 of the cuts is not the rectangle that its cuts leave."}},
      {"root not the whole cloth",
       selvedge_to_selvedge,
       [](Sound& s) { s.node(0).rect.along.to = Length::mm(899); },
       {"Pattern 1: node 0 of the cuts is not the rectangle that its cuts leave."}},
      {"cut on the rim",
       selvedge_to_selvedge,
       [](Sound& s) { s.node(0).at = Length(); },
       {"Pattern 1: node 0 of the cuts is not cut inside."}},
      {"cut outside",
       selvedge_to_selvedge,
       [](Sound& s) { s.node(2).at = Length::mm(200); },
       {"Pattern 1: node 2 of the cuts is not cut inside."}},
  });
}

TEST(InspectTree, FindsAWrongListOfCuts) {
  expect_found({
      {"a cut left out",
       selvedge_to_selvedge,
       [](Sound& s) {
         s.pattern().cuts.pop_back();
         settle(s);
       },
       {"Pattern 1: the number of cuts is given as 1, but comes to 2."}},
      {"cuts in another order",
       selvedge_to_selvedge,
       [](Sound& s) { std::swap(s.pattern().cuts[0], s.pattern().cuts[1]); },
       {"Pattern 1: cut 1 is not the one that comes then.",
        "Pattern 1: cut 2 is not the one that comes then."}},
      {"another direction",
       selvedge_to_selvedge,
       [](Sound& s) { s.pattern().cuts[1].direction = Direction::across; },
       {"Pattern 1: cut 2 is not the one that comes then."}},
      {"another place",
       selvedge_to_selvedge,
       [](Sound& s) { s.pattern().cuts[0].at += Length::units(1); },
       {"Pattern 1: cut 1 is not the one that comes then."}},
      {"another span",
       selvedge_to_selvedge,
       [](Sound& s) { s.pattern().cuts[1].over.to = Length::mm(899); },
       {"Pattern 1: cut 2 is not the one that comes then."}},
      {"travel",
       selvedge_to_selvedge,
       [](Sound& s) {
         s.pattern().travel = Length::mm(1801);
         settle(s);
       },
       {"Pattern 1: the travel of the cutter is given as 1801 mm, but comes to 1800 mm."}},
  });
}

TEST(InspectTree, FindsCutsTooNearAFoldEdge) {
  expect_found({
      {"along",
       selvedge_to_selvedge,
       [](Sound& s) { s.job.losses.fold_trim = Length::mm(225) + Length::units(1); },
       {"Pattern 1: the cut along at 225 mm runs too near a fold edge."}},
      // 575 lies 225 from the right-hand fold at 800.
      {"along, from both folds",
       both_edges_in,
       [](Sound& s) { s.job.losses.fold_trim = Length::mm(226); },
       {"Pattern 1: the cut along at 225 mm runs too near a fold edge.",
        "Pattern 1: the cut along at 575 mm runs too near a fold edge."}},
      {"across the end fold",
       open_end_to_end,
       [](Sound& s) { s.job.losses.fold_trim = Length::mm(451); },
       {"Pattern 1: the cut across at 450 mm runs too near a fold edge."}},
      {"beside the selvedge",
       selvedge_slit,
       [](Sound& s) {
         s.roll().fabric.selvedge = Length::mm(9);
         fill_rests(s);
       },
       {"Pattern 1: the cut along at 2 mm runs too near a fold edge."}},
  });
}

TEST(InspectTree, PassesACutJustFarEnough) {
  Sound sound = selvedge_to_selvedge();
  sound.job.losses.fold_trim = Length::mm(225);
  EXPECT_EQ(inspect_plan(sound.job, sound.plan), std::vector<std::string>());
}

// Once the cloth at the fold is cut off, what is left has no fold to keep from:
// the cut at 675 comes after that at 225 and lies within 500 of the fold.
TEST(InspectTree, KeepsOnlyFromFoldsInTheClothBeingCut) {
  Sound sound = selvedge_to_selvedge();
  sound.job.losses.fold_trim = Length::mm(700);
  EXPECT_EQ(
      inspect_plan(sound.job, sound.plan),
      std::vector<std::string>{"Pattern 1: the cut along at 225 mm runs too near a fold edge."});
}

}  // namespace

}  // namespace foldyard
