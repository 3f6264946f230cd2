#include "window/hand_menu.h"

#include <gtest/gtest.h>

#include <QMenuBar>
#include <QTest>

#include "sample.h"
#include "window/main_window.h"

namespace foldyard {
namespace {

class HandMenuTest : public testing::Test {
 protected:
  HandMenuTest() {
    window.resize(1200, 860);
    window.show();
    window.document().open(sample::job(), {});
    EXPECT_TRUE(sample::waited_for([this] { return !window.planner().is_busy() && window.way_table()->row() >= 0; }, 60000));
    menu = window.findChild<HandMenu*>();
  }

  void choose(const char* key) {
    FoldWay way;
    ASSERT_TRUE(way_from_key(key, way));
    const int row = window.way_table()->ways()->row_of(way);
    window.way_table()->setCurrentIndex(window.way_table()->ways()->index(row, WayModel::way));
    settle();
  }
  void settle() {
    ASSERT_TRUE(sample::waited_for([this] { return !window.by_hand()->fold_hand().is_busy(); }, 60000));
    QTest::qWait(5);
  }
  // Finds an entry by the start of its words and triggers it.
  bool trigger(QMenu& in, const QString& start) {
    for (QAction* action : in.actions()) {
      if (!action->text().remove(QLatin1Char('&')).startsWith(start) || !action->isEnabled()) continue;
      action->trigger();
      return true;
    }
    return false;
  }
  int carrier_patch() {
    const auto& patches = window.plan_view()->table()->flat()->cloth()->patches;
    for (int i = 0; i < std::ssize(patches); ++i)
      if (patches[static_cast<std::size_t>(i)].panel == 0) return i;
    return -1;
  }

  MainWindow window;
  HandMenu* menu = nullptr;
};

TEST_F(HandMenuTest, IsInTheMenuBar) {
  ASSERT_NE(menu, nullptr);
  EXPECT_TRUE(window.menuBar()->actions().contains(menu->menuAction()));
}

TEST_F(HandMenuTest, PinsALineAndTakesThePinOut) {
  choose("off-centre");
  QMenu first, second;
  menu->fill(&first, 0, -1);
  ASSERT_TRUE(trigger(first, "Pin fold line 1"));
  settle();
  EXPECT_TRUE(window.by_hand()->hand().has_line(0));
  menu->fill(&second, 0, -1);
  ASSERT_TRUE(trigger(second, "Take the pin out"));
  settle();
  EXPECT_TRUE(window.by_hand()->hand().is_empty());
}

TEST_F(HandMenuTest, HasNoLineWhereThereIsNone) {
  choose("open");
  QMenu open;
  menu->fill(&open, -1, -1);
  EXPECT_FALSE(trigger(open, "Pin fold line"));
}

TEST_F(HandMenuTest, KeepsTheLengthsOfThePattern) {
  choose("selvedge-to-selvedge");
  const Length length = window.plan_view()->plan()->patterns[0].length;
  QMenu first, second;
  menu->fill(&first, -1, -1);
  ASSERT_TRUE(trigger(first, "Keep lengths of"));
  settle();
  EXPECT_EQ(window.by_hand()->hand().length, length);
  menu->fill(&second, -1, -1);
  ASSERT_TRUE(trigger(second, "Let the lengths be free"));
  settle();
  EXPECT_TRUE(window.by_hand()->hand().is_empty());
}

TEST_F(HandMenuTest, AsksForMoreOfThePanelThatIsPointedAt) {
  choose("open");
  const std::int64_t before = window.plan_view()->plan()->yield[1];
  std::int64_t offered = 0;
  menu->set_ask([&](const QString&, const QString& label, std::int64_t first) -> std::optional<std::int64_t> {
    EXPECT_TRUE(label.contains("Pouch"));
    offered = first;
    return first;
  });
  QMenu all;
  menu->fill(&all, -1, -1);
  for (QAction* action : all.actions())
    if (action->menu()) {
      EXPECT_TRUE(trigger(*action->menu(), "Pouch"));
    }
  settle();
  EXPECT_EQ(offered, before + 1);
  EXPECT_EQ(window.by_hand()->hand().at_least.at("Pouch"), before + 1);
  EXPECT_GE(window.plan_view()->plan()->yield[1], before + 1);
}

TEST_F(HandMenuTest, TellsWhatCannotBeHad) {
  choose("open");
  menu->set_ask([](const QString&, const QString&, std::int64_t) { return std::optional<std::int64_t>(900); });
  QMenu context;
  ASSERT_GE(carrier_patch(), 0);
  menu->fill(&context, -1, carrier_patch());
  ASSERT_TRUE(trigger(context, "At least so many of “Carrier”"));
  settle();
  EXPECT_TRUE(window.notice().contains("there is no way to get 900 of Carrier")) << window.notice().toStdString();
  EXPECT_EQ(window.document().history().count(), 0);
}

TEST_F(HandMenuTest, CallingOffSetsNothing) {
  choose("open");
  menu->set_ask([](const QString&, const QString&, std::int64_t) { return std::optional<std::int64_t>(); });
  QMenu context;
  menu->fill(&context, -1, carrier_patch());
  ASSERT_TRUE(trigger(context, "At least so many of “Carrier”"));
  settle();
  EXPECT_TRUE(window.by_hand()->hand().is_empty());
}

}  // namespace
}  // namespace foldyard
