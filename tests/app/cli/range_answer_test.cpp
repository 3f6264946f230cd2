#include "cli/range_answer.h"

#include <gtest/gtest.h>

#include <QJsonArray>

#include "file/read_job.h"

namespace foldyard {
namespace {

// tests/cases/measured-roll: 50 to 100 cm, strips of 30 cm.
Job measured_job() {
  return load_job(QStringLiteral(FOLDYARD_SOURCE_DIR "/tests/cases/measured-roll/job.json")).value();
}

Plan plan_of(const Job& job) { return plan_roll(job, 0, FoldWay{}, Aim::most_worth).value(); }

QString plain(QString words) { return words.replace(QChar(0xa0), QLatin1Char(' ')); }

TEST(RangeWords, SayWhatEachLengthGivesAndWhatToCutFirst) {
  const Job job = measured_job();
  const QString words = plain(range_words_of(job, plan_of(job)));
  for (const char* line :
       {"By its length the roll gives 1 to 3 × Strip (2 most likely); worth 9.00", "most likely 18.00.",
        "all lengths at which the best plan gets better", "from 60 cm  + 9.00  2 × Strip",
        "from 90 cm  + 9.00  3 × Strip", "Cut the length of the plan first", "20 cm to 70 cm",
        "from 30 cm   + 9.00  1 × 30 cm (pattern A): 1 × Strip",
        "from 60 cm  + 18.00  1 × 60 cm (new): 2 × Strip", "worth as much as having known it"})
    EXPECT_TRUE(words.contains(QString::fromUtf8(line))) << line << "\n" << words.toStdString();
}

TEST(RangeWords, AreNoneForARollOfKnownLength) {
  Job job = measured_job();
  job.rolls[0].is_found = true;
  EXPECT_TRUE(range_words_of(job, plan_of(job)).isEmpty());
  EXPECT_TRUE(with_range(job, plan_of(job), {}).isEmpty());
}

TEST(RangeJson, HoldsTheEstimateTheStepsAndTheOrder) {
  const Job job = measured_job();
  const QJsonObject roll = with_range(job, plan_of(job), {});
  EXPECT_EQ(roll["estimate"].toObject(), (QJsonObject{{"least", "50 cm"}, {"likely", "75 cm"}, {"most", "100 cm"}, {"by", "weight"}}));
  const QJsonObject range = roll["range"].toObject();
  EXPECT_EQ(range["yield"].toArray(), (QJsonArray{QJsonObject{{"panel", "Strip"}, {"least", 1}, {"likely", 2}, {"most", 3}}}));
  const QJsonArray steps = range["steps"].toArray(), further = range["further"].toArray();
  ASSERT_EQ(steps.size(), 3);
  EXPECT_EQ(steps[2].toObject()["from"], "90 cm");
  EXPECT_EQ(steps[2].toObject()["worth"], "27");
  ASSERT_EQ(further.size(), 3);
  EXPECT_EQ(further[0].toObject(), (QJsonObject{{"from", "20 cm"}}));
  EXPECT_EQ(further[1].toObject()["plan"].toObject()["patterns"].toArray().size(), 1);
  EXPECT_EQ(range["most_lost"], "0");
  EXPECT_TRUE(range["proved"].toBool() && range["all_steps"].toBool() && range["all_further"].toBool());
}

}  // namespace
}  // namespace foldyard
