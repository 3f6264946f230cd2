#include <gtest/gtest.h>

#include <algorithm>

#include "core/inspect/sound_plans.h"
#include "inspect/inspect_plan.h"

namespace foldyard {

namespace {

using Found = std::vector<std::string>;

// One length with carriers at y = 0 of the pattern; it begins at 20 on the roll and
// half the allowance of 10 comes first, so the carriers begin at 25.
Sound matched(Length along, Length start_along) {
  Sound sound = open();
  sound.roll().fabric.repeat = {along, {}, start_along, {}, false};
  sound.job.panels[0].match = Match::start;
  return sound;
}

Found found(const Sound& sound) { return inspect_plan(sound.job, sound.plan); }

TEST(InspectRepeat, HoldsEachPanelToTheStartOfARepeat) {
  Sound sound = matched(Length::mm(640), Length::mm(25));
  EXPECT_EQ(sound.pattern().panels[0].flat.along.from, Length());
  sound.plan.lengths.resize(1);
  const Found good = found(sound);
  for (const std::string& line : good) EXPECT_EQ(line.find("pattern along"), std::string::npos) << line;
  sound.roll().fabric.repeat.start_along += Length::units(1);
  const Found bad = found(sound);
  ASSERT_FALSE(bad.empty());
  EXPECT_NE(std::find(bad.begin(), bad.end(),
                      "Length 1: panel 1 (carrier) does not match the pattern along."),
            bad.end());
}

// A carrier of 450 from x: in the middle of a repeat of 600 it begins 75 after its
// start; so a repeat begins at x − 75.
TEST(InspectRepeat, HoldsAMotifToTheMiddleOfItsPanel) {
  Sound sound = open();
  const Span across = sound.pattern().panels[0].flat.across;
  ASSERT_EQ(across.size(), Length::mm(450));
  sound.job.panels[0].match = Match::centred;
  sound.pattern().panels.resize(1);
  Repeat& repeat = sound.roll().fabric.repeat;
  repeat.across = Length::mm(600);
  const auto is_off = [&](Length off) {
    repeat.start_across = across.from + Length::mm(600 - 75) + off;
    const Found lines = found(sound);
    return std::find(lines.begin(), lines.end(),
                     "Length 1: panel 1 (carrier) does not match the pattern across.") != lines.end();
  };
  EXPECT_FALSE(is_off(Length()));
  EXPECT_TRUE(is_off(Length::units(1)));
  EXPECT_TRUE(is_off(Length::units(-1)));
}

// Sizes that leave half a unit on each side are held to the place rounded down.
TEST(InspectRepeat, LetsHalfAUnitBeRoundedDown) {
  Sound sound = open();
  sound.job.panels[0].match = Match::centred;
  const Length begins = Length::mm(25);
  Repeat& repeat = sound.roll().fabric.repeat;
  repeat.along = Length::mm(1000) + Length::units(1);
  const auto is_off = [&](std::int64_t units) {
    repeat.start_along = begins - Length::mm(50) + Length::units(units);
    const Found lines = found(sound);
    return std::find(lines.begin(), lines.end(),
                     "Length 1: panel 1 (carrier) does not match the pattern along.") != lines.end();
  };
  // 900 in 1000 and a unit: it begins 50 and half a unit on, so 50.
  EXPECT_FALSE(is_off(0));
  EXPECT_TRUE(is_off(1));
  EXPECT_TRUE(is_off(-1));
}

TEST(InspectRepeat, AsksNothingOfOtherPanelsOrPlainCloth) {
  Sound sound = open();
  sound.roll().fabric.repeat = {Length::mm(7), Length::mm(7), {}, {}, false};
  EXPECT_EQ(found(sound), Found{});
  sound.roll().fabric.repeat = {};
  sound.job.panels[0].match = Match::start;
  EXPECT_EQ(found(sound), Found{});
}

}  // namespace

}  // namespace foldyard
