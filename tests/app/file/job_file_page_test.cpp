// docs/job-file.md says what the reader does.

#include <gtest/gtest.h>

#include <QFile>

#include "file/read_job.h"
#include "file/write_job.h"
#include "job/defaults.h"
#include "job/limits.h"

namespace foldyard {
namespace {

QString page() {
  QFile file(QStringLiteral(FOLDYARD_SOURCE_DIR "/docs/job-file.md"));
  return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

// The row of the table of fields, or nothing.
QString row_of(std::string_view key) {
  const QString name = QString::fromUtf8(key.data(), static_cast<qsizetype>(key.size()));
  for (const QString& line : page().split(u'\n')) {
    if (line.startsWith(QStringLiteral("| `%1` |").arg(name))) return line;
  }
  return {};
}

QStringList examples() {
  QStringList found;
  const QStringList pieces = page().split(QStringLiteral("```"));
  for (const QString& piece : pieces) {
    if (piece.startsWith(QStringLiteral("json"))) found << piece.mid(4);
  }
  return found;
}

TEST(JobFilePage, NamesEveryDefault) {
  for (const Default& entry : defaults()) {
    if (entry.key == "panels[].worth_per_square_metre") continue;
    const QString value = QString::fromUtf8(entry.value.data(), static_cast<qsizetype>(entry.value.size()));
    EXPECT_TRUE(row_of(entry.key).endsWith(QStringLiteral("| %1 |").arg(value))) << entry.key;
  }
}

TEST(JobFilePage, NamesTheLimitsOfLengths) {
  const std::pair<const char*, LengthLimit> rows[] = {
      {"rolls[].width", limits::kRollWidth},       {"rolls[].selvedge", limits::kSelvedge},
      {"rolls[].thickness", limits::kThickness},   {"rolls[].length", limits::kRollLength},
      {"panels[].across", limits::kPanelAcross},   {"panels[].along", limits::kPanelAlong},
      {"table.length", limits::kTableLength},      {"table.depth", limits::kTableDepth},
      {"table.reach", limits::kReach},             {"cutter.height", limits::kCutterHeight},
      {"losses.squaring", limits::kSquaring},      {"losses.allowance", limits::kAllowance},
      {"losses.fold_trim", limits::kFoldTrim},     {"losses.keep_across", limits::kKeep},
      {"losses.keep_along", limits::kKeep},        {"rolls[].repeat.along", limits::kRepeat},
      {"rolls[].repeat.across", limits::kRepeat},
  };
  for (const auto& [key, limit] : rows) {
    const QString words = QString::fromUtf8(limit.in_words.data(), static_cast<qsizetype>(limit.in_words.size()));
    EXPECT_TRUE(row_of(key).contains(words)) << key;
  }
}

TEST(JobFilePage, NamesTheLimitsOfMeasures) {
  for (const LengthLimit& limit : {limits::kOuter, limits::kTube, limits::kThickness}) {
    const QString words = QString::fromUtf8(limit.in_words.data(), static_cast<qsizetype>(limit.in_words.size()));
    EXPECT_TRUE(page().contains(words)) << words.toStdString();
  }
  for (const NumberLimit& limit : {limits::kTurns, limits::kGrams}) {
    EXPECT_TRUE(page().contains(QStringLiteral("to %1, whole").arg(limit.most))) << limit.most;
  }
}

TEST(JobFilePage, ShowsFilesThatAreRead) {
  ASSERT_EQ(examples().size(), 2);
  for (const QString& example : examples()) {
    const Result<Job> job = read_job(example.toUtf8());
    EXPECT_TRUE(job) << job.problem().sentence();
  }
}

TEST(Demo, IsAJobOfItsOwnThatIsRead) {
  const Result<Job> job = load_job(QStringLiteral(FOLDYARD_SOURCE_DIR "/resources/demo.json"));
  ASSERT_TRUE(job) << job.problem().sentence();
  EXPECT_GE(job->rolls.size(), 5u);
  EXPECT_GE(job->panels.size(), 4u);
  EXPECT_EQ(*read_job(write_job(*job)), *job);
}

}  // namespace
}  // namespace foldyard
