// The batch by its menu and by dragging rolls, and the shelf as a table.

#include <gtest/gtest.h>

#include <QAction>
#include <QDropEvent>
#include <QMenu>
#include <QMenuBar>
#include <QMimeData>
#include <QTemporaryDir>

#include "sample.h"
#include "table/roll_drop.h"
#include "window/batch_drag.h"
#include "window/main_window.h"

namespace foldyard {
namespace {

struct BatchMenuTest : testing::Test {
  BatchMenuTest() {
    window.open_demo();
    window.show();
  }
  QAction* entry(const QString& text) {
    for (QAction* menu : window.menuBar()->actions()) {
      if (!menu->text().startsWith("Bat&ch")) continue;
      for (QAction* each : menu->menu()->actions())
        if (each->text().remove('&').startsWith(text)) return each;
    }
    return nullptr;
  }
  InBatch in_batch(std::size_t roll) { return window.document().job().rolls[roll].in_batch; }
  // Drags it over a place and lets it go there.
  static bool drop(QWidget* place, QMimeData* dragged) {
    const std::unique_ptr<QMimeData> owned(dragged);
    const QPoint at = place->rect().center();
    QDragEnterEvent enter(at, Qt::CopyAction | Qt::MoveAction, dragged, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(place, &enter);
    QDropEvent let_go(QPointF(at), Qt::CopyAction | Qt::MoveAction, dragged, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(place, &let_go);
    return let_go.isAccepted();
  }

  MainWindow window;
};

TEST_F(BatchMenuTest, LeavesTheChosenRollOutAndTakesItIn) {
  const Job before = window.document().job();
  window.shelf()->choose(2);
  ASSERT_TRUE(entry("Cut from the chosen roll"));
  EXPECT_TRUE(entry("Cut from the chosen roll")->isChecked());
  entry("Cut from the chosen roll")->trigger();
  EXPECT_EQ(in_batch(2), InBatch::never);
  entry("Cut from it in any case")->trigger();
  EXPECT_EQ(in_batch(2), InBatch::must);
  window.document().history().undo();
  window.document().history().undo();
  EXPECT_EQ(window.document().job(), before);
  EXPECT_TRUE(entry("Cut from the chosen roll")->isChecked());
}

TEST_F(BatchMenuTest, ARollIsDraggedOutOfTheBatchAndBackIn) {
  EXPECT_TRUE(drop(window.shelf()->list()->viewport(), BatchDrag::roll_out(1)));
  EXPECT_EQ(in_batch(1), InBatch::never);
  EXPECT_EQ(window.document().job().rolls.size(), 6u);  // it stands where it stood
  EXPECT_TRUE(drop(window.batch_page()->view(), roll_to_drag(1).release()));
  EXPECT_EQ(in_batch(1), InBatch::may);
  EXPECT_FALSE(drop(window.batch_page()->view(), new QMimeData));
}

TEST_F(BatchMenuTest, OnlyRowsOfRollsAreDragged) {
  auto* view = window.batch_page()->view();
  view->choose(BatchTableKind::rolls);
  view->table()->setCurrentIndex(view->model()->index(1, 0));
  const std::unique_ptr<QMimeData> roll(view->model()->mimeData({view->model()->index(1, 0)}));
  ASSERT_TRUE(roll);
  EXPECT_FALSE(roll->formats().isEmpty());
}

TEST_F(BatchMenuTest, TheShelfGoesToASpreadsheetAndBack) {
  QTemporaryDir folder;
  const QString path = folder.filePath("shelf.csv");
  ASSERT_TRUE(window.write_shelf_to(path));
  const Job before = window.document().job();
  Job shorter = before;
  shorter.rolls[0].length = Length::mm(9'000);
  EXPECT_FALSE(window.document().edit(shorter, "shorter"));
  EXPECT_TRUE(window.read_shelf_from(path));
  EXPECT_EQ(window.document().job().rolls[0].length, before.rolls[0].length);
  EXPECT_EQ(window.document().history().undoText(), "take the shelf from a spreadsheet");
  EXPECT_FALSE(window.read_shelf_from(folder.filePath("none.csv")));
  EXPECT_FALSE(window.notice().isEmpty());
}

}  // namespace
}  // namespace foldyard
