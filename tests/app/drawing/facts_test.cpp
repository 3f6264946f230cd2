#include "drawing/facts.h"

#include <gtest/gtest.h>

#include "job/defaults.h"

namespace foldyard {
namespace {

Roll plain_roll() { return {"Oak", default_fabric(), Length::mm(20'000)}; }

std::string facts(const Roll& roll) {
  return roll_facts(roll, Unit::cm).join(QStringLiteral("; ")).toStdString();
}

TEST(RollFacts, SayNothingOfPlainCloth) { EXPECT_EQ(facts(plain_roll()), ""); }

TEST(RollFacts, SayWhatClothCanBe) {
  Roll roll = plain_roll();
  roll.fabric.nap = Nap::one_way;
  roll.fabric.railroaded = true;
  roll.fabric.repeat = {Length::mm(640), Length::mm(700), Length::mm(100), Length(), true};
  roll.fabric.shrinkage = {300, 125};
  EXPECT_EQ(facts(roll),
            "one-way; railroaded; a repeat of 64 cm along (the first from 10 cm) and 70 cm across, "
            "the same mirrored; shrinks 3 % along and 1.25 % across");
}

TEST(RollFacts, NameEachFlawByItsPlace) {
  Roll roll = plain_roll();
  roll.flaws = {{{Length::mm(1000), Length::mm(1020)}, {Length(), Length::mm(1400)}, ""},
                {{Length::mm(3200), Length::mm(3260)}, {Length::mm(400), Length::mm(550)}, "stain"}};
  EXPECT_EQ(facts(roll),
            "flaw from 100 cm to 102 cm, the whole width; stain from 320 cm to 326 cm, 40 cm to "
            "55 cm from the left edge");
}

// 18 kg of 350 g a square metre, 1.4 m wide: 36.735 m; the give of 100 g is 20.4 cm.
TEST(MeasuredWords, SayTheRangeAndWhatPlansCountOn) {
  Roll roll = plain_roll();
  roll.measured = ByWeight{{19'000, 100}, {1'000, 0}, {3'500, 0}};
  roll.length = Length::mm(36'531);
  EXPECT_EQ(measured_words(roll, Unit::m).toStdString(),
            "36.53 to 36.94 m, most likely 36.73 m, by its weight; plans count on 36.531 m");
  roll.is_found = true;
  roll.length = Length::mm(36'600);
  EXPECT_TRUE(measured_words(roll, Unit::m).endsWith("by its weight; found 36.6 m long"));
}

TEST(PanelFacts, SayLimitGrainAndMatch) {
  Panel panel;
  EXPECT_TRUE(panel_facts(panel).isEmpty());
  panel.at_most = 24;
  panel.grain = Grain::warp;
  panel.match = Match::centred;
  EXPECT_EQ(panel_facts(panel).join(QStringLiteral("; ")).toStdString(),
            "at most 24; keeps to the warp; has the motif in its middle");
}

}  // namespace
}  // namespace foldyard
