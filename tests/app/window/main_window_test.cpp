#include "window/main_window.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QAction>
#include <QClipboard>
#include <QDropEvent>
#include <QFile>
#include <QMenu>
#include <QLineEdit>
#include <QMenuBar>
#include <QMimeData>
#include <QTemporaryDir>
#include <QTest>

#include <set>

#include "cloth/length_estimate.h"
#include "file/read_job.h"
#include "file/write_job.h"
#include "job/plan_roll.h"
#include "printing/print_dialog.h"
#include "sample.h"
#include "table/roll_drop.h"
#include "window/range_line.h"

namespace foldyard {
namespace {

// With the real planner, on the sample job.
class MainWindowTest : public testing::Test {
 protected:
  MainWindowTest() {
    window.resize(1024, 768);
    window.show();
    window.document().open(sample::job(), {});
    wait();
  }

  void wait() {
    ASSERT_TRUE(sample::waited_for([this] { return !window.planner().is_busy(); }, 60000));
  }

  void type(QWidget* widget, const QString& text) {
    widget->setFocus();
    QTest::keyClick(widget, Qt::Key_A, Qt::ControlModifier);
    QTest::keyClicks(widget, text);
  }

  QString answer() { return window.plan_view()->answer()->text(); }
  QAction* action(const QString& start) {
    for (auto* found : window.findChildren<QAction*>())
      if (found->text().remove(QLatin1Char('&')).startsWith(start)) return found;
    return nullptr;
  }

  MainWindow window;
  QTemporaryDir folder;
};

TEST_F(MainWindowTest, ShowsTheComparisonOfThePlanners) {
  const auto expected = compare_ways(sample::job(), 0, Aim::most_worth);
  ASSERT_FALSE(expected.ranking.empty());
  EXPECT_EQ(window.way_table()->ways()->rowCount(), static_cast<int>(expected.ways.size()));
  EXPECT_EQ(window.way_table()->ways()->way_index(0), expected.ranking[0]);
  EXPECT_TRUE(answer().contains("Carrier")) << answer().toStdString();
  EXPECT_GE(window.plan_view()->tabs()->count(), 2);
}

TEST_F(MainWindowTest, PlansAnewWhileANumberIsTyped) {
  const auto before = window.way_table()->ways()->index(0, WayModel::worth).data().toString();
  type(window.shelf()->form()->field(1)->line(), "10 m");
  wait();
  const auto expected = compare_ways(window.document().job(), 0, Aim::most_worth);
  EXPECT_EQ(window.document().job().rolls[0].length, Length::mm(10000));
  EXPECT_NE(window.way_table()->ways()->index(0, WayModel::worth).data().toString(), before);
  EXPECT_EQ(window.way_table()->ways()->plan(0)->worth,
            expected.ways[static_cast<std::size_t>(expected.ranking[0])].plan->worth);
}

TEST_F(MainWindowTest, KeepsTheLastGoodPlanWhileTextIsRefused) {
  const auto before = answer();
  auto* field = window.shelf()->form()->field(0);
  type(field->line(), "wide");
  QTest::qWait(50);
  wait();
  EXPECT_EQ(answer(), before);
  EXPECT_EQ(window.document().job(), sample::job());
  EXPECT_FALSE(field->reason().isEmpty());
}

TEST_F(MainWindowTest, RefusesAWidthThatFitsNoPanel) {
  auto* field = window.shelf()->form()->field(2);
  type(field->line(), "80 cm");  // selvedges of 2 × 80 cm on 150 cm
  EXPECT_FALSE(field->reason().isEmpty());
  EXPECT_NE(window.document().job().rolls[0].fabric.selvedge, Length::mm(800));
}

TEST_F(MainWindowTest, UndoesAndRedoesByTheMenuWithWords) {
  type(window.shelf()->form()->field(1)->line(), "10 m");
  auto* undo = action("Undo");
  ASSERT_NE(undo, nullptr);
  EXPECT_EQ(undo->text(), "&Undo: change the length of “Moss”");
  EXPECT_TRUE(window.isWindowModified());
  undo->trigger();
  EXPECT_EQ(window.document().job(), sample::job());
  EXPECT_FALSE(window.isWindowModified());
  EXPECT_EQ(window.shelf()->form()->field(1)->line()->text(), "5 m");
  EXPECT_EQ(undo->text(), "&Undo");
  EXPECT_EQ(action("Redo")->text(), "&Redo: change the length of “Moss”");
  action("Redo")->trigger();
  EXPECT_EQ(window.document().job().rolls[0].length, Length::mm(10000));
}

TEST_F(MainWindowTest, PutsAnotherRollOnTheTableByKeys) {
  auto* list = window.shelf()->list();
  list->setFocus();
  QTest::keyClick(list, Qt::Key_Down);
  wait();
  EXPECT_EQ(window.shelf()->roll(), 1);
  EXPECT_EQ(window.way_table()->ways()->plan(0)->roll, 0);  // looked at, not planned
  QTest::keyClick(list, Qt::Key_Return);
  wait();
  EXPECT_EQ(window.shelf()->on_table(), 1);
  EXPECT_EQ(window.shelf()->form()->field(0)->line()->text(), "140 cm");
  EXPECT_EQ(window.way_table()->ways()->plan(0)->roll, 1);
}

TEST_F(MainWindowTest, TakesARollThatIsDroppedOnTheTable) {
  auto* place = window.plan_view()->table()->flat()->viewport();  // the cloth lets it through
  const auto held = roll_to_drag(1);
  QDragEnterEvent enter(QPoint(50, 50), Qt::CopyAction, held.get(), Qt::LeftButton, Qt::NoModifier);
  QApplication::sendEvent(place, &enter);
  EXPECT_TRUE(enter.isAccepted());
  QDropEvent let_go(QPointF(50, 50), Qt::CopyAction, held.get(), Qt::LeftButton, Qt::NoModifier);
  QApplication::sendEvent(place, &let_go);
  EXPECT_TRUE(let_go.isAccepted());
  wait();
  EXPECT_EQ(window.shelf()->on_table(), 1);
  EXPECT_EQ(window.way_table()->ways()->plan(0)->roll, 1);
}

TEST_F(MainWindowTest, PlansTheRollThatTakesThePlaceOfOneTakenAway) {
  window.shelf()->take_away();
  wait();
  ASSERT_EQ(window.document().job().rolls.size(), 1u);
  EXPECT_EQ(window.shelf()->on_table(), 0);
  EXPECT_EQ(window.way_table()->ways()->plan(0)->cloth, Length::mm(1400) * Length::mm(5000));
}

TEST_F(MainWindowTest, SaysWhatARollOfEstimatedLengthMayYield) {
  auto* line = window.findChild<RangeLine*>();
  ASSERT_NE(line, nullptr);
  EXPECT_FALSE(line->isVisible());
  Job job = sample::job();
  job.rolls[0].measured = ByWeight{{2'450, 30}, {0, 0}, {3'500, 0}};
  job.rolls[0].length = estimate(*job.rolls[0].measured, Length::mm(1500)).value().least;
  window.document().open(job, {});
  wait();
  ASSERT_TRUE(sample::waited_for([line] { return !line->is_busy(); }, 60000));
  EXPECT_TRUE(line->isVisible());
  EXPECT_TRUE(line->text().startsWith("By its length the roll gives")) << line->text().toStdString();
  window.shelf()->put_on_table(1);
  wait();
  EXPECT_FALSE(line->isVisible());
}

TEST_F(MainWindowTest, GoesFromPatternToRollByKeys) {
  auto* tabs = window.plan_view()->tabs();
  tabs->setFocus();
  for (int i = 1; i < tabs->count(); ++i) QTest::keyClick(tabs, Qt::Key_Right);
  EXPECT_EQ(tabs->currentIndex(), tabs->count() - 1);
  EXPECT_EQ(tabs->tabText(tabs->currentIndex()), "Roll");
}

TEST_F(MainWindowTest, SwitchesTheAim) {
  QTest::keyClick(window.aim_button(Aim::worth_less_time), Qt::Key_Space);
  wait();
  EXPECT_EQ(window.way_table()->ways()->plan(0)->aim, Aim::worth_less_time);
  EXPECT_TRUE(window.aim_button(Aim::worth_less_time)->isChecked());
}

TEST_F(MainWindowTest, EditsAPanelInItsCellByKeys) {
  auto* view = window.panel_table()->view();
  view->setFocus();
  view->setCurrentIndex(view->model()->index(0, PanelModel::across));
  QTest::keyClick(view, Qt::Key_F2);
  auto* editor = view->findChild<QLineEdit*>();
  ASSERT_NE(editor, nullptr);
  editor->selectAll();
  QTest::keyClicks(editor, "40 c");
  EXPECT_FALSE(window.panel_table()->model()->first_reason().isEmpty());  // "40 c" is no length
  EXPECT_TRUE(window.panel_table()->reason()->isVisibleTo(&window));
  QTest::keyClicks(editor, "m");
  EXPECT_EQ(window.document().job().panels[0].across, Length::mm(400));
  EXPECT_EQ(editor->text(), "40 cm");
  QTest::keyClick(editor, Qt::Key_Escape);
  EXPECT_EQ(window.document().job(), sample::job());
  EXPECT_EQ(window.document().history().count(), 0);
}

TEST_F(MainWindowTest, SavesWhatItReadsBack) {
  window.panel_table()->add_panel();
  const auto path = folder.filePath("job.json");
  ASSERT_TRUE(window.save_to(path));
  EXPECT_FALSE(window.isWindowModified());
  const auto job = load_job(path);
  ASSERT_TRUE(job);
  EXPECT_EQ(*job, window.document().job());
  EXPECT_TRUE(window.windowTitle().contains("job.json"));
}

TEST_F(MainWindowTest, TellsWhenASaveFailsAndStaysChanged) {
  window.panel_table()->add_panel();
  EXPECT_FALSE(window.save_to(folder.filePath("missing/job.json")));
  EXPECT_FALSE(window.notice().isEmpty());
  EXPECT_TRUE(window.isWindowModified());
}

TEST_F(MainWindowTest, TellsWhyAFileIsNotOpened) {
  EXPECT_FALSE(window.open_file(folder.filePath("none.json")));
  EXPECT_TRUE(window.notice().contains("none.json")) << window.notice().toStdString();
  EXPECT_EQ(window.document().job(), sample::job());
}

TEST_F(MainWindowTest, ExportsTheDiagram) {
  for (const auto& [name, head] : {std::pair{"d.pdf", "%PDF"}, {"d.svg", "<?xml"}, {"d.png", "\x89PNG"}}) {
    const auto path = folder.filePath(name);
    ASSERT_TRUE(window.export_to(path)) << window.notice().toStdString();
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().startsWith(head)) << name;
  }
}

TEST_F(MainWindowTest, OpensTheDemo) {
  window.open_demo();
  wait();
  EXPECT_TRUE(window.notice().isEmpty()) << window.notice().toStdString();
  EXPECT_GE(window.document().job().rolls.size(), 5u);
  EXPECT_FALSE(window.isWindowModified());
}

TEST_F(MainWindowTest, NamesEveryWidgetThatTakesFocus) {
  for (auto* widget : window.findChildren<QWidget*>()) {
    if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisibleTo(&window)) continue;
    if (widget->objectName().startsWith("qt_") || qobject_cast<QMenu*>(widget)) continue;
    auto* seen = QAccessible::queryAccessibleInterface(widget);
    ASSERT_NE(seen, nullptr);
    EXPECT_FALSE(seen->text(QAccessible::Name).isEmpty())
        << widget->metaObject()->className() << " in " << widget->parent()->metaObject()->className();
  }
}

// Of the two aims only the chosen one takes Tab; arrow keys go to the other.
TEST_F(MainWindowTest, TabGoesInReadingOrder) {
  std::vector<QWidget*> expected;
  for (QWidget* widget : window.shelf()->tab_order())
    if (widget->isEnabled()) expected.push_back(widget);
  for (QWidget* widget : std::initializer_list<QWidget*>{window.panel_table()->view(), window.panel_table()->more(), window.panel_table()->adder(),
                          window.panel_table()->goods_adder(), window.panel_table()->taker(), window.page_tabs(), window.plan_view()->tabs(),
                          window.plan_view()->table()->flat(), window.plan_view()->table()->folded(),
                          window.way_tabs(), window.aim_button(Aim::most_worth), window.way_cards()})
    expected.push_back(widget);
  window.activateWindow();
  expected[0]->setFocus();
  for (auto* widget : expected) {
    EXPECT_EQ(window.focusWidget(), widget)
        << widget->accessibleName().toStdString() << " expected, at "
        << window.focusWidget()->metaObject()->className() << ' ' << window.focusWidget()->accessibleName().toStdString();
    QTest::keyClick(window.focusWidget(), Qt::Key_Tab);
  }
}

TEST_F(MainWindowTest, CopiesThePictureWhereNoTextIsTyped) {
  window.activateWindow();
  window.plan_view()->table()->flat()->setFocus();
  QTest::keyClick(window.focusWidget(), Qt::Key_C, Qt::ControlModifier);
  EXPECT_TRUE(QGuiApplication::clipboard()->mimeData()->hasImage());
  EXPECT_TRUE(QGuiApplication::clipboard()->mimeData()->hasFormat(QStringLiteral("image/svg+xml")));
  QLineEdit* field = window.shelf()->form()->field(0)->line();
  field->setFocus();
  field->selectAll();
  QTest::keyClick(field, Qt::Key_C, Qt::ControlModifier);
  EXPECT_EQ(QGuiApplication::clipboard()->text(), field->text());
}

TEST_F(MainWindowTest, CopiesTheComparisonAndTheCuts) {
  window.copy_table();
  EXPECT_TRUE(QGuiApplication::clipboard()->text().startsWith(QStringLiteral("fold way\tCarrier\tPouch\t")));
  window.copy_cuts();
  EXPECT_TRUE(QGuiApplication::clipboard()->text().startsWith(QStringLiteral("cut\truns\t")));
  window.plan_view()->tabs()->setCurrentIndex(window.plan_view()->tabs()->count() - 1);
  QGuiApplication::clipboard()->setText(QStringLiteral("before"));
  window.copy_cuts();
  EXPECT_EQ(QGuiApplication::clipboard()->text(), QStringLiteral("before"));
  EXPECT_TRUE(window.notice().contains(QStringLiteral("choose its tab")));
}

TEST_F(MainWindowTest, PrintsThePlanThatIsShown) {
  window.way_cards()->setCurrentIndex(window.way_cards()->model()->index(1, 0));
  const std::unique_ptr<PrintDialog> dialog(window.make_print_dialog());
  ASSERT_TRUE(dialog);
  EXPECT_EQ(dialog->sheet().plan().way, window.plan_view()->plan()->way);
  ASSERT_NE(action(QStringLiteral("Print…")), nullptr);
  EXPECT_EQ(action(QStringLiteral("Print…"))->shortcut(), QKeySequence(QStringLiteral("Ctrl+P")));
}

TEST_F(MainWindowTest, FitsASmallScreen) {
  const auto least = window.minimumSizeHint();
  EXPECT_LE(least.width(), 1024);
  EXPECT_LE(least.height(), 740);  // 768 less a title bar
}

TEST_F(MainWindowTest, EveryMenuHasItsOwnLetters) {
  for (auto* top : window.menuBar()->actions()) {
    std::set<QChar> letters;
    for (auto* entry : top->menu()->actions()) {
      const int at = entry->text().indexOf(QLatin1Char('&'));
      if (at < 0) continue;
      EXPECT_TRUE(letters.insert(entry->text().at(at + 1).toLower()).second) << entry->text().toStdString();
    }
  }
}

TEST_F(MainWindowTest, EveryLetterOfTheWindowIsUsedOnce) {
  std::set<QChar> letters;
  const auto take = [&](const QString& text) {
    const int at = text.indexOf(QLatin1Char('&'));
    if (at < 0) return;
    EXPECT_TRUE(letters.insert(text.at(at + 1).toLower()).second) << text.toStdString();
  };
  for (auto* top : window.menuBar()->actions()) take(top->text());
  for (auto* button : window.findChildren<QAbstractButton*>()) take(button->text());
  for (auto* label : window.findChildren<QLabel*>())
    if (label->buddy()) take(label->text());
}

TEST_F(MainWindowTest, ShowsTheWaysAsCardsAsATableAndAsPoints) {
  const std::vector<QWidget*> pages = {window.way_cards(), window.way_table(), window.frontier_view()};
  for (int tab = 0; tab < 3; ++tab) {
    window.way_tabs()->setCurrentIndex(tab);
    for (int page = 0; page < 3; ++page) EXPECT_EQ(pages[static_cast<std::size_t>(page)]->isVisible(), page == tab);
  }
}

TEST_F(MainWindowTest, ACardPutsItsWayOnTheTable) {
  window.way_cards()->setCurrentIndex(window.way_cards()->model()->index(1, 0));
  EXPECT_EQ(window.way_table()->row(), 1);
  ASSERT_NE(window.plan_view()->plan(), nullptr);
  EXPECT_EQ(window.plan_view()->plan()->way, window.way_table()->ways()->way_at(1));
}

TEST_F(MainWindowTest, GrowsWithLongWords) {
  Job job = sample::job();
  job.rolls[0].name = "Donaudampfschifffahrtsgesellschaftskapitänsmützenbezugsstoff";
  job.panels[0].name = "Gartenbankauflagenbezugsrückenteilverstärkung";
  window.document().open(job, {});
  wait();
  EXPECT_LE(window.minimumSizeHint().width(), 1024);
  EXPECT_TRUE(answer().contains("Gartenbankauflagenbezugsrückenteilverstärkung"));
}

}  // namespace
}  // namespace foldyard
