#include "document/file_mark.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>

#include "file/read_job.h"

namespace foldyard {
namespace {

class FileMarkTest : public testing::Test {
 protected:
  void write(const QByteArray& bytes) {
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
  }
  void set_time(const QDateTime& time) {
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    ASSERT_TRUE(file.setFileTime(time, QFileDevice::FileModificationTime));
  }

  QTemporaryDir folder;
  QString path = folder.filePath("a.json");
};

TEST_F(FileMarkTest, KnowsTheHashOfItsBytes) {
  write("abc");
  const auto mark = mark_of_file(path);
  ASSERT_TRUE(mark);
  EXPECT_EQ(mark->size, 3);
  // SHA-256 of "abc": FIPS 180-2, appendix B.1.
  EXPECT_EQ(mark->hash.toHex(), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
}

TEST_F(FileMarkTest, OnlyOtherBytesAreAChange) {
  write("one");
  const auto mark = *mark_of_file(path);
  EXPECT_EQ(change_since(mark, path), FileChange::none);
  set_time(QDateTime::fromSecsSinceEpoch(1'000'000));
  EXPECT_EQ(change_since(mark, path), FileChange::none);
  write("two");
  EXPECT_EQ(change_since(mark, path), FileChange::changed);
  write("one");
  EXPECT_EQ(change_since(mark, path), FileChange::none);
}

TEST_F(FileMarkTest, SameSizeAndTimeWithOtherBytesIsAChange) {
  const auto time = QDateTime::fromSecsSinceEpoch(1'000'000);
  write("one");
  set_time(time);
  const auto mark = *mark_of_file(path);
  write("two");
  set_time(time);
  EXPECT_EQ(mark_of_file(path)->time, mark.time);
  EXPECT_EQ(change_since(mark, path), FileChange::changed);
}

TEST_F(FileMarkTest, AFileThatIsGoneIsRemoved) {
  write("one");
  const auto mark = *mark_of_file(path);
  QFile::remove(path);
  EXPECT_EQ(change_since(mark, path), FileChange::removed);
  EXPECT_FALSE(mark_of_file(path));
  EXPECT_FALSE(mark_of_file(folder.path()));
}

TEST_F(FileMarkTest, AFileTooLargeForAJobIsToldByItsSizeAndTime) {
  write("one");
  const auto small = *mark_of_file(path);
  QFile file(path);
  ASSERT_TRUE(file.resize(kLargestJobFile + 1));
  const auto large = mark_of_file(path);
  ASSERT_TRUE(large);
  EXPECT_TRUE(large->hash.isEmpty());
  EXPECT_EQ(change_since(small, path), FileChange::changed);
  EXPECT_EQ(change_since(*large, path), FileChange::none);
  set_time(QDateTime::fromSecsSinceEpoch(1'000'000));
  EXPECT_EQ(change_since(*large, path), FileChange::changed);
}

}  // namespace
}  // namespace foldyard
