#include "window/ask_strip.h"

#include <gtest/gtest.h>

#include <QLineEdit>
#include <QTest>
#include <QVBoxLayout>

namespace foldyard {
namespace {

class AskStripTest : public testing::Test {
 protected:
  void press(int button) { QTest::keyClick(strip.buttons().at(static_cast<std::size_t>(button)), Qt::Key_Space); }

  AskStrip strip;
  QString done;
};

TEST_F(AskStripTest, IsHiddenUntilItAsks) {
  EXPECT_TRUE(strip.isHidden());
  strip.ask("a", "Which?", {{"One", [this] { done = "one"; }}, {"Other", [this] { done = "other"; }}});
  EXPECT_FALSE(strip.isHidden());
  EXPECT_EQ(strip.sentence(), "Which?");
  EXPECT_EQ(strip.accessibleDescription(), "Which?");
  press(1);
  EXPECT_EQ(done, "other");
  EXPECT_TRUE(strip.isHidden());
  EXPECT_TRUE(strip.buttons().empty());
}

TEST_F(AskStripTest, OthersWaitBehindTheFirst) {
  strip.tell("a", "First.");
  strip.tell("b", "Second.");
  EXPECT_EQ(strip.sentence(), "First.");
  press(0);
  EXPECT_EQ(strip.sentence(), "Second.");
  press(0);
  EXPECT_TRUE(strip.sentence().isEmpty());
}

TEST_F(AskStripTest, TheSameQuestionIsAskedOnce) {
  strip.tell("a", "Old.");
  strip.tell("a", "New.");
  EXPECT_EQ(strip.sentence(), "New.");
  press(0);
  EXPECT_TRUE(strip.isHidden());
}

TEST_F(AskStripTest, TakesAQuestionBackWhereverItStands) {
  strip.tell("a", "First.");
  strip.tell("b", "Second.");
  strip.take_back("b");
  strip.take_back("none");
  EXPECT_EQ(strip.sentence(), "First.");
  strip.take_back("a");
  EXPECT_TRUE(strip.isHidden());
}

TEST_F(AskStripTest, ItsButtonsStandWhereTheStripStandsInTheTabOrder) {
  QWidget window;
  auto* column = new QVBoxLayout(&window);
  auto* above = new QLineEdit;
  auto* inside = new AskStrip;
  auto* below = new QLineEdit;
  for (QWidget* each : std::initializer_list<QWidget*>{above, inside, below}) column->addWidget(each);
  inside->ask("a", "Which?", {{"One", {}}, {"Other", {}}});
  window.show();
  above->setFocus();
  for (QWidget* expected : std::initializer_list<QWidget*>{above, inside->buttons()[0], inside->buttons()[1], below}) {
    EXPECT_EQ(window.focusWidget(), expected) << window.focusWidget()->metaObject()->className();
    QTest::keyClick(window.focusWidget(), Qt::Key_Tab);
  }
}

TEST_F(AskStripTest, AnAnswerMayAskAgain) {
  strip.ask("a", "Sure?", {{"Yes, do", [this] { strip.tell("a", "Done."); }}});
  press(0);
  EXPECT_EQ(strip.sentence(), "Done.");
  EXPECT_FALSE(strip.isHidden());
}

}  // namespace
}  // namespace foldyard
