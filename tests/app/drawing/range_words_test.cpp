#include "drawing/range_words.h"

#include <gtest/gtest.h>

#include <QRegularExpression>

#include "app/drawing/paper_probe.h"
#include "app/drawing/plain_words.h"
#include "app/drawing/sample_plans.h"
#include "drawing/range_page.h"

namespace foldyard {
namespace {

const MeasuredLength kOuter{Length::mm(220), Length::mm(5)};
const MeasuredLength kTube{Length::mm(50), Length()};

TEST(EstimateWords, RoundOutwardsToWhatCanBeSeen) {
  const LengthEstimate estimate{Length::mm(31'149), Length::mm(36'046), Length::mm(42'081)};
  EXPECT_EQ(estimate_words(estimate, Unit::m), "31.14 to 42.09 m, most likely 36.05 m");
  // 1226 3/8, 1419 1/8 and 1656 3/4 in.
  EXPECT_EQ(estimate_words(estimate, Unit::inch), "1226 to 1657 in, most likely 1419 in");
}

TEST(MeasureWords, NameEachFigureWithItsGive) {
  EXPECT_EQ(measure_words(ByDiameters{kOuter, kTube, {Length::mm(1), Length::units(32)}}, Unit::cm),
            QString::fromUtf8("its diameters: 22 cm (± 0.5 cm) on a tube of 5 cm, one ply 1 mm (± 0.1 mm)"));
  EXPECT_EQ(measure_words(ByTurns{{85, 1}, kOuter, kTube}, Unit::mm),
            QString::fromUtf8("its turns: 85 (± 1) of them, 220 mm (± 5 mm) on a tube of 50 mm"));
  EXPECT_EQ(measure_words(ByWeight{{28'500, 50}, {500, 0}, {4000, 200}}, Unit::cm),
            QString::fromUtf8("its weight: 28.5 kg (± 0.05 kg) with a tube of 0.5 kg, cloth of 400 g/m² (± 20 g/m²)"));
}

// The sample's roll of 14 lengths, measured: 13.5 m at least, by its weight.
samples::Sample measured_sample() {
  samples::Sample sample = samples::carriers();
  Roll& roll = sample.job.rolls[0];
  const std::int64_t grams = roll.length.units() * roll.fabric.width.units() / (320'000LL * 3'200);
  roll.measured = ByWeight{{grams + 20, 20}, {0, 0}, {1000, 0}};
  return sample;
}

// One length more at 90 cm of rest, a second at 180.
YieldRange range_of(const samples::Sample& sample) {
  const Plan& plan = sample.plan();
  Plan more = plan, rest = plan;
  more.yield[0] += 3;
  more.worth += Worth::whole(3);
  rest.lays = {{0, 1}};
  rest.yield[0] = 3;
  rest.worth = Worth::whole(3);
  const Length least = sample.job.rolls[0].length;
  return {0, {least, least + Length::mm(900), least + Length::mm(1800)}, plan, more,
          {{{least, plan}, {least + Length::mm(760), more}}, true},
          {{{Length::mm(140), {}}, {Length::mm(900), rest}}, false}, {{42, 45, 45}}, Worth(), true};
}

TEST(RangeRows, SayFromWhichLengthOn) {
  const samples::Sample sample = measured_sample();
  const YieldRange range = range_of(sample);
  const auto steps = step_rows(sample.job, range), further = further_rows(sample.job, range);
  ASSERT_EQ(steps.size(), 1u);
  EXPECT_EQ(plain(steps[0].what), QString::fromUtf8("45 × Carrier"));
  EXPECT_EQ(steps[0].worth, "+ 3.00");
  ASSERT_EQ(further.size(), 1u);
  EXPECT_EQ(further[0].from, "90 cm");
  EXPECT_EQ(plain(further[0].what), QString::fromUtf8("1 × 90 cm (pattern A): 3 × Carrier"));
  EXPECT_TRUE(plain(range_words(sample.job, range)).contains(QString::fromUtf8("42 to 45 × Carrier (45 most likely)")));
  EXPECT_TRUE(order_words(sample.job, range).contains("all 14 lengths"));
  EXPECT_TRUE(further_note(range).contains("Between these there are more"));
}

TEST(RangePage, StandsBehindTheFrontAndNamesWhatToCutFirst) {
  const samples::Sample sample = measured_sample();
  const Sheet without = sample.sheet(Paper::a4);
  const Sheet with(sample.job, sample.comparison, sample.chosen, SheetOptions{Paper::a4}, range_of(sample));
  EXPECT_EQ(range_pages(without), 0);
  ASSERT_EQ(range_pages(with), 1);
  EXPECT_EQ(with.pages(), without.pages() + 1);
  // Words may break over lines, and fi may be one letter.
  const auto letters = [](const QString& text) { return QString(text).remove(QRegularExpression("\\s+")); };
  const QString text = letters(probe::pdf_text(sheet_pdf(with)));
  for (const char* words : {"at least", "Its length is estimated", "What to cut", "If the roll is longer"})
    EXPECT_TRUE(text.contains(letters(QLatin1String(words)))) << words;
  EXPECT_FALSE(letters(probe::pdf_text(sheet_pdf(without))).contains("Iftherollislonger"));
}

}  // namespace
}  // namespace foldyard
