#include "document/job_file.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>

#include "file/read_job.h"
#include "file/write_job.h"
#include "support/job_sample.h"

namespace foldyard {
namespace {

Job named(const char* name) {
  Job job = sample::job();
  job.name = name;
  return job;
}

class JobFileTest : public testing::Test {
 protected:
  JobFileTest() { write(write_job(named("On disk"))); }

  void write(const QByteArray& bytes) {
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
  }

  QTemporaryDir folder;
  QString path = folder.filePath("a.json");
  Document document;
};

TEST_F(JobFileTest, OpensAndSaves) {
  ASSERT_FALSE(open_job_file(document, path));
  EXPECT_EQ(document.job().name, "On disk");
  EXPECT_EQ(document.path(), path);
  EXPECT_FALSE(document.is_changed());
  ASSERT_FALSE(document.edit(named("Edited"), "rename"));
  ASSERT_FALSE(save_job_file(document, path));
  EXPECT_FALSE(document.is_changed());
  EXPECT_EQ(load_job(path)->name, "Edited");
  EXPECT_EQ(change_on_disk(document), FileChange::none);
}

TEST_F(JobFileTest, AFileThatCannotBeOpenedChangesNothing) {
  document.open(named("Here"), "/here.json");
  const auto problem = open_job_file(document, folder.filePath("none.json"));
  ASSERT_TRUE(problem);
  EXPECT_NE(problem->sentence().find("none.json"), std::string::npos);
  EXPECT_EQ(document.job().name, "Here");
  EXPECT_EQ(document.path(), "/here.json");
}

TEST_F(JobFileTest, ASaveThatFailsLeavesTheDocumentChanged) {
  ASSERT_FALSE(open_job_file(document, path));
  document.edit(named("Edited"), "rename");
  EXPECT_TRUE(save_job_file(document, folder.filePath("none/a.json")));
  EXPECT_TRUE(document.is_changed());
  EXPECT_EQ(document.path(), path);
}

TEST_F(JobFileTest, SeesWhatAnotherProgramDid) {
  EXPECT_EQ(change_on_disk(document), FileChange::none);  // no file yet
  ASSERT_FALSE(open_job_file(document, path));
  EXPECT_EQ(change_on_disk(document), FileChange::none);
  write(write_job(named("By another")));
  EXPECT_EQ(change_on_disk(document), FileChange::changed);
  QFile::remove(path);
  EXPECT_EQ(change_on_disk(document), FileChange::removed);
}

TEST_F(JobFileTest, AnAcceptedChangeIsAskedNoMoreAndCountsAsUnsaved) {
  ASSERT_FALSE(open_job_file(document, path));
  write(write_job(named("By another")));
  accept_change(document);
  EXPECT_EQ(change_on_disk(document), FileChange::none);
  EXPECT_TRUE(document.is_changed());
  EXPECT_EQ(document.job().name, "On disk");
  ASSERT_FALSE(save_job_file(document, path));
  EXPECT_FALSE(document.is_changed());
}

TEST_F(JobFileTest, ReadingAgainCanBeUndone) {
  ASSERT_FALSE(open_job_file(document, path));
  document.edit(named("Edited"), "rename");
  write(write_job(named("By another")));
  ASSERT_FALSE(read_job_file_again(document, "read again"));
  EXPECT_EQ(document.job().name, "By another");
  EXPECT_FALSE(document.is_changed());
  EXPECT_EQ(change_on_disk(document), FileChange::none);
  document.history().undo();
  EXPECT_EQ(document.job().name, "Edited");
  EXPECT_TRUE(document.is_changed());
}

TEST_F(JobFileTest, AChangeThatIsNoJobIsRefusedAndKeepsOurs) {
  ASSERT_FALSE(open_job_file(document, path));
  write("{}");
  EXPECT_TRUE(read_job_file_again(document, "read again"));
  EXPECT_EQ(document.job().name, "On disk");
  EXPECT_EQ(change_on_disk(document), FileChange::changed);
}

TEST_F(JobFileTest, OneOfTwoWindowsHasTheFile) {
  FileClaim one(folder.filePath("locks"));
  FileClaim other(folder.filePath("locks"));
  EXPECT_TRUE(one.claim(path));
  EXPECT_TRUE(one.claim(path));
  EXPECT_FALSE(other.claim(path));
  EXPECT_TRUE(other.claim(folder.filePath("b.json")));
  EXPECT_FALSE(other.claim(path));
  EXPECT_TRUE(one.claim({}));
  EXPECT_TRUE(other.claim(path));
}

TEST_F(JobFileTest, ALinkIsTheSameFile) {
  const QString link = folder.filePath("link.json");
  ASSERT_TRUE(QFile::link(path, link));
  FileClaim one(folder.filePath("locks"));
  FileClaim other(folder.filePath("locks"));
  EXPECT_TRUE(one.claim(path));
  EXPECT_FALSE(other.claim(link));
}

TEST_F(JobFileTest, WhereNoLockCanBeMadeTheFileIsHad) {
  write("a file, no folder");
  EXPECT_TRUE(FileClaim(path).claim("/jobs/a.json"));
  EXPECT_TRUE(FileClaim(QString()).claim("/jobs/a.json"));
}

}  // namespace
}  // namespace foldyard
