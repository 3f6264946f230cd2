#include "shelf/shelf.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QApplication>
#include <QTest>
#include <QTimer>

#include "shelf/roll_dialog.h"
#include "shelf/roll_edits.h"
#include "shelf_sample.h"

namespace foldyard {
namespace {

using Names = std::vector<std::string>;

class ShelfTest : public testing::Test {
 protected:
  ShelfTest() {
    document.open(sample::shelf_job(), {});
    QObject::connect(&shelf, &Shelf::put, [this](int roll) { put.push_back(roll); });
    shelf.resize(340, 700);
    shelf.show();
    shelf.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&shelf));
    shelf.list()->setFocus();
  }

  Names names() { return names_of(document.job().rolls); }
  std::string chosen() { return names()[static_cast<std::size_t>(shelf.roll())]; }
  std::string on_table() { return names()[static_cast<std::size_t>(shelf.on_table())]; }
  QString step() { return document.history().undoText(); }

  Document document;
  Shelf shelf{document};
  std::vector<int> put;
};

TEST_F(ShelfTest, ArrowKeysChooseAndPutNothingOnTheTable) {
  QTest::keyClick(shelf.list(), Qt::Key_Down);
  EXPECT_EQ(chosen(), "Slate");
  EXPECT_EQ(shelf.form()->field(0)->line()->text(), "140 cm");
  EXPECT_EQ(on_table(), "Moss");
  EXPECT_TRUE(put.empty());
  QTest::keyClick(shelf.list(), Qt::Key_Return);
  EXPECT_EQ(on_table(), "Slate");
  EXPECT_EQ(put, std::vector<int>{1});
  EXPECT_EQ(document.history().count(), 0);
}

TEST_F(ShelfTest, TheButtonPutsTheChosenOneOnTheTable) {
  EXPECT_FALSE(shelf.putter()->isEnabled());  // it lies there already
  shelf.choose(3);
  shelf.putter()->click();
  EXPECT_EQ(put, std::vector<int>{3});
  EXPECT_TRUE(shelf.list()->hasFocus());
  EXPECT_FALSE(shelf.actions().put->isEnabled());
  shelf.clear_table();
  EXPECT_EQ(shelf.on_table(), -1);
  EXPECT_TRUE(shelf.putter()->isEnabled());
}

TEST_F(ShelfTest, SearchesAndSaysWhenNothingIsFound) {
  QTest::keyClicks(shelf.search(), "flaw");
  EXPECT_EQ(shelf.list()->model()->rowCount(), 1);
  EXPECT_EQ(chosen(), "Rust");
  EXPECT_FALSE(shelf.words()->isVisible());
  QTest::keyClicks(shelf.search(), "less");
  EXPECT_EQ(shelf.list()->model()->rowCount(), 0);
  EXPECT_EQ(shelf.words()->text(), "No roll has “flawless”; clear the line above to see all 5.");
  EXPECT_EQ(chosen(), "Rust");
  shelf.search()->clear();
  EXPECT_EQ(shelf.list()->model()->rowCount(), 5);
  EXPECT_FALSE(shelf.words()->isVisible());
  EXPECT_EQ(shelf.list()->currentIndex().row(), 3);
}

TEST_F(ShelfTest, KeysGoFromTheSearchToTheListAndClearIt) {
  shelf.search()->setFocus();
  QTest::keyClicks(shelf.search(), "rust");
  QTest::keyClick(shelf.search(), Qt::Key_Down);
  EXPECT_TRUE(shelf.list()->hasFocus());
  QTest::keyClick(shelf.list(), Qt::Key_Return);
  EXPECT_EQ(on_table(), "Rust");
  shelf.search()->setFocus();
  QTest::keyClick(shelf.search(), Qt::Key_Escape);
  EXPECT_TRUE(shelf.search()->text().isEmpty());
  EXPECT_EQ(shelf.list()->model()->rowCount(), 5);
}

TEST_F(ShelfTest, AReaderIsToldAllOfEachRoll) {
  auto* seen = QAccessible::queryAccessibleInterface(shelf.list());
  ASSERT_NE(seen, nullptr);
  EXPECT_EQ(seen->text(QAccessible::Name), "Rolls");
  ASSERT_EQ(seen->childCount(), 5);
  EXPECT_EQ(seen->child(3)->text(QAccessible::Name), "Rust: 140 cm wide, 5 m long; 2 flaws.");
  EXPECT_TRUE(seen->child(0)->text(QAccessible::Name).contains("on the table"));
}

TEST_F(ShelfTest, TheChosenRollStaysInSight) {
  shelf.choose(4);
  for (const int height : {700, 420, 360}) {
    shelf.resize(340, height);
    QTest::qWait(1);
    const QRect row = shelf.list()->visualRect(shelf.list()->currentIndex());
    EXPECT_TRUE(shelf.list()->viewport()->rect().contains(row)) << height;
  }
}

TEST_F(ShelfTest, AddsARollOfAKindOfClothAndChoosesIt) {
  shelf.search()->setText(QStringLiteral("rust"));
  shelf.add_roll(*cloth_kind("velvet"));
  ASSERT_EQ(names().size(), 6u);
  EXPECT_EQ(shelf.roll(), 5);
  EXPECT_TRUE(shelf.search()->text().isEmpty());  // or it would not be seen
  EXPECT_TRUE(shelf.form()->one_way()->isChecked());
  EXPECT_EQ(shelf.form()->field(3)->line()->text(), "1.6 mm");
  EXPECT_EQ(document.job().rolls[5].length, Length::mm(5000));  // as long as the one chosen before
  EXPECT_TRUE(step().contains("Velvet"));
  document.history().undo();
  EXPECT_EQ(document.job(), sample::shelf_job());
}

TEST_F(ShelfTest, OffersEveryKindOfClothInItsMenu) {
  const auto entries = shelf.adder()->menu()->actions();
  ASSERT_EQ(entries.size(), static_cast<qsizetype>(cloth_kinds().size()));
  entries.first()->trigger();
  EXPECT_EQ(names().size(), 6u);
}

TEST_F(ShelfTest, DuplicatesTheChosenRoll) {
  shelf.choose(1);
  shelf.actions().copy->trigger();
  EXPECT_EQ(names(), (Names{"Moss", "Slate", "Slate 2", "Fern", "Rust", "Weld"}));
  EXPECT_EQ(chosen(), "Slate 2");
  EXPECT_TRUE(step().contains("duplicate “Slate”"));
  document.history().undo();
  EXPECT_EQ(document.job(), sample::shelf_job());
}

TEST_F(ShelfTest, DeleteTakesTheChosenRollAwayAndUndoBringsItBack) {
  shelf.choose(1);
  QTest::keyClick(shelf.list(), Qt::Key_Delete);
  EXPECT_EQ(names(), (Names{"Moss", "Fern", "Rust", "Weld"}));
  EXPECT_EQ(chosen(), "Fern");
  EXPECT_EQ(on_table(), "Moss");
  EXPECT_TRUE(step().contains("Slate"));
  document.history().undo();
  EXPECT_EQ(document.job(), sample::shelf_job());
}

TEST_F(ShelfTest, TheLastRollStaysAndASentenceSaysWhy) {
  Job job = sample::job();
  job.rolls.pop_back();
  document.open(job, {});
  shelf.take_away();
  EXPECT_EQ(document.job(), job);
  EXPECT_TRUE(shelf.words()->isVisible());
  EXPECT_TRUE(shelf.words()->text().contains("only roll")) << shelf.words()->text().toStdString();
  shelf.add_roll(*cloth_kind("velvet"));
  EXPECT_FALSE(shelf.words()->isVisible());
}

// A panel that fits no other roll keeps its roll.
TEST_F(ShelfTest, ARollThatAPanelNeedsStays) {
  Job job = sample::job();
  job.panels[0].across = Length::mm(1450);
  job.panels[0].along = Length::mm(1450);
  document.open(job, {});
  shelf.take_away();
  EXPECT_EQ(document.job(), job);
  EXPECT_TRUE(shelf.words()->text().contains("Carrier")) << shelf.words()->text().toStdString();
}

TEST_F(ShelfTest, KeysMoveTheChosenRollUpAndDown) {
  shelf.choose(1);
  QTest::keyClick(shelf.list(), Qt::Key_Down, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_EQ(names(), (Names{"Moss", "Fern", "Slate", "Rust", "Weld"}));
  EXPECT_EQ(chosen(), "Slate");
  QTest::keyClick(shelf.list(), Qt::Key_Up, Qt::ControlModifier | Qt::ShiftModifier);
  QTest::keyClick(shelf.list(), Qt::Key_Up, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_EQ(names(), (Names{"Slate", "Moss", "Fern", "Rust", "Weld"}));
  EXPECT_EQ(on_table(), "Moss");  // it went along
  EXPECT_FALSE(shelf.actions().up->isEnabled());
  EXPECT_EQ(document.history().count(), 3);
  for (int i = 0; i < 3; ++i) document.history().undo();
  EXPECT_EQ(document.job(), sample::shelf_job());
  EXPECT_EQ(on_table(), "Moss");
  EXPECT_EQ(chosen(), "Slate");
}

TEST_F(ShelfTest, InANarrowedListARollMovesPastTheNextThatIsSeen) {
  shelf.search()->setText(QStringLiteral("140 cm"));  // Slate, Rust
  shelf.choose(1);
  shelf.move_down();
  EXPECT_EQ(names(), (Names{"Moss", "Fern", "Rust", "Slate", "Weld"}));
}

TEST_F(ShelfTest, ADropMovesTheRollInOneStep) {
  shelf.move(4, 0);
  EXPECT_EQ(names(), (Names{"Weld", "Moss", "Slate", "Fern", "Rust"}));
  EXPECT_EQ(chosen(), "Weld");
  EXPECT_EQ(document.history().count(), 1);
  shelf.move(0, 0);
  shelf.move(0, 1);  // to where it stands
  EXPECT_EQ(document.history().count(), 1);
}

TEST_F(ShelfTest, TheRollOnTheTableIsFollowedThroughEveryEdit) {
  shelf.put_on_table(3);
  shelf.move(3, 0);
  EXPECT_EQ(on_table(), "Rust");
  shelf.choose(1);
  shelf.take_away();
  EXPECT_EQ(on_table(), "Rust");
  document.history().undo();
  document.history().undo();
  EXPECT_EQ(on_table(), "Rust");
  EXPECT_EQ(shelf.rolls()->on_table(), 3);
}

// Does something with the dialog that is asked for.
template <class Act>
void with_dialog(Shelf& shelf, Act act) {
  QTimer::singleShot(0, &shelf, [act] {
    auto* dialog = qobject_cast<RollDialog*>(QApplication::activeModalWidget());
    ASSERT_NE(dialog, nullptr);
    act(*dialog);
  });
  shelf.teller()->click();
}

TEST_F(ShelfTest, TheDialogIsOneStep) {
  shelf.choose(2);
  with_dialog(shelf, [](RollDialog& dialog) {
    dialog.name()->clear();
    QTest::keyClicks(dialog.name(), "Bracken");
    dialog.railroaded()->click();
    dialog.accept();
  });
  EXPECT_EQ(document.history().count(), 1);
  EXPECT_EQ(chosen(), "Bracken");
  EXPECT_FALSE(document.job().rolls[2].fabric.railroaded);
  EXPECT_TRUE(step().contains("Fern"));
  document.history().undo();
  EXPECT_EQ(document.job(), sample::shelf_job());
}

TEST_F(ShelfTest, ADialogThatIsLeftChangesNothing) {
  with_dialog(shelf, [](RollDialog& dialog) {
    dialog.railroaded()->click();
    dialog.reject();
  });
  EXPECT_EQ(document.history().count(), 0);
}

TEST_F(ShelfTest, ANewDocumentHasItsFirstRollOnTheTable) {
  shelf.put_on_table(4);
  shelf.search()->setText(QStringLiteral("weld"));
  document.open(sample::job(), {});
  EXPECT_EQ(chosen(), "Moss");
  EXPECT_EQ(on_table(), "Moss");
  EXPECT_EQ(shelf.list()->model()->rowCount(), 2);
  EXPECT_EQ(shelf.list()->currentIndex().row(), 0);
}

TEST_F(ShelfTest, EveryTargetIsLargeEnough) {
  for (QWidget* target : std::initializer_list<QWidget*>{shelf.search(), shelf.putter(), shelf.adder(), shelf.teller()}) {
    EXPECT_GE(target->height(), 24) << target->accessibleName().toStdString();
    EXPECT_GE(target->width(), 24);
  }
}

}  // namespace
}  // namespace foldyard
