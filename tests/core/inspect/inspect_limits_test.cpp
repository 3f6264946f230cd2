#include <gtest/gtest.h>

#include "core/inspect/sound_plans.h"
#include "inspect/inspect_plan.h"

namespace foldyard {

namespace {

// One length of the sample folded selvedge to selvedge gives three carriers, one
// on the fold and two through both plies; its lay is two lengths: six.
Sound at_most(std::int64_t carriers) {
  Sound sound = selvedge_to_selvedge();
  sound.job.panels[0].at_most = carriers;
  return sound;
}

TEST(InspectLimits, PassesAPlanThatJustKeepsThem) {
  Sound sound = at_most(6);
  sound.job.panels[1].at_most = 0;  // pouches, of which there are none
  EXPECT_EQ(inspect_plan(sound.job, sound.plan), std::vector<std::string>());
}

TEST(InspectLimits, CountsEveryPlyAndEveryLengthOfALay) {
  expect_found({{"one too many",
                 selvedge_to_selvedge,
                 [](Sound& s) { s.job.panels[0].at_most = 5; },
                 {"Of carrier, 6 are cut, but at most 5 are wanted."}},
                {"none wanted",
                 selvedge_to_selvedge,
                 [](Sound& s) { s.job.panels[0].at_most = 0; },
                 {"Of carrier, 6 are cut, but at most 0 are wanted."}}});
}

// As many as the plan yields pass, one less does not, whatever the fold.
TEST(InspectLimits, CountsEachWayOfFoldingByItsPlies) {
  for (Sound (*make)() : {open, open_turned, off_centre, both_edges_in, thirds, quarters, fan_of_five,
                          end_to_end, open_end_to_end}) {
    Sound sound = make();
    const std::int64_t yield = sound.plan.yield[0];
    sound.job.panels[0].at_most = yield;
    EXPECT_EQ(inspect_plan(sound.job, sound.plan).size(), 0u);
    sound.job.panels[0].at_most = yield - 1;
    EXPECT_EQ(inspect_plan(sound.job, sound.plan).size(), yield > 0 ? 1u : 0u);
  }
}

TEST(InspectLimits, CountsNoPanelThatAFlawSpoils) {
  Sound sound = at_most(5);
  sound.plan.lost = {{0, 0, 0}};
  for (const std::string& sentence : inspect_plan(sound.job, sound.plan))
    EXPECT_EQ(sentence.find("are wanted"), std::string::npos) << sentence;
}

}  // namespace
}  // namespace foldyard
