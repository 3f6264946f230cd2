#include <gtest/gtest.h>

#include "core/inspect/sound_plans.h"
#include "inspect/inspect_plan.h"

namespace foldyard {

namespace {

// The right figures are worked out in inspect_plan_test.cpp. Used: 2 430 000
// mm² × 102 400; roll: 1500 × 2360 mm² × 102 400; time: 380.6 s × 320 000 000.
TEST(InspectSums, FindsEveryWrongYieldWorthAndArea) {
  expect_found({
      {"yield",
       selvedge_to_selvedge,
       [](Sound& s) { s.plan.yield[0] = 7; },
       {"The yield of carrier is given as 7, but comes to 6."}},
      {"yield of what is not cut",
       selvedge_to_selvedge,
       [](Sound& s) { s.plan.yield[1] = 1; },
       {"The yield of pouch is given as 1, but comes to 0."}},
      {"yield of too few panels",
       selvedge_to_selvedge,
       [](Sound& s) { s.plan.yield.pop_back(); },
       {"The number of panels in the yield is given as 1, but comes to 2."}},
      {"worth",
       selvedge_to_selvedge,
       [](Sound& s) { s.plan.worth += Worth::parts(1); },
       {"The worth is given as 180001 ten-thousandths, but comes to 180000 ten-thousandths."}},
      {"worth of a pattern",
       selvedge_to_selvedge,
       [](Sound& s) { s.pattern().worth += Worth::parts(1); },
       {"Pattern 1: its worth is given as 90001 ten-thousandths, but comes to 90000 "
        "ten-thousandths."}},
      {"net worth",
       selvedge_to_selvedge,
       [](Sound& s) { s.plan.net += Worth::parts(1); },
       {"The net worth is given as 141941 ten-thousandths, but comes to 141940 ten-thousandths."}},
      {"used",
       selvedge_to_selvedge,
       [](Sound& s) { s.plan.used += Area::square_units(1); },
       {"The area used is given as 248832000001 square units, but comes to 248832000000 square "
        "units."}},
      {"cloth",
       selvedge_to_selvedge,
       [](Sound& s) { s.plan.cloth -= Area::square_units(1); },
       {"The area of the roll is given as 362495999999 square units, but comes to 362496000000 "
        "square units."}},
  });
}

TEST(InspectSums, FindsEveryWrongCountAndBound) {
  expect_found({
      {"cuts",
       selvedge_to_selvedge,
       [](Sound& s) { s.plan.cuts = 4; },
       {"The number of cuts is given as 4, but comes to 2."}},
      {"cross-cuts",
       selvedge_to_selvedge,
       [](Sound& s) { s.plan.cross_cuts = 3; },
       {"The number of cross-cuts is given as 3, but comes to 2."}},
      {"travel",
       selvedge_to_selvedge,
       [](Sound& s) { s.plan.travel = Length::mm(3600); },
       {"The travel of the cutter is given as 3600 mm, but comes to 1800 mm."}},
      {"time",
       selvedge_to_selvedge,
       [](Sound& s) { s.plan.time += Duration::ticks(1); },
       {"The time is given as 121792000001/320 µs, but comes to 121792000000/320 µs."}},
      {"bound below the worth",
       selvedge_to_selvedge,
       [](Sound& s) { s.plan.proof.bound = Worth::parts(179'999); },
       {"The bound of 179999 ten-thousandths lies below the worth reached."}},
      {"bound below the net worth",
       selvedge_to_selvedge,
       [](Sound& s) {
         s.plan.aim = Aim::worth_less_time;
         s.plan.proof.bound = Worth::parts(141'939);
       },
       {"The bound of 141939 ten-thousandths lies below the net worth reached."}},
  });
}

TEST(InspectSums, BoundsTheNetWorthWhereThatIsTheAim) {
  Sound sound = selvedge_to_selvedge();
  sound.plan.aim = Aim::worth_less_time;
  sound.plan.proof.bound = Worth::parts(141'940);
  EXPECT_EQ(inspect_plan(sound.job, sound.plan), std::vector<std::string>());
}

// Folds by hand for one length: 0, 1, 1, 2, 2, 2, 4, and one more end to end.
// Taking the fold's 30 s away must take 33 s (10 % on top) for each of them.
TEST(InspectSums, CountsTheFoldsOfEachWay) {
  struct Row {
    Sound (*make)();
    int folds;
  };
  for (const Row& row : {Row{open, 0},
                         {selvedge_to_selvedge, 1},
                         {off_centre, 1},
                         {both_edges_in, 2},
                         {thirds, 2},
                         {quarters, 2},
                         {fan_of_five, 4},
                         {open_end_to_end, 1},
                         {end_to_end, 2}}) {
    Sound sound = row.make();
    const Duration saved = Duration::seconds(33) * (2 * row.folds);
    sound.job.pace.fold = Duration();
    sound.plan.time = sound.plan.time - saved;
    sound.plan.net += Worth::parts(3300 * 2 * row.folds);
    EXPECT_EQ(inspect_plan(sound.job, sound.plan), std::vector<std::string>()) << row.folds;
  }
}

// A rate so high that time × rate passes 64 bits: 380.6 s at a million whole an
// hour cost 380.6 × 10^10 / 3600 parts = 1 057 222 222.2, rounded down.
TEST(InspectSums, KeepsLargeProductsExact) {
  Sound sound = selvedge_to_selvedge();
  sound.job.pace.rate = Worth::whole(1'000'000);
  sound.plan.net = Worth::parts(180'000 - 1'057'222'222);
  EXPECT_EQ(inspect_plan(sound.job, sound.plan), std::vector<std::string>());
}

}  // namespace

}  // namespace foldyard
