#include "document/recovery.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include "file/read_job.h"
#include "support/job_sample.h"

namespace foldyard {
namespace {

SideFile side(const char* name, int second = 0) {
  Job job = sample::job();
  job.name = name;
  return {job, {}, {}, QDateTime::fromSecsSinceEpoch(1'700'000'000 + second), 0};
}

// A Recovery that goes without drop() is a window that crashed.
class RecoveryTest : public testing::Test {
 protected:
  void crash_with(const SideFile& kept) { ASSERT_FALSE(Recovery(folder.path()).keep(kept)); }
  QStringList side_files() { return QDir(folder.path()).entryList({"*.side"}, QDir::Files); }
  QByteArray bytes_of(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
  }
  void write(const QString& path, const QByteArray& bytes) {
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
  }

  QTemporaryDir folder;
};

TEST_F(RecoveryTest, FindsNothingInAFolderThatIsNotThere) {
  EXPECT_TRUE(Recovery(folder.filePath("none")).left().empty());
  EXPECT_FALSE(QDir(folder.filePath("none")).exists());
}

TEST_F(RecoveryTest, GivesTheJobOfACrashedWindow) {
  crash_with(side("Lost"));
  Recovery next(folder.path());
  const auto left = next.left();
  ASSERT_EQ(left.size(), 1u);
  EXPECT_EQ(left[0].side.crashes, 0);
  const auto taken = next.take(left[0].id);
  ASSERT_TRUE(taken);
  EXPECT_EQ(taken->job, side("Lost").job);
  EXPECT_EQ(taken->crashes, 1);
}

TEST_F(RecoveryTest, CountsCrashesInARowUntilTheJobIsSaved) {
  crash_with(side("Lost"));
  for (int crashes = 0; crashes < 3; ++crashes) {
    Recovery next(folder.path());
    const auto left = next.left();
    ASSERT_EQ(left.size(), 1u);
    EXPECT_EQ(left[0].side.crashes, crashes);
    ASSERT_TRUE(next.take(left[0].id));
    ASSERT_FALSE(next.keep(side(crashes == 1 ? "Lost" : "Lost and edited")));
  }
  Recovery last(folder.path());
  ASSERT_TRUE(last.take(last.left()[0].id));
  last.drop();
  ASSERT_FALSE(last.keep(side("New")));
  EXPECT_EQ(side_files().size(), 1);
  const QString path = QDir(folder.path()).filePath(side_files()[0]);
  EXPECT_EQ(read_side_file(bytes_of(path))->crashes, 0);
}

TEST_F(RecoveryTest, NothingIsLeftByAWindowThatEndedWell) {
  Recovery window(folder.path());
  ASSERT_FALSE(window.keep(side("Saved")));
  window.drop();
  EXPECT_TRUE(side_files().empty());
  EXPECT_TRUE(Recovery(folder.path()).left().empty());
}

TEST_F(RecoveryTest, TwoWindowsDoNotTakeEachOthers) {
  Recovery one(folder.path());
  Recovery other(folder.path());
  ASSERT_FALSE(one.keep(side("One")));
  ASSERT_FALSE(other.keep(side("Other")));
  EXPECT_TRUE(one.left().empty());
  EXPECT_TRUE(other.left().empty());
  const QString name = side_files()[0].chopped(5);
  EXPECT_FALSE(Recovery(folder.path()).take(name));
  one.drop();
  EXPECT_EQ(side_files().size(), 1);
}

TEST_F(RecoveryTest, WhatOneWindowTookNoOtherGets) {
  crash_with(side("Lost"));
  Recovery one(folder.path());
  Recovery other(folder.path());
  const auto seen = other.left();
  ASSERT_EQ(seen.size(), 1u);
  ASSERT_TRUE(one.take(seen[0].id));
  EXPECT_FALSE(other.take(seen[0].id));
  EXPECT_TRUE(other.left().empty());
}

TEST_F(RecoveryTest, TheNewestComesFirst) {
  crash_with(side("Middle", 5));
  crash_with(side("New", 9));
  crash_with(side("Old", 1));
  const auto left = Recovery(folder.path()).left();
  ASSERT_EQ(left.size(), 3u);
  EXPECT_EQ(left[0].side.job.name, "New");
  EXPECT_EQ(left[2].side.job.name, "Old");
}

TEST_F(RecoveryTest, ADamagedSideFileIsPutAsideAndHindersNothing) {
  crash_with(side("Lost"));
  const QString path = QDir(folder.path()).filePath(side_files()[0]);
  const QByteArray whole = bytes_of(path);
  for (int size = 0; size < whole.size(); size += 64) {
    write(path, whole.left(size));
    Recovery next(folder.path());
    EXPECT_TRUE(next.left().empty()) << size;
    ASSERT_EQ(next.put_aside().size(), 1) << size;
    EXPECT_EQ(bytes_of(next.put_aside()[0]), whole.left(size));
    EXPECT_TRUE(Recovery(folder.path()).left().empty());
    QFile::remove(next.put_aside()[0]);
  }
}

TEST_F(RecoveryTest, AWholeOneIsFoundBesideADamagedOne) {
  crash_with(side("Lost"));
  for (const QByteArray& wrong : {QByteArray("{}"), QByteArray("\xff\xfe"), QByteArray(100'000, '['), QByteArray()}) {
    write(folder.filePath("wrong.side"), wrong);
    Recovery next(folder.path());
    EXPECT_EQ(next.left().size(), 1u);
    EXPECT_EQ(next.put_aside().size(), 1);
    QFile::remove(folder.filePath("wrong.damaged"));
  }
}

TEST_F(RecoveryTest, ASecondDamagedOneOfTheSameNameIsPutAsideToo) {
  for (int i = 0; i < 2; ++i) {
    write(folder.filePath("wrong.side"), "{}");
    Recovery next(folder.path());
    EXPECT_TRUE(next.left().empty());
    EXPECT_EQ(next.put_aside().size(), 1);
  }
  EXPECT_EQ(QDir(folder.path()).entryList({"*damaged*"}).size(), 2);
}

TEST_F(RecoveryTest, KeepsAJobAsideAsAFileThatCanBeOpened) {
  for (const char* expected : {"Curtains.json", "Curtains 2.json"}) {
    crash_with(side("Curt/ains?"));
    Recovery next(folder.path());
    const auto path = next.keep_aside(next.left()[0].id);
    ASSERT_TRUE(path) << path.problem().sentence();
    EXPECT_EQ(QFileInfo(*path).fileName(), expected);
    EXPECT_EQ(*load_job(*path), side("Curt/ains?").job);
    EXPECT_TRUE(side_files().empty());
  }
}

TEST_F(RecoveryTest, RemovesTheLitterOfKilledWritesOnceItIsOld) {
  const QString old = folder.filePath(".foldyard-17-0");
  const QString young = folder.filePath(".foldyard-18-0");
  write(old, "half");
  write(young, "half");
  QFile file(old);
  ASSERT_TRUE(file.open(QIODevice::ReadWrite));
  ASSERT_TRUE(file.setFileTime(QDateTime::currentDateTime().addSecs(-7200), QFileDevice::FileModificationTime));
  file.close();
  Recovery(folder.path()).left();
  EXPECT_FALSE(QFile::exists(old));
  EXPECT_TRUE(QFile::exists(young));
}

TEST_F(RecoveryTest, TellsWhenNothingCanBeKept) {
  write(folder.filePath("file"), "no folder");
  const auto problem = Recovery(folder.filePath("file")).keep(side("Lost"));
  ASSERT_TRUE(problem);
  EXPECT_FALSE(problem->next.empty());
}

TEST_F(RecoveryTest, WithoutAFolderKeepsNothing) {
  Recovery off{QString()};
  EXPECT_FALSE(off.keep(side("Lost")));
  EXPECT_TRUE(off.left().empty());
}

}  // namespace
}  // namespace foldyard
