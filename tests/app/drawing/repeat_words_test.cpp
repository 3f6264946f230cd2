#include "drawing/repeat_words.h"

#include <gtest/gtest.h>

#include "app/drawing/sample_plans.h"

namespace foldyard {
namespace {

// Lengths of 900 mm and an allowance of 40, half of it before the pattern: the
// patterns begin at 120, 1060, 2000 … mm.
samples::Sample figured(Length along, Length start) {
  samples::Sample sample = samples::carriers();
  sample.job.rolls[0].fabric.repeat = {along, {}, start, {}, false};
  return sample;
}

TEST(RepeatWords, SayHowThePatternRepeats) {
  samples::Sample sample = figured(Length::mm(640), Length::mm(100));
  EXPECT_EQ(repeat_words(sample.job, sample.plan()),
            "The pattern repeats every 64 cm along the roll, one begins 10 cm from its free end.");
  sample.job.rolls[0].fabric.repeat = {{}, Length::mm(320), {}, Length::mm(15), false};
  EXPECT_EQ(repeat_words(sample.job, sample.plan()),
            "The pattern repeats every 32 cm across, one begins 1.5 cm from the left edge.");
  EXPECT_EQ(repeat_words(samples::carriers().job, samples::carriers().plan()), "");
}

TEST(RepeatWords, ShowEachRepeatWhereAllLengthsBeginAtOnePhase) {
  const samples::Sample sample = figured(Length::mm(470), Length::mm(190));
  const PatternData data = pattern_data(sample.job, sample.plan(), 0);
  // Every 940 mm of roll two repeats; the first begins 190 − 120 = 70 mm on.
  EXPECT_EQ(repeats_along(data), (std::vector<Length>{Length::mm(70), Length::mm(540)}));
  EXPECT_EQ(phase_words(data),
            "On each length the first repeat of the pattern begins 7 cm from the near end.");
  EXPECT_TRUE(repeats_across(data).empty());
  const samples::Sample even = figured(Length::mm(940), Length::mm(120));
  EXPECT_EQ(phase_words(pattern_data(even.job, even.plan(), 0)),
            "Each length begins with a repeat of the pattern.");
}

TEST(RepeatWords, ShowNoneWhereLengthsDiffer) {
  const samples::Sample sample = figured(Length::mm(500), Length::mm(120));
  const PatternData data = pattern_data(sample.job, sample.plan(), 0);
  EXPECT_TRUE(repeats_along(data).empty());
  EXPECT_TRUE(phase_words(data).startsWith("Repeats begin elsewhere on each length"));
}

TEST(RepeatWords, CountRepeatsAcrossFromTheLeftEdge) {
  samples::Sample sample = samples::carriers();
  sample.job.rolls[0].fabric.repeat = {{}, Length::mm(600), {}, Length::mm(50), false};
  EXPECT_EQ(repeats_across(pattern_data(sample.job, sample.plan(), 0)),
            (std::vector<Length>{Length::mm(50), Length::mm(650), Length::mm(1250)}));
}

// 42 carriers worth 3 of a cloth where 45 would fit: 9 in worth; 84 % used.
TEST(MatchingWords, SayWhatMatchingCosts) {
  samples::Sample sample = figured(Length::mm(640), Length::mm(100));
  Plan plan = sample.plan();
  EXPECT_EQ(matching_words(sample.job, plan), "");
  plan.unmatched = Unmatched{plan.worth + Worth::whole(9), plan.used};
  EXPECT_EQ(matching_words(sample.job, plan),
            "Matching the pattern costs 9.00: where nothing need match, this way gives 135.00. "
            "84.0 % of the cloth ends in panels, 84.0 % where nothing need match.");
  plan.unmatched->worth = plan.worth;
  plan.cut_out = {{Length::mm(0), Length::mm(100)}, {Length::mm(200), Length::mm(250)}};
  EXPECT_EQ(matching_words(sample.job, plan),
            "Matching the pattern costs no worth. 84.0 % of the cloth ends in panels, 84.0 % where "
            "nothing need match. 15 cm of the roll, in 2 places, are skipped so that lengths begin "
            "where the pattern lets them.");
}

}  // namespace
}  // namespace foldyard
