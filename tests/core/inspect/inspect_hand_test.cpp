#include "inspect/inspect_hand.h"

#include <gtest/gtest.h>

#include "core/inspect/sound_plans.h"
#include "core/support/lengths.h"

namespace foldyard {
namespace {

using test::mm;

using Texts = std::vector<std::string>;

// Both edges in as built by hand: each pin is kept where the plan is, and broken
// one unit beside it.
TEST(InspectHand, HoldsEveryPinnedLine) {
  Sound sound = both_edges_in();
  const std::vector<Length>& lines = sound.pattern().fold.lines;
  ASSERT_EQ(lines.size(), 2u);
  Hand hand;
  hand.lines = {lines[0], std::nullopt};
  EXPECT_EQ(inspect_hand(sound.job, sound.plan, hand), Texts());
  hand.lines = {std::nullopt, lines[1] + Length::units(1)};
  const Texts found = inspect_hand(sound.job, sound.plan, hand);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_NE(found[0].find("Pattern 1: fold line 2 lies at"), std::string::npos) << found[0];
}

TEST(InspectHand, MissesALineThatIsNotThere) {
  const Sound sound = open();
  Hand hand;
  hand.lines = {mm(300)};
  EXPECT_EQ(inspect_hand(sound.job, sound.plan, hand), Texts{"Pattern 1: fold line 1 is pinned, but there is none."});
}

TEST(InspectHand, HoldsEveryLength) {
  const Sound sound = selvedge_to_selvedge();
  Hand hand;
  hand.length = mm(900);
  EXPECT_EQ(inspect_hand(sound.job, sound.plan, hand), Texts());
  hand.length = mm(960);
  EXPECT_EQ(inspect_hand(sound.job, sound.plan, hand).size(), 1u);
}

// Two lengths of three carriers each: six, one of which may be lost to a flaw.
TEST(InspectHand, CountsWhatComesOutOfTheRoll) {
  Sound sound = selvedge_to_selvedge();
  Hand hand;
  hand.at_least[sound.job.panels[0].name] = 6;
  hand.at_least["unknown"] = 9;
  EXPECT_EQ(inspect_hand(sound.job, sound.plan, hand), Texts());
  sound.plan.lost = {{0, 0, 0}};
  EXPECT_EQ(inspect_hand(sound.job, sound.plan, hand), Texts{"Of carrier, 5 are cut, but at least 6 are asked for."});
}

}  // namespace
}  // namespace foldyard
