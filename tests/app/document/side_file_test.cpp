#include "document/side_file.h"

#include <gtest/gtest.h>

#include "support/job_sample.h"

namespace foldyard {
namespace {

SideFile written_side() {
  return {sample::job(), "/home/maker/ärmel.json", FileMark{12, "hash", QDateTime::fromMSecsSinceEpoch(1'700'000'000'123)},
          QDateTime::fromMSecsSinceEpoch(1'700'000'100'456), 1};
}

TEST(SideFileTest, GivesBackWhatWasWritten) {
  const auto read = read_side_file(write_side_file(written_side()));
  ASSERT_TRUE(read) << read.problem().sentence();
  EXPECT_EQ(read->job, written_side().job);
  EXPECT_EQ(read->path, written_side().path);
  EXPECT_EQ(read->time, written_side().time);
  EXPECT_EQ(read->crashes, 1);
  ASSERT_TRUE(read->mark);
  EXPECT_EQ(read->mark->size, 12);
  EXPECT_EQ(read->mark->hash, "hash");
  EXPECT_EQ(read->mark->time, written_side().mark->time);
}

TEST(SideFileTest, AJobWithoutAFileHasNoMark) {
  SideFile plain{sample::job(), {}, {}, written_side().time, 0};
  const auto read = read_side_file(write_side_file(plain));
  ASSERT_TRUE(read);
  EXPECT_TRUE(read->path.isEmpty());
  EXPECT_FALSE(read->mark);
}

TEST(SideFileTest, IsRefusedWhereverItIsCutShort) {
  const QByteArray whole = write_side_file(written_side());
  for (int size = 0; size < whole.size(); ++size) EXPECT_FALSE(read_side_file(whole.left(size))) << size;
}

TEST(SideFileTest, IsRefusedWhereverAByteIsChanged) {
  const QByteArray whole = write_side_file(written_side());
  for (int at = 0; at < whole.size(); ++at) {
    QByteArray changed = whole;
    changed[at] = static_cast<char>(changed[at] ^ 1);
    EXPECT_FALSE(read_side_file(changed)) << at;
  }
}

TEST(SideFileTest, IsRefusedWithMoreBehindIt) { EXPECT_FALSE(read_side_file(write_side_file(written_side()) + " ")); }

TEST(SideFileTest, AJobThatCannotStandIsRefusedAlthoughTheSideFileIsWhole) {
  SideFile wrong = written_side();
  wrong.job.rolls[0].fabric.width = Length::mm(15);  // its selvedges are 2 × 10 mm
  EXPECT_FALSE(read_side_file(write_side_file(wrong)));
}

}  // namespace
}  // namespace foldyard
