#include "document/autosave.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <algorithm>
#include <memory>
#include <random>

#include "document/job_file.h"
#include "file/write_job.h"
#include "support/job_sample.h"

namespace foldyard {
namespace {

Job with_length(int mm) {
  Job job = sample::job();
  job.rolls[0].length = Length::mm(mm);
  return job;
}

// A window without widgets; one that is reset without end() crashed.
struct Bench {
  explicit Bench(const QString& folder) : recovery(folder), autosave(document, recovery) {}
  Document document;
  Recovery recovery;
  Autosave autosave;
};

class AutosaveTest : public testing::Test {
 protected:
  AutosaveTest() : bench(std::make_unique<Bench>(folder.path())) { bench->document.open(sample::job(), "/jobs/a.json"); }

  int side_files() { return static_cast<int>(QDir(folder.path()).entryList({"*.side"}).size()); }
  // What the next start finds.
  std::vector<LeftSide> crash() {
    bench.reset();
    return Recovery(folder.path()).left();
  }
  void edit(int times) {
    for (int i = 0; i < times; ++i) bench->document.edit(with_length(6000 + i), "change");
  }

  QTemporaryDir folder;
  std::unique_ptr<Bench> bench;
};

TEST_F(AutosaveTest, WritesNothingForAJobThatIsNotChanged) {
  EXPECT_EQ(side_files(), 0);
  EXPECT_TRUE(crash().empty());
}

TEST_F(AutosaveTest, WritesAtTheTwentiethEdit) {
  edit(Autosave::kEdits - 1);
  EXPECT_EQ(side_files(), 0);
  bench->document.edit(with_length(9000), "change");
  EXPECT_EQ(side_files(), 1);
  const auto left = crash();
  ASSERT_EQ(left.size(), 1u);
  EXPECT_EQ(left[0].side.job, with_length(9000));
  EXPECT_EQ(left[0].side.path, "/jobs/a.json");
}

TEST_F(AutosaveTest, WritesWhenItsTimeHasComeAndCountsFromTheFirstEdit) {
  EXPECT_LE(bench->autosave.timer().interval(), 15'000);
  EXPECT_TRUE(bench->autosave.timer().isSingleShot());
  EXPECT_FALSE(bench->autosave.timer().isActive());
  edit(1);
  const int id = bench->autosave.timer().timerId();
  ASSERT_TRUE(bench->autosave.timer().isActive());
  edit(2);
  EXPECT_EQ(bench->autosave.timer().timerId(), id);  // not put off by later edits
  bench->autosave.keep_now();
  EXPECT_EQ(side_files(), 1);
  EXPECT_FALSE(bench->autosave.timer().isActive());
}

TEST_F(AutosaveTest, ASavedJobLeavesNothing) {
  edit(25);
  ASSERT_EQ(side_files(), 1);
  ASSERT_FALSE(save_job_file(bench->document, folder.filePath("a.json")));
  EXPECT_EQ(side_files(), 0);
  EXPECT_FALSE(bench->autosave.timer().isActive());
}

TEST_F(AutosaveTest, UndoingEverythingLeavesNothing) {
  edit(25);
  while (bench->document.history().canUndo()) bench->document.history().undo();
  EXPECT_EQ(side_files(), 0);
}

TEST_F(AutosaveTest, OpeningAnotherJobOrEndingLeavesNothing) {
  edit(25);
  bench->document.open(sample::job(), "/jobs/b.json");
  EXPECT_EQ(side_files(), 0);
  edit(25);
  ASSERT_EQ(side_files(), 1);
  bench->autosave.end();
  EXPECT_EQ(side_files(), 0);
  EXPECT_TRUE(crash().empty());
}

// k random edits, undos and redos, then a crash: what comes back is the job of
// the last time that the side file was written, at most 20 steps ago.
TEST_F(AutosaveTest, ACrashAfterAnyNumberOfEditsGivesTheLastAutosave) {
  const auto seed = std::random_device{}();
  SCOPED_TRACE(testing::Message() << "seed " << seed);
  std::mt19937 random(seed);
  for (int k = 0; k <= 200; ++k) {
    SCOPED_TRACE(testing::Message() << "k " << k);
    bench = std::make_unique<Bench>(folder.filePath(QString::number(k)));
    auto& document = bench->document;
    document.open(sample::job(), {});
    std::vector<Job> last_jobs = {document.job()};
    for (int i = 0; i < k; ++i) {
      const auto dice = random() % 8;
      const int index = document.history().index();
      if (dice == 0) document.history().undo();
      else if (dice == 1) document.history().redo();
      else document.edit(with_length(static_cast<int>(2000 + random() % 50'000)), "change");
      if (document.history().index() != index) last_jobs.push_back(document.job());
      const bool is_timer_due = document.is_changed() && random() % 10 == 0;
      if (is_timer_due) bench->autosave.keep_now();
      if (is_timer_due || !document.is_changed()) last_jobs = {document.job()};
    }
    const bool was_changed = document.is_changed();
    bench.reset();
    Recovery next(folder.filePath(QString::number(k)));
    const auto left = next.left();
    ASSERT_LE(left.size(), 1u);
    if (!was_changed) {
      EXPECT_TRUE(left.empty());
    } else if (left.empty()) {
      EXPECT_LE(last_jobs.size(), static_cast<std::size_t>(Autosave::kEdits));  // the first is no edit
    } else {
      const auto at = std::find(last_jobs.rbegin(), last_jobs.rend(), left[0].side.job);
      ASSERT_NE(at, last_jobs.rend());
      EXPECT_LT(at - last_jobs.rbegin(), Autosave::kEdits);
    }
  }
}

TEST_F(AutosaveTest, ARecoveredJobStaysKeptUntilItIsSaved) {
  edit(25);
  const auto left = crash();
  ASSERT_EQ(left.size(), 1u);
  bench = std::make_unique<Bench>(folder.path());
  const auto side = bench->recovery.take(left[0].id);
  ASSERT_TRUE(side);
  bench->document.recover(side->job, side->path, side->mark);
  EXPECT_TRUE(bench->document.is_changed());
  EXPECT_EQ(bench->document.history().count(), 0);
  EXPECT_EQ(side_files(), 1);
  edit(1);
  bench->document.history().undo();
  EXPECT_TRUE(bench->document.is_changed());
  EXPECT_EQ(side_files(), 1);
  const auto again = crash();
  ASSERT_EQ(again.size(), 1u);
  EXPECT_EQ(again[0].side.crashes, 1);
  EXPECT_EQ(again[0].side.job, left[0].side.job);
}

TEST_F(AutosaveTest, TheDocumentsOwnFileIsNeverTouched) {
  const QString path = folder.filePath("own.json");
  ASSERT_FALSE(save_job_file(bench->document, path));
  const QByteArray before = write_job(sample::job());
  edit(45);
  const auto left = crash();
  ASSERT_EQ(left.size(), 1u);
  Bench next(folder.path());
  const auto side = next.recovery.take(left[0].id);
  ASSERT_TRUE(side);
  next.document.recover(side->job, side->path, side->mark);
  QFile file(path);
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  EXPECT_EQ(file.readAll(), before);
  EXPECT_EQ(change_on_disk(next.document), FileChange::none);
}

TEST_F(AutosaveTest, TellsOnceThatNothingCanBeKept) {
  QFile blocked(folder.filePath("blocked"));
  ASSERT_TRUE(blocked.open(QIODevice::WriteOnly));
  Bench without(blocked.fileName());
  QStringList told;
  QObject::connect(&without.autosave, &Autosave::failed, [&](const QString& sentence) { told.append(sentence); });
  without.document.open(sample::job(), {});
  for (int i = 0; i < 60; ++i) without.document.edit(with_length(6000 + i), "change");
  ASSERT_EQ(told.size(), 1);
  EXPECT_TRUE(told[0].endsWith('.')) << told[0].toStdString();
}

// As many undos as edits give the bytes that were opened.
TEST_F(AutosaveTest, UndosGiveTheFirstBytesWhileItIsKept) {
  const auto seed = std::random_device{}();
  SCOPED_TRACE(testing::Message() << "seed " << seed);
  std::mt19937 random(seed);
  const QByteArray first = write_job(bench->document.job());
  const int edits = static_cast<int>(20 + random() % 60);
  for (int i = 0; i < edits; ++i) bench->document.edit(with_length(static_cast<int>(2000 + random() % 50'000)), "change");
  while (bench->document.history().canUndo()) bench->document.history().undo();
  EXPECT_EQ(write_job(bench->document.job()), first);
}

}  // namespace
}  // namespace foldyard
