#include <gtest/gtest.h>

#include "core/inspect/sound_plans.h"
#include "core/support/lengths.h"
#include "inspect/inspect_plan.h"

namespace foldyard {
namespace {

using test::mm;

Span& on_roll(Sound& s, std::size_t number) {
  return s.plan.lengths[number - 1].on_roll;
}

// The plan's lengths lie on 20 … 930 … 1840, the remnant on 1840 … 2340.
TEST(InspectRoll, FindsLengthsThatDoNotLieEndToEnd) {
  expect_found({
      {"begins before the squared end",
       selvedge_to_selvedge,
       [](Sound& s) { on_roll(s, 1) = mm(19, 929); },
       {"Length 1: it begins at 19 mm on the roll and not at 20 mm.",
        "Length 2: it begins at 930 mm on the roll and not at 929 mm."}},
      {"a gap",
       selvedge_to_selvedge,
       [](Sound& s) {
         on_roll(s, 2) = mm(931, 1841);
         s.plan.remnant.from = Length::mm(1841);
       },
       {"Length 2: it begins at 931 mm on the roll and not at 930 mm."}},
      {"without its allowance",
       selvedge_to_selvedge,
       [](Sound& s) {
         on_roll(s, 2).to = Length::mm(1830);
         s.plan.remnant.from = Length::mm(1830);
       },
       {"Length 2: its size along the roll is given as 900 mm, but comes to 910 mm."}},
      {"beyond the cloth",
       selvedge_to_selvedge,
       [](Sound& s) {
         s.roll().length = Length::mm(1850);
         settle(s);
       },
       {"The lengths run to 1840 mm on the roll, beyond the cloth that ends at 1830 mm."}},
  });
}

TEST(InspectRoll, FindsAWrongRemnant) {
  expect_found({
      {"remnant elsewhere",
       selvedge_to_selvedge,
       [](Sound& s) { s.plan.remnant.to = Length::mm(2360); },
       {"The remnant of the roll does not lie from 1840 mm to 2340 mm."}},
      {"remnant forgotten",
       selvedge_to_selvedge,
       [](Sound& s) { s.plan.remnant = {}; },
       {"The remnant of the roll does not lie from 1840 mm to 2340 mm."}},
      {"given away",
       selvedge_to_selvedge,
       [](Sound& s) { s.plan.remnant_kept = false; },
       {"The remnant of the roll is large enough to keep but given away."}},
      {"too short",
       selvedge_to_selvedge,
       [](Sound& s) { s.job.losses.keep_along = Length::mm(500) + Length::units(1); },
       {"The remnant of the roll is kept but too small."}},
      {"too narrow",
       selvedge_to_selvedge,
       [](Sound& s) { s.job.losses.keep_across = Length::mm(1501); },
       {"The remnant of the roll is kept but too small."}},
      {"empty but kept",
       selvedge_to_selvedge,
       [](Sound& s) {
         s.roll().length = Length::mm(1860);
         s.job.losses.keep_along = Length();
         settle(s);
         s.plan.remnant_kept = true;
       },
       {"The remnant of the roll is kept but too small."}},
  });
}

TEST(InspectRoll, FindsLaysThatDoNotHoldTheirLengths) {
  expect_found({
      {"no such lay",
       selvedge_to_selvedge,
       [](Sound& s) { s.plan.lengths[0].lay = 1; },
       {"Length 1: it names no lay of the plan."}},
      {"no such pattern",
       selvedge_to_selvedge,
       [](Sound& s) { s.plan.lays[0].pattern = -1; },
       {"Lay 1: it names no pattern of the plan."}},
      {"a length too few",
       selvedge_to_selvedge,
       [](Sound& s) {
         s.plan.lays[0].lengths = 1;
         settle(s);
       },
       {"Lay 1: the number of lengths is given as 1, but comes to 2."}},
      {"an empty lay",
       selvedge_to_selvedge,
       [](Sound& s) {
         s.plan.lays.push_back({0, 0});
         settle(s);
       },
       {"Lay 2: it holds no length."}},
      {"a pattern not used",
       selvedge_to_selvedge,
       [](Sound& s) { s.plan.patterns.push_back(s.plan.patterns[0]); },
       {"Pattern 2: no lay is cut by it."}},
  });
}

// What is squared already is squared no more: both lengths lie 20 further to the free end, and
// with both ends square the remnant reaches to the end of the roll.
Sound squared_already(Squared squared) {
  Sound s = selvedge_to_selvedge();
  s.roll().squared = squared;
  for (LengthOnRoll& length : s.plan.lengths)
    length.on_roll = {length.on_roll.from - Length::mm(20), length.on_roll.to - Length::mm(20)};
  s.plan.remnant.from = s.plan.remnant.from - Length::mm(20);
  if (squared == Squared::both) s.plan.remnant.to = s.roll().length;
  return s;
}

TEST(InspectRoll, PassesEndsThatAreSquareAlready) {
  for (const Squared squared : {Squared::free_end, Squared::both}) {
    Sound s = squared_already(squared);
    EXPECT_EQ(inspect_plan(s.job, s.plan), std::vector<std::string>());
    s.plan.remnant.to = squared == Squared::both ? s.roll().length - Length::mm(20) : s.roll().length;
    EXPECT_EQ(inspect_plan(s.job, s.plan).size(), 1u);
    s = squared_already(squared);
    s.roll().squared = Squared::none;
    EXPECT_EQ(inspect_plan(s.job, s.plan).front(), "Length 1: it begins at 0 mm on the roll and not at 20 mm.");
  }
}

}  // namespace

}  // namespace foldyard
