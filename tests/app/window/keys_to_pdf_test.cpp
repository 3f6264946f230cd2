// From the first start to a PDF of an own roll, by keys alone: no mouse event and
// no call of what a key should do anywhere in this file.

#include <gtest/gtest.h>

#include <QFile>
#include <QFileDialog>
#include <QProcess>
#include <QTemporaryDir>

#include "drawing/sheet.h"
#include "key_hand.h"
#include "printing/print_dialog.h"
#include "sample.h"
#include "window/guide_strip.h"
#include "window/hand_menu.h"
#include "window/main_window.h"
#include "window/own_roll_dialog.h"

namespace foldyard {
namespace {

class KeysToPdfTest : public testing::Test {
 protected:
  KeysToPdfTest() {
    window.resize(1480, 900);
    window.start({});
    window.show();
    window.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
  }

  bool waited_for_plan() {
    return sample::waited_for([this] { return !window.planner().is_busy() && window.plan_view()->plan(); }, 60000);
  }
  bool begin_with_own_roll(const QString& width, const QString& length) {
    if (!keys.tab_to(window.first_steps()->strip()->own_roll())) return false;
    return keys.in_dialog([this] { keys.press(Qt::Key_Space); },
                          [&](QWidget* dialog) {
                            EXPECT_NE(qobject_cast<OwnRollDialog*>(dialog), nullptr);
                            keys.press(Qt::Key_A, Qt::ControlModifier);
                            keys.type(width);
                            keys.press(Qt::Key_Tab);
                            keys.press(Qt::Key_A, Qt::ControlModifier);
                            keys.type(length);
                            keys.press(Qt::Key_Return);
                          });
  }
  bool write_pdf(const QString& path) {
    return keys.in_dialog([this] { keys.press(Qt::Key_E, Qt::ControlModifier); },
                          [&](QWidget* dialog) {
                            EXPECT_NE(qobject_cast<QFileDialog*>(dialog), nullptr);
                            keys.press(Qt::Key_A, Qt::ControlModifier);
                            keys.type(path);
                            keys.press(Qt::Key_Return);
                          });
  }
  // As a reader of its own counts them (pdfinfo of poppler).
  static int pages_of(const QString& path) {
    QProcess reader;
    reader.start(QStringLiteral("pdfinfo"), {path});
    if (!reader.waitForFinished(60000)) return -1;
    for (const QByteArray& line : reader.readAllStandardOutput().split('\n'))
      if (line.startsWith("Pages:")) return line.mid(6).trimmed().toInt();
    return -1;
  }

  MainWindow window;
  sample::KeyHand keys{window};
  QTemporaryDir folder;
};

TEST_F(KeysToPdfTest, LeadFromAnOwnRollToItsDiagram) {
  ASSERT_TRUE(begin_with_own_roll("140 cm", "6 m"));
  ASSERT_TRUE(waited_for_plan());
  ASSERT_EQ(window.document().job().rolls.size(), 1u);
  EXPECT_EQ(window.document().job().rolls[0].fabric.width, Length::mm(1400));
  EXPECT_EQ(window.document().job().rolls[0].length, Length::mm(6000));

  ASSERT_TRUE(keys.tab_to(window.way_cards()));
  const int before = window.way_table()->row();
  keys.press(Qt::Key_Right);
  EXPECT_EQ(window.way_table()->row(), before + 1);

  const QString path = folder.filePath("diagram.pdf");
  ASSERT_TRUE(write_pdf(path)) << window.notice().toStdString();
  ASSERT_TRUE(QFile::exists(path)) << window.notice().toStdString();
  const Plan& plan = *window.plan_view()->plan();
  EXPECT_GE(pages_of(path), 1 + std::ssize(plan.patterns));  // the front page, and each pattern
  EXPECT_EQ(pages_of(path), Sheet(window.by_hand()->shown_answer()->job, window.by_hand()->shown_answer()->comparison,
                                  window.way_table()->ways()->way_index(window.way_table()->row()))
                                .pages());
}

TEST_F(KeysToPdfTest, OpenAndCloseThePreview) {
  ASSERT_TRUE(begin_with_own_roll("150 cm", "3 m"));
  ASSERT_TRUE(waited_for_plan());
  EXPECT_TRUE(keys.in_dialog([this] { keys.press(Qt::Key_P, Qt::ControlModifier); },
                             [this](QWidget* dialog) {
                               EXPECT_NE(qobject_cast<PrintDialog*>(dialog), nullptr);
                               keys.press(Qt::Key_Escape);
                             }));
}

// At least so many of a panel: by the menu's letters.
TEST_F(KeysToPdfTest, AskForMoreOfAPanel) {
  ASSERT_TRUE(begin_with_own_roll("150 cm", "3 m"));
  ASSERT_TRUE(waited_for_plan());
  const std::string panel = window.document().job().panels.front().name;
  const bool asked = keys.in_dialog(
      [this] {
        QTest::keyClick(&window, Qt::Key_N, Qt::AltModifier);
        auto* menu = qobject_cast<HandMenu*>(QApplication::activePopupWidget());
        ASSERT_NE(menu, nullptr);
        QTest::keyClick(menu, Qt::Key_L);
        QTest::keyClick(QApplication::activePopupWidget(), Qt::Key_Return);
      },
      [this](QWidget*) {
        keys.press(Qt::Key_A, Qt::ControlModifier);
        keys.type("1");
        keys.press(Qt::Key_Return);
      });
  ASSERT_TRUE(asked);
  ASSERT_TRUE(sample::waited_for([this] { return !window.by_hand()->fold_hand().is_busy(); }, 60000));
  EXPECT_EQ(window.by_hand()->hand().at_least.count(panel), 1u);
}

// Of the two pages, whoever acts on the roll sees the roll.
TEST_F(KeysToPdfTest, AnOwnRollLeadsBackFromTheBatch) {
  keys.press(Qt::Key_B, Qt::ControlModifier);
  EXPECT_EQ(window.page_tabs()->currentIndex(), 1);
  ASSERT_TRUE(begin_with_own_roll("150 cm", "3 m"));
  EXPECT_EQ(window.page_tabs()->currentIndex(), 0);
  ASSERT_TRUE(waited_for_plan());
  keys.press(Qt::Key_B, Qt::ControlModifier);
  EXPECT_EQ(window.page_tabs()->currentIndex(), 1);
  keys.press(Qt::Key_2, Qt::ControlModifier);
  EXPECT_EQ(window.page_tabs()->currentIndex(), 0);
}

// What is set by hand stays in the window and out of the job file.
TEST_F(KeysToPdfTest, APinIsNoChangeOfTheJob) {
  keys.press(Qt::Key_T, Qt::ControlModifier);
  ASSERT_TRUE(waited_for_plan());
  ASSERT_FALSE(window.isWindowModified());
  for (int i = 0; i < window.way_table()->ways()->rowCount(); ++i) {
    if (!window.plan_view()->plan()->patterns[0].fold.lines.empty()) break;
    ASSERT_TRUE(keys.tab_to(window.way_cards()));
    keys.press(Qt::Key_Right);
  }
  ASSERT_TRUE(keys.tab_to(window.plan_view()->table()->flat()));
  keys.press(Qt::Key_P);
  ASSERT_TRUE(sample::waited_for([this] { return !window.by_hand()->hand().is_empty(); }, 60000));
  EXPECT_TRUE(window.document().history().canUndo());
  EXPECT_FALSE(window.isWindowModified());
}

}  // namespace
}  // namespace foldyard
