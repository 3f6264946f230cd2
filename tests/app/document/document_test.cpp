#include "document/document.h"

#include <gtest/gtest.h>

#include <random>

#include "support/job_sample.h"

namespace foldyard {
namespace {

Job with_width(Job job, int mm) {
  job.rolls[0].fabric.width = Length::mm(mm);
  return job;
}

class DocumentTest : public testing::Test {
 protected:
  DocumentTest() { document.open(sample::job(), "/tmp/a.json"); }
  Document document;
};

TEST_F(DocumentTest, TakesAnEditAndGivesItBack) {
  EXPECT_FALSE(document.edit(with_width(sample::job(), 1600), "change the width"));
  EXPECT_EQ(document.job(), with_width(sample::job(), 1600));
  EXPECT_TRUE(document.is_changed());
  EXPECT_EQ(document.history().undoText(), "change the width");
  document.history().undo();
  EXPECT_EQ(document.job(), sample::job());
  EXPECT_FALSE(document.is_changed());
  document.history().redo();
  EXPECT_EQ(document.job(), with_width(sample::job(), 1600));
}

TEST_F(DocumentTest, RefusesAJobThatCannotStand) {
  const auto problem = document.edit(with_width(sample::job(), 15), "change the width");
  ASSERT_TRUE(problem);
  EXPECT_FALSE(problem->what.empty());
  EXPECT_EQ(document.job(), sample::job());
  EXPECT_EQ(document.history().count(), 0);
}

TEST_F(DocumentTest, AnEditThatChangesNothingLeavesNoTrace) {
  EXPECT_FALSE(document.edit(sample::job(), "nothing"));
  EXPECT_EQ(document.history().count(), 0);
}

TEST_F(DocumentTest, JoinsWhatIsTypedIntoOneField) {
  for (const int mm : {1510, 1520, 1530}) document.edit(with_width(sample::job(), mm), "width", "rolls[0].width");
  EXPECT_EQ(document.history().count(), 1);
  document.end_field();
  document.edit(with_width(sample::job(), 1540), "width", "rolls[0].width");
  EXPECT_EQ(document.history().count(), 2);
  document.history().undo();
  EXPECT_EQ(document.job(), with_width(sample::job(), 1530));
  document.history().undo();
  EXPECT_EQ(document.job(), sample::job());
}

TEST_F(DocumentTest, TypingBackToTheOldValueLeavesNoTrace) {
  for (const int mm : {1510, 1500}) document.edit(with_width(sample::job(), mm), "width", "rolls[0].width");
  EXPECT_EQ(document.job(), sample::job());
  EXPECT_EQ(document.history().count(), 0);
  EXPECT_FALSE(document.is_changed());
}

TEST_F(DocumentTest, ASavedJobIsUnchangedUntilTheNextEdit) {
  document.edit(with_width(sample::job(), 1600), "width");
  document.set_saved("/tmp/b.json");
  EXPECT_FALSE(document.is_changed());
  EXPECT_EQ(document.path(), "/tmp/b.json");
  document.history().undo();
  EXPECT_TRUE(document.is_changed());
}

// A step by hand is one: it is in the history and not in the job.
TEST_F(DocumentTest, AStepThatDoesNotTouchTheJobDoesNotChangeIt) {
  document.history().push(new QUndoCommand("move fold line 1"));
  EXPECT_FALSE(document.is_changed());
  document.edit(with_width(sample::job(), 1600), "width");
  document.history().push(new QUndoCommand("move fold line 1"));
  EXPECT_TRUE(document.is_changed());
  document.history().undo();
  document.history().undo();
  EXPECT_FALSE(document.is_changed());
}

TEST_F(DocumentTest, AJobThatIsEditedBackIsUnchanged) {
  document.edit(with_width(sample::job(), 1600), "width");
  document.edit(sample::job(), "width");
  EXPECT_EQ(document.history().count(), 2);
  EXPECT_FALSE(document.is_changed());
}

TEST_F(DocumentTest, ARecoveredJobCountsAsChangedUntilItIsSaved) {
  document.recover(with_width(sample::job(), 1600), "/tmp/a.json", {});
  EXPECT_TRUE(document.is_changed());
  EXPECT_FALSE(document.history().canUndo());
  document.edit(with_width(sample::job(), 1700), "width");
  document.history().undo();
  EXPECT_TRUE(document.is_changed());
  document.set_saved("/tmp/a.json");
  EXPECT_FALSE(document.is_changed());
  document.recover(sample::job(), {}, {});
  document.open(sample::job(), {});
  EXPECT_FALSE(document.is_changed());
}

TEST_F(DocumentTest, TellsWhenItIsKeptElsewhere) {
  int told = 0;
  QObject::connect(&document, &Document::kept, [&] { ++told; });
  document.set_saved("/tmp/b.json");
  document.count_as_changed();
  EXPECT_TRUE(document.is_changed());
  document.open(sample::job(), {});
  EXPECT_EQ(told, 3);
}

TEST_F(DocumentTest, AsManyUndosAsEditsGiveTheFirstJob) {
  const auto seed = std::random_device{}();
  SCOPED_TRACE(testing::Message() << "seed " << seed);
  std::mt19937 random(seed);
  std::vector<Job> jobs = {document.job()};
  for (int i = 0; i < 100; ++i) {
    Job next = document.job();
    next.rolls[random() % 2].length = Length::mm(static_cast<int>(2000 + random() % 50000));
    next.panels[random() % 2].worth = Worth::whole(static_cast<int>(1 + random() % 20));
    document.edit(next, "change");
    if (document.job() != jobs.back()) jobs.push_back(document.job());
  }
  for (auto before = jobs.rbegin(); before != jobs.rend(); ++before) {
    EXPECT_EQ(document.job(), *before);
    document.history().undo();
  }
  EXPECT_FALSE(document.history().canUndo());
}

}  // namespace
}  // namespace foldyard
