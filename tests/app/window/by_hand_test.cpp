#include "window/by_hand.h"

#include <gtest/gtest.h>

#include <QTest>

#include "file/write_job.h"
#include "sample.h"
#include "window/main_window.h"

namespace foldyard {
namespace {

// The window with the real planner; off-centre on the table.
class ByHandTest : public testing::Test {
 protected:
  ByHandTest() {
    window.resize(1200, 860);
    window.show();
    window.document().open(sample::job(), {});
    EXPECT_TRUE(sample::waited_for([this] { return !window.planner().is_busy() && window.way_table()->row() >= 0; }, 60000));
    choose("off-centre");
  }

  void choose(const char* key) {
    FoldWay way;
    ASSERT_TRUE(way_from_key(key, way));
    const int row = window.way_table()->ways()->row_of(way);
    ASSERT_GE(row, 0);
    window.way_table()->setCurrentIndex(window.way_table()->ways()->index(row, WayModel::way));
    settle();
  }
  void settle() {
    ASSERT_TRUE(sample::waited_for([this] { return !hand().fold_hand().is_busy(); }, 60000));
    QTest::qWait(5);
  }
  void drag(int line, const std::vector<int>& places) {
    ClothTable* table = window.plan_view()->table();
    emit table->line_taken(line);
    for (const int mm : places) {
      emit table->line_moved(line, Length::mm(mm));
      QTest::qWait(3);
    }
    emit table->line_left(line);
    settle();
  }
  ByHand& hand() { return *window.by_hand(); }
  QUndoStack& history() { return window.document().history(); }
  const Plan& plan() { return *window.plan_view()->plan(); }
  Length line() { return plan().patterns[0].fold.lines[0]; }

  MainWindow window;
};

TEST_F(ByHandTest, AWholeDragIsOneStepWithItsWords) {
  const Length before = line();
  drag(0, {150, 200, 260, 300, 340, 371});
  EXPECT_TRUE(window.plan_view()->is_by_hand());
  const Length after = line();
  EXPECT_NE(after, before);
  EXPECT_EQ(history().count(), 1);
  EXPECT_TRUE(history().undoText().startsWith("Move fold line 1 to ")) << history().undoText().toStdString();
  history().undo();
  settle();
  EXPECT_FALSE(window.plan_view()->is_by_hand());
  EXPECT_EQ(line(), before);
  EXPECT_TRUE(hand().hand().is_empty());
  history().redo();
  settle();
  EXPECT_EQ(line(), after);
  EXPECT_EQ(window.document().job(), sample::job());
}

TEST_F(ByHandTest, TakingALineWithoutMovingItIsNoStep) {
  drag(0, {});
  EXPECT_EQ(history().count(), 0);
  drag(0, {300});
  history().undo();
  settle();
  drag(0, {});
  EXPECT_EQ(history().index(), 0);
  EXPECT_FALSE(window.plan_view()->is_by_hand());
}

TEST_F(ByHandTest, BackToTheBestFoldsIsAStepThatCanBeUndone) {
  const Length best = line();
  drag(0, {300});
  const Length moved = line();
  EXPECT_TRUE(hand().put_back_button()->isVisible());
  hand().put_back_button()->click();
  settle();
  EXPECT_EQ(line(), best);
  EXPECT_FALSE(hand().put_back_button()->isVisible());
  EXPECT_EQ(history().undoText(), "Back to the best folds");
  history().undo();
  settle();
  EXPECT_EQ(line(), moved);
}

TEST_F(ByHandTest, StepsAndEditsShareOneHistory) {
  drag(0, {300});
  const Hand set = hand().hand();
  Job job = window.document().job();
  job.panels[0].worth = Worth::whole(12);
  ASSERT_FALSE(window.document().edit(job, "Change the worth"));
  ASSERT_TRUE(sample::waited_for([this] { return !window.planner().is_busy() && window.plan_view()->is_by_hand(); }, 60000));
  EXPECT_EQ(hand().hand(), set);
  EXPECT_EQ(plan().patterns[0].fold.lines[0], *set.lines[0]);
  EXPECT_EQ(history().count(), 2);
  history().undo();
  history().undo();
  EXPECT_EQ(window.document().job(), sample::job());
  EXPECT_TRUE(hand().book().set().hands.empty());
}

TEST_F(ByHandTest, EachWayKeepsWhatWasSetForIt) {
  drag(0, {300});
  const Length moved = line();
  choose("open");
  EXPECT_FALSE(window.plan_view()->is_by_hand());
  choose("off-centre");
  EXPECT_TRUE(window.plan_view()->is_by_hand());
  EXPECT_EQ(line(), moved);
}

TEST_F(ByHandTest, UndoBringsTheWayOntoTheTable) {
  const FoldWay way = plan().way;
  drag(0, {300});
  choose("open");
  history().undo();
  settle();
  EXPECT_EQ(plan().way, way);
  EXPECT_FALSE(window.plan_view()->is_by_hand());
}

TEST_F(ByHandTest, PinsTheHeldLineByKeyAndTakesThePinOut) {
  BoardView* flat = window.plan_view()->table()->flat();
  flat->setFocus();
  QTest::keyClick(flat, Qt::Key_P);
  settle();
  EXPECT_EQ(hand().hand().lines.at(0), line());
  EXPECT_EQ(flat->pins(), std::vector<bool>{true});
  EXPECT_TRUE(history().undoText().startsWith("Pin fold line 1 at "));
  QTest::keyClick(flat, Qt::Key_P);
  settle();
  EXPECT_TRUE(hand().hand().is_empty());
  EXPECT_TRUE(flat->pins().empty());
}

TEST_F(ByHandTest, StepsByKeysAreStepsOfTheHistory) {
  BoardView* flat = window.plan_view()->table()->flat();
  flat->setFocus();
  QTest::keyClick(flat, Qt::Key_Left, Qt::ControlModifier);
  settle();
  QTest::keyClick(flat, Qt::Key_Right, Qt::ControlModifier);
  settle();
  EXPECT_EQ(history().count(), 2);
  EXPECT_EQ(flat->snap(), Snap::yield_changes);
}

TEST_F(ByHandTest, KeepsOneLength) {
  hand().keep_length(Length::mm(960));
  settle();
  for (const Pattern& pattern : plan().patterns) EXPECT_EQ(pattern.length, Length::mm(960));
  EXPECT_EQ(history().undoText(), "Keep lengths of 96 cm");
  hand().keep_length(std::nullopt);
  settle();
  EXPECT_FALSE(window.plan_view()->is_by_hand());
}

TEST_F(ByHandTest, TellsWhatCannotBeAndKeepsTheLastPlan) {
  drag(0, {300});
  const Length before = line();
  hand().keep_length(Length::mm(10));
  settle();
  EXPECT_TRUE(window.notice().contains("no panel fits lengths of 1 cm")) << window.notice().toStdString();
  EXPECT_EQ(line(), before);
  EXPECT_EQ(history().count(), 1);
}

TEST_F(ByHandTest, AnotherDocumentForgetsWhatWasSet) {
  drag(0, {300});
  window.document().open(sample::job(), {});
  ASSERT_TRUE(sample::waited_for([this] { return !window.planner().is_busy(); }, 60000));
  EXPECT_TRUE(hand().book().set().hands.empty());
  EXPECT_EQ(history().count(), 0);
}

}  // namespace
}  // namespace foldyard
