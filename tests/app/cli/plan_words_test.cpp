#include "cli/plan_words.h"

#include <gtest/gtest.h>

#include <QStringList>

#include "job/cautions.h"
#include "job/defaults.h"

namespace foldyard {
namespace {

constexpr Length cm(std::int64_t n) { return Length::mm(n * 10); }

Job oak_job() {
  Job job = default_job();
  job.rolls = {{"Oak", default_fabric(), cm(300)}};
  job.panels = {{"Square", cm(45), cm(50), true, true, Worth::whole(2)}};
  return job;
}

// Two lengths of 100 cm, laid open, 10 cm and 114 cm from the free end.
Plan oak_plan() {
  Plan plan;
  Pattern pattern;
  pattern.length = cm(100);
  pattern.folded_across = cm(140);
  pattern.folded_along = cm(100);
  pattern.cuts = {{Direction::along, cm(46), {cm(0), cm(100)}},
                  {Direction::across, cm(50), {cm(0), cm(46)}}};
  const Rect place{{cm(1), cm(46)}, {cm(0), cm(50)}};
  pattern.panels = {{0, false, false, place, place}, {0, true, true, place, place}};
  pattern.rests = {{RestKind::offcut, {{cm(46), cm(138)}, {cm(0), cm(100)}}},
                   {RestKind::offcut, {{cm(46), cm(138)}, {cm(0), cm(100)}}}};
  plan.patterns = {pattern};
  plan.lays = {{0, 2}};
  plan.lengths = {{0, {cm(10), cm(114)}}, {0, {cm(114), cm(218)}}};
  plan.yield = {4};
  plan.worth = Worth::whole(8);
  plan.proof = {Worth::whole(8), true, "all was tried"};
  return plan;
}

bool says(const char* words) {
  return plan_words(oak_job(), oak_plan()).contains(QString::fromUtf8(words));
}

TEST(PlanWords, SayWhereToCutTheRollAcross) {
  EXPECT_TRUE(says("measured from its free end, at 10 cm, 114 cm, 218"));
  EXPECT_TRUE(says("Each length has 4 cm more than its pattern"));
}

// A stain under both panels of the second length, whose pattern begins at 116 cm.
TEST(PlanWords, SayWhatFlawsCostAndWhereTheyLie) {
  Job job = oak_job();
  job.rolls[0].flaws = {{{cm(120), cm(122)}, {cm(5), cm(6)}, "stain"}};
  Plan plan = oak_plan();
  plan.lost = {{1, 0, 0}, {1, 1, 0}};
  plan.cut_out = {{cm(112), cm(114)}};
  const QString text = plan_words(job, plan).simplified();
  for (const char* words :
       {"1 flaw costs 2 × Square, cut but lost, and 2 cm of the roll, cut out.",
        "1 point on the four-point scale",
        "- stain at 120 cm to 122 cm, 5 cm to 6 cm from the left: length 2, 2 × Square are lost",
        "Cut out and set aside what lies from 112 cm to 114 cm.",
        "length 2: stain at 4 cm to 6 cm, 5 cm to 6 cm from the left: 2 × Square are lost"})
    EXPECT_TRUE(text.contains(QString::fromUtf8(words))) << words << "\n" << text.toStdString();
  EXPECT_FALSE(says("flaw"));
}

TEST(PlanWords, ListTheCutsInOrderWithTheirDistances) {
  const std::string text = plan_words(oak_job(), oak_plan()).toStdString();
  const std::size_t first = text.find("1.  along the roll at  46 cm  from the left edge");
  const std::size_t second = text.find("2.  across it at       50 cm   from the near end");
  ASSERT_NE(first, std::string::npos) << text;
  ASSERT_NE(second, std::string::npos) << text;
  EXPECT_LT(first, second);
}

TEST(PlanWords, CountPanelsAndRests) {
  EXPECT_TRUE(says("2 × Square, 45 × 50 cm, 1 on the fold, 1 turned"));
  EXPECT_TRUE(says("2 × offcut, 92 × 100 cm"));  // 138 − 46
}

TEST(PlanWords, SayTheProof) { EXPECT_TRUE(says("Proved. All was tried.")); }

TEST(PlanWords, FitATerminal) {
  for (const QString& line : plan_words(oak_job(), oak_plan()).split(u'\n')) {
    EXPECT_LE(line.size(), 80) << line.toStdString();
  }
}

TEST(CautionWords, HoldEveryCaution) {
  const QString text = caution_words(oak_job()).simplified();
  for (std::string_view line : cautions()) {
    EXPECT_TRUE(text.contains(QString::fromUtf8(line.data(), static_cast<qsizetype>(line.size()))));
  }
}

TEST(PlanWords, NameEachPlyOfOneWayClothAndBothSizesOfPanels) {
  Job job = oak_job();
  job.rolls[0].fabric.nap = Nap::one_way;
  job.rolls[0].fabric.shrinkage.along = 2000;  // 50 / 0.8 = 62.5
  const QString words = plan_words(job, oak_plan());
  EXPECT_TRUE(words.contains("Plies from the table up: 1 face up, nap away from you."));
  EXPECT_TRUE(words.contains("cut 45 x 62.5 cm, finishes 45 x 50 cm") ||
              words.contains(QString::fromUtf8("cut 45 × 62.5 cm, finishes 45 × 50 cm")))
      << words.toStdString();
}

}  // namespace
}  // namespace foldyard
