// An order from its plan to the last cut, in the real window: planned, tickets written,
// half of it cut with what went wrong, planned again, finished; and all of it undone.

#include <gtest/gtest.h>

#include <QApplication>
#include <QFile>
#include <QFileDialog>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include <algorithm>

#include "batch/cut_dialog.h"
#include "sample.h"
#include "window/main_window.h"

namespace foldyard {
namespace {

// Does it to the dialog of this kind that opens next.
template <class Dialog>
void with_next(const std::function<void(Dialog&)>& act, int tries = 200) {
  QTimer::singleShot(20, [=] {
    auto* dialog = qobject_cast<Dialog*>(QApplication::activeModalWidget());
    if (dialog) return act(*dialog);
    ASSERT_GT(tries, 0) << "no such dialog opened";
    with_next<Dialog>(act, tries - 1);
  });
}

void fill_in(FillInModel* model, int row, const QString& text) {
  EXPECT_TRUE(model->setData(model->index(row, model->fill_in_column()), text, Qt::EditRole));
}

// The first half of the lays, and those that must be cut with them.
void tick_half(CutDialog& dialog) {
  const int lays = dialog.lays()->rowCount();
  for (int lay = lays / 2; lay < lays; ++lay) dialog.lays()->setData(dialog.lays()->index(lay, 0), Qt::Unchecked, Qt::CheckStateRole);
  for (int lay = lays / 2; lay < lays && !dialog.confirmer()->isEnabled(); ++lay)
    dialog.lays()->setData(dialog.lays()->index(lay, 0), Qt::Checked, Qt::CheckStateRole);
}

struct BatchPathTest : testing::Test {
  BatchPathTest() {
    window.resize(1480, 900);
    window.start({});
    window.show();
    window.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
  }
  BatchPage& page() { return *window.batch_page(); }
  BatchView& view() { return *page().view(); }
  const Job& job() { return window.document().job(); }
  // The answer is for the job as it is.
  bool wait_for_answer() {
    return sample::waited_for([this] { return !page().planner().is_busy() && view().answer() && view().answer()->job == job(); }, 240000);
  }
  void press(QWidget* button) {
    button->setFocus(Qt::TabFocusReason);
    QTest::keyClick(button, Qt::Key_Space);
  }
  void key(Qt::Key key, Qt::KeyboardModifiers with) {
    window.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    QTest::keyClick(&window, key, with);
  }
  // What was marked last; as it was before is what undo gives back.
  void expect_undo_and_redo(const Job& before) {
    const Job after = job();
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(job(), before);
    window.document().history().redo();
    EXPECT_EQ(job(), after);
  }

  MainWindow window;
};

TEST_F(BatchPathTest, FromThePlanToTheLastCutAndBack) {
  key(Qt::Key_B, Qt::ControlModifier);
  ASSERT_TRUE(page().isVisible());
  ASSERT_TRUE(wait_for_answer());
  const Job begun = job();
  EXPECT_EQ(view().figures()->text(BatchFigures::pieces), "36 of 36");

  QTemporaryDir folder;
  const QString tickets = folder.filePath(QStringLiteral("tickets.pdf"));
  with_next<QFileDialog>([&](QFileDialog& dialog) {
    dialog.selectFile(tickets);
    QMetaObject::invokeMethod(&dialog, "accept");
  });
  press(view().ticketer());
  QFile file(tickets);
  ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << view().fault().toStdString();
  EXPECT_TRUE(file.readAll().startsWith("%PDF-"));

  // Half of it; a panel is spoilt, and a roll turns out to be 20 cm shorter.
  with_next<CutDialog>([&](CutDialog& dialog) {
    tick_half(dialog);
    fill_in(dialog.spoilt(), 0, "1");
    const auto roll = dialog.left()->rows()[0].key.toULongLong();
    const auto after = std::find_if(dialog.job().rolls.begin(), dialog.job().rolls.end(),
                                    [&](const Roll& each) { return each.name == begun.rolls[roll].name; });
    ASSERT_NE(after, dialog.job().rolls.end());
    fill_in(dialog.left(), 0, QStringLiteral("%1 mm").arg((after->length - Length::mm(200)).units() / Length::mm(1).units()));
    ASSERT_TRUE(dialog.confirmer()->isEnabled()) << dialog.reason().toStdString();
    press(dialog.confirmer());
  });
  press(view().marker());
  ASSERT_EQ(job().history.size(), 1u);
  EXPECT_FALSE(job().on_hand.empty());
  expect_undo_and_redo(begun);

  // What is left of it.
  ASSERT_TRUE(wait_for_answer());
  const Job half = job();
  ASSERT_FALSE(view().answer()->plan.lays.empty());
  with_next<CutDialog>([&](CutDialog& dialog) { press(dialog.confirmer()); });
  press(view().marker());
  ASSERT_EQ(job().history.size(), 2u);
  expect_undo_and_redo(half);

  // Nothing is to be cut any more, and all pieces can be sewn.
  ASSERT_TRUE(wait_for_answer()) << view().fault().toStdString();
  EXPECT_TRUE(view().answer()->plan.shortfalls.empty());
  EXPECT_EQ(view().figures()->text(BatchFigures::pieces), "36 of 36");
  for (int i = 0; i < 2; ++i) key(Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(job(), begun);
}

}  // namespace
}  // namespace foldyard
