#include "inspect/inspect_plan.h"

#include <gtest/gtest.h>

#include "core/inspect/sound_plans.h"
#include "core/support/fold_ways.h"
#include "core/support/lengths.h"

namespace foldyard {
namespace {

using test::kOpen;
using test::mm;

const std::vector<std::string> kNothing;

TEST(InspectPlan, PassesASoundPlanOfEachFoldWay) {
  struct Row {
    const char* name;
    Sound (*make)();
    std::int64_t carriers;  // of two lengths
  };
  const Row rows[] = {
      {"selvedge to selvedge", selvedge_to_selvedge, 6},
      {"open", open, 6},
      {"open, turned", open_turned, 2},
      {"off-centre", off_centre, 4},
      {"both edges in", both_edges_in, 4},
      {"thirds", thirds, 4},
      {"quarters", quarters, 2},
      {"fan of five", fan_of_five, 4},
      {"end to end", end_to_end, 18},
      {"open, end to end", open_end_to_end, 2},
      {"selvedge slit", selvedge_slit, 0},
  };
  for (const Row& row : rows) {
    SCOPED_TRACE(row.name);
    const Sound sound = row.make();
    EXPECT_EQ(inspect_plan(sound.job, sound.plan), kNothing);
    EXPECT_EQ(sound.plan.yield[0], row.carriers);
  }
}

// Worked by hand, not by the builder. A length: 900 × 1500, one carrier on the
// fold ([0,225]) and two through both plies ([225,675]); two of them.
//   worth   6 × 3 = 18
//   used    6 × 450 × 900 mm² = 2 430 000 mm², a mm² is 320² square units
//   roll    20 + 2 × 910 + 500 + 20 = 2360 mm, the remnant lies on 1840 … 2340
//   cuts    2 in one lay, travel 2 × 900 = 1800 mm
//   time    60 + 2 × 20 + 2 × 30 + 40 + 2 × 10 + 6 × 5 + (1.8 + 2 × 1.5) × 20
//           = 346 s, with 10 % 380.6 s
//   net     18 − 380.6 / 100 = 14.194
TEST(InspectPlan, AgreesWithTheExampleWorkedByHand) {
  Sound sound = selvedge_to_selvedge();
  Plan& plan = sound.plan;
  sound.roll().length = Length::mm(2360);
  plan.lengths = {{0, mm(20, 930)}, {0, mm(930, 1840)}};
  plan.remnant = mm(1840, 2340);
  plan.remnant_kept = true;
  plan.yield = {6, 0};
  plan.worth = Worth::whole(18);
  plan.net = Worth::parts(141'940);
  plan.used = Area::square_units(2'430'000LL * 320 * 320);
  plan.cloth = Area::square_units(1500LL * 2360 * 320 * 320);
  plan.cuts = 2;
  plan.cross_cuts = 2;
  plan.travel = Length::mm(1800);
  plan.time = Duration::ms(380'600);
  plan.proof = {Worth::whole(18), true, ""};
  EXPECT_EQ(inspect_plan(sound.job, plan), kNothing);
}

TEST(InspectPlan, FindsWhatNamesNothing) {
  expect_found({
      {"no such roll",
       selvedge_to_selvedge,
       [](Sound& s) { s.plan.roll = 1; },
       {"The plan names no roll of the job."}},
      {"roll below zero",
       selvedge_to_selvedge,
       [](Sound& s) { s.plan.roll = -1; },
       {"The plan names no roll of the job."}},
      {"no such placed panel",
       selvedge_to_selvedge,
       [](Sound& s) { s.pattern().panels[0].panel = 2; },
       {"Pattern 1: a placed panel names no panel of the job."}},
      {"no such taken panel",
       selvedge_to_selvedge,
       [](Sound& s) { s.node(1).panel = -1; },
       {"Pattern 1: a taken rectangle names no panel of the job."}},
  });
}

TEST(InspectPlan, SaysEveryBreachAtOnce) {
  Sound sound = selvedge_to_selvedge();
  sound.plan.remnant_kept = false;
  sound.plan.cuts = 3;
  sound.job.table.length = Length::mm(899);
  EXPECT_EQ(inspect_plan(sound.job, sound.plan).size(), 3u);
}

TEST(InspectPlan, IsSilentOnNoLengthAtAll) {
  Sound sound = bare({kOpen, {}, {0}, 1500, 1});
  sound.plan.patterns.clear();
  sound.plan.lays.clear();
  sound.plan.lengths.clear();
  sound.plan.cuts = sound.plan.cross_cuts = 0;
  sound.plan.travel = Length();
  sound.plan.remnant.from = Length::mm(20);
  sound.plan.time = Duration::seconds(66);  // unroll 60 s and 10 %
  sound.plan.net = Worth::parts(-6600);
  EXPECT_EQ(inspect_plan(sound.job, sound.plan), kNothing);
}

}  // namespace

}  // namespace foldyard
