#include "drawing/flaw_words.h"

#include <gtest/gtest.h>

#include "app/drawing/plain_words.h"
#include "app/drawing/sample_plans.h"
#include "core/support/lengths.h"
#include "job/lost_panels.h"

namespace foldyard {
namespace {

using test::mm;

// Carriers on 14 lengths of 940 from 100 on, half of 40 before each pattern:
// that of length 2 begins at 1060. A stain 320 behind that, under the panels on
// 75 … 525 and 525 … 975; a seam in the squared end; a knot in a selvedge.
class FlawWords : public testing::Test {
 protected:
  FlawWords() {
    sample_.job.rolls[0].flaws = {{mm(10, 20), mm(0, 1500), "seam"},
                                  {mm(1380, 1400), mm(500, 550), "stain"},
                                  {mm(3000, 3010), mm(0, 10), ""}};
    plan_ = sample_.plan();
    plan_.lost = lost_panels(sample_.job, plan_);
  }
  std::string text(const QString& words) const {
    return plain(words).toStdString();
  }
  std::vector<std::string> texts(const QStringList& lines) const {
    std::vector<std::string> all;
    for (const QString& line : lines) all.push_back(text(line));
    return all;
  }

  samples::Sample sample_ = samples::carriers();
  Plan plan_;
};

TEST_F(FlawWords, SayWhatFlawsCost) {
  EXPECT_EQ(text(flaws_words(sample_.job, plan_)), "3 flaws cost 2 × Carrier, cut but lost.");
  plan_.cut_out = {mm(1040, 1160)};
  EXPECT_EQ(text(flaws_words(sample_.job, plan_)),
            "3 flaws cost 2 × Carrier, cut but lost, and 12 cm of the roll, cut out.");
  plan_.lost.clear();
  plan_.cut_out.clear();
  EXPECT_EQ(text(flaws_words(sample_.job, plan_)), "3 flaws cost no panel.");
  sample_.job.rolls[0].flaws.clear();
  EXPECT_TRUE(flaws_words(sample_.job, plan_).isEmpty());
}

TEST_F(FlawWords, SayWhereEachFlawLiesAndWhatBecomesOfIt) {
  EXPECT_EQ(texts(flaw_lines(sample_.job, plan_)),
            (std::vector<std::string>{
                "seam at 1 cm to 2 cm, over the whole width: in a squared end",
                "stain at 138 cm to 140 cm, 50 cm to 55 cm from the left: length 2, 2 × Carrier are "
                "lost",
                "flaw at 300 cm to 301 cm, 0 cm to 1 cm from the left: length 4, between panels"}));
}

TEST_F(FlawWords, MeasureFlawsFromTheStartOfTheirLength) {
  const std::vector<std::string> lines = texts(flaw_lines_of(sample_.job, plan_, 0));
  ASSERT_EQ(lines.size(), 2u);
  EXPECT_EQ(lines[0], "length 2: stain at 32 cm to 34 cm, 50 cm to 55 cm from the left: 2 × Carrier "
                      "are lost");
}

TEST_F(FlawWords, GradeARollInTheUnitOfTheJob) {
  Roll roll = sample_.job.rolls[0];
  roll.fabric.width = Length::mm(1500);
  roll.length = Length::mm(100'000);
  // 4 for the seam, 1 for each of the others: 6 × 100 000 / 150 000 = 4.
  EXPECT_EQ(text(grade_words(sample_.job, roll)),
            "6 points on the four-point scale, 4 per 100 square metres");
  sample_.job.unit = Unit::inch;
  EXPECT_NE(text(grade_words(sample_.job, roll)).find("square yards"), std::string::npos);
  roll.flaws.clear();
  EXPECT_TRUE(grade_words(sample_.job, roll).isEmpty());
}

}  // namespace
}  // namespace foldyard
