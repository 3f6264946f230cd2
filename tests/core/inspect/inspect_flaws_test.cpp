#include <gtest/gtest.h>

#include "core/inspect/sound_plans.h"
#include "core/support/lengths.h"
#include "inspect/inspect_plan.h"

namespace foldyard {
namespace {

using test::mm;

// The lengths lie on 20 … 930 and 930 … 1840, their patterns, with half the
// allowance of 10 before them, on 25 … 925 and 935 … 1835. A stain on 400 … 450
// along and 500 … 530 across touches the carriers on 525 … 975 (cut on the
// fold) and 75 … 525 of length 1. Two carriers of worth 3 are lost; the time
// stays, as they are cut.
Sound stained() {
  Sound s = selvedge_to_selvedge();
  s.roll().flaws = {{mm(400, 450), mm(500, 530), "stain"}};
  s.plan.lost = {{0, 0, 0}, {0, 1, 0}};
  s.plan.yield[0] -= 2;
  s.plan.worth = s.plan.worth - Worth::whole(6);
  s.plan.net = s.plan.net - Worth::whole(6);
  s.plan.used -= Length::mm(450) * Length::mm(900) * 2;
  return s;
}

// The same cut with 60 of the roll left out before length 2 (930 … 990).
Sound cut_out() {
  Sound s = selvedge_to_selvedge();
  s.plan.lengths[1].on_roll = mm(990, 1900);
  s.plan.cut_out = {mm(930, 990)};
  s.plan.remnant.from = Length::mm(1900);
  s.roll().flaws = {{mm(930, 990), mm(0, 1500), "seam"}};
  return s;
}

TEST(InspectFlaws, PassesPanelsThatAreRightlyLost) {
  const Sound s = stained();
  EXPECT_EQ(inspect_plan(s.job, s.plan), std::vector<std::string>());
}

TEST(InspectFlaws, PassesClothThatIsCutOut) {
  const Sound s = cut_out();
  EXPECT_EQ(inspect_plan(s.job, s.plan), std::vector<std::string>());
}

// A flaw may lie in the allowance, between two panels' rims, in a selvedge or
// in an offcut, and takes nothing.
TEST(InspectFlaws, PassesFlawsThatOnlyMeetTheRimsOfPanels) {
  for (const Flaw& flaw : {Flaw{mm(20, 25), mm(0, 1500), ""},
                           {mm(925, 935), mm(0, 1500), ""},
                           {mm(0, 2360), mm(0, 75), ""},
                           {mm(0, 2360), mm(1425, 1500), ""}}) {
    Sound s = selvedge_to_selvedge();
    s.roll().flaws = {flaw};
    EXPECT_EQ(inspect_plan(s.job, s.plan), std::vector<std::string>()) << flaw.along.from.in_mm();
  }
}

TEST(InspectFlaws, FindsEveryWrongListOfLostPanels) {
  expect_found({
      {"one counts as whole", stained, [](Sound& s) { s.plan.lost.pop_back(); },
       {"Length 1: panel 2 (carrier) touches flaw 1 but counts as whole."}},
      {"one too many", stained, [](Sound& s) { s.plan.lost.push_back({1, 0, 0}); },
       {"Length 2: panel 1 (carrier) is given as lost but touches no flaw."}},
      {"another flaw", stained,
       [](Sound& s) {
         s.roll().flaws.push_back({mm(430, 440), mm(500, 530), "knot"});
         s.plan.lost[1].flaw = 1;
       },
       {"Length 1: panel 2 (carrier) is given as lost to flaw 2 but the first that it touches is "
        "flaw 1."}},
      {"no such length", stained, [](Sound& s) { s.plan.lost.push_back({2, 0, 0}); },
       {"Lost panel 3: it names no panel of a length."}},
      {"no such panel", stained, [](Sound& s) { s.plan.lost.push_back({1, 3, 0}); },
       {"Lost panel 3: it names no panel of a length."}},
      {"a length before the first", stained,
       [](Sound& s) { s.plan.lost.insert(s.plan.lost.begin(), {-1, 0, 0}); },
       {"Lost panel 1: it names no panel of a length."}},
      {"a panel before the first", stained, [](Sound& s) { s.plan.lost.push_back({1, -1, 0}); },
       {"Lost panel 3: it names no panel of a length."}},
      {"lengths out of order", stained,
       [](Sound& s) {
         s.plan.lost[1].length = 1;
         std::swap(s.plan.lost[0], s.plan.lost[1]);
       },
       {"Length 2: panel 2 (carrier) is given as lost but touches no flaw.",
        "Length 1: panel 2 (carrier) touches flaw 1 but counts as whole.",
        "The lost panels are not given once each in the order of lengths and panels."}},
      {"out of order", stained, [](Sound& s) { std::swap(s.plan.lost[0], s.plan.lost[1]); },
       {"The lost panels are not given once each in the order of lengths and panels."}},
      {"twice", stained, [](Sound& s) { s.plan.lost.push_back({0, 1, 0}); },
       {"The lost panels are not given once each in the order of lengths and panels."}},
  });
}

TEST(InspectFlaws, FindsLostPanelsThatAreCountedAllTheSame) {
  expect_found({
      {"in the yield", stained, [](Sound& s) { ++s.plan.yield[0]; },
       {"The yield of carrier is given as 5, but comes to 4."}},
      {"in the worth", stained,
       [](Sound& s) { s.plan.worth += Worth::whole(3); },
       {"The worth is given as 150000 ten-thousandths, but comes to 120000 ten-thousandths."}},
      {"in the area used", stained,
       [](Sound& s) { s.plan.used += Length::mm(450) * Length::mm(900); },
       {"The area used is given as 207360000000 square units, but comes to 165888000000 square "
        "units."}},
  });
}

TEST(InspectFlaws, FindsEveryWrongCutOut) {
  expect_found({
      {"forgotten", cut_out, [](Sound& s) { s.plan.cut_out.clear(); },
       {"Length 2: it begins at 990 mm on the roll and not at 930 mm."}},
      {"too short", cut_out, [](Sound& s) { s.plan.cut_out[0].to = Length::mm(980); },
       {"Cut-out 1: it does not lie from 930 mm to the next length at 990 mm."}},
      {"begins in a length", cut_out, [](Sound& s) { s.plan.cut_out[0].from = Length::mm(920); },
       {"Cut-out 1: it does not lie from 930 mm to the next length at 990 mm."}},
      {"behind all lengths", cut_out,
       [](Sound& s) { s.plan.cut_out.push_back(mm(1900, 1910)); },
       {"Cut-out 2: no length follows it."}},
      {"empty", selvedge_to_selvedge, [](Sound& s) { s.plan.cut_out = {mm(20, 20)}; },
       {"Cut-out 1: it does not lie from 930 mm to the next length at 930 mm."}},
  });
}

}  // namespace

}  // namespace foldyard
