// Tab through the whole window: no mouse event anywhere in this file.

#include <gtest/gtest.h>

#include <QAccessible>
#include <QApplication>
#include <QTest>

#include <set>
#include <vector>

#include "sample.h"
#include "window/guide_strip.h"
#include "window/main_window.h"

namespace foldyard {
namespace {

constexpr int kMostTabs = 80;

class KeyboardTest : public testing::Test {
 protected:
  KeyboardTest() {
    window.resize(1480, 900);
    window.start({});
    window.show();
    window.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
  }

  void press(int key, Qt::KeyboardModifiers with = Qt::NoModifier) {
    QWidget* focus = QApplication::focusWidget();
    QTest::keyClick(focus ? focus : &window, static_cast<Qt::Key>(key), with);
  }
  void wait_for_plan() {
    ASSERT_TRUE(sample::waited_for([this] { return !window.planner().is_busy(); }, 60000));
  }
  MainWindow window;
};

QRect place_of(const QWidget* widget, const QWidget& window) {
  return {widget->mapTo(&window, QPoint()), widget->size()};
}

std::string words_of(const QWidget* widget) {
  return std::string(widget->metaObject()->className()) + " " + widget->accessibleName().toStdString();
}

// Of two in one column of the window the second is not above the first, and not
// left of it in one row.
void expect_in_reading_order(const QWidget* first, const QWidget* second, const MainWindow& window) {
  const QRect a = place_of(first, window), b = place_of(second, window);
  const QRect left = place_of(window.shelf(), window);
  if ((a.left() < left.right()) != (b.left() < left.right())) return;
  EXPECT_GT(b.bottom(), a.top()) << words_of(second) << " stands above " << words_of(first);
  const bool is_one_row = a.top() < b.center().y() && b.center().y() < a.bottom() && b.top() < a.center().y() &&
                          a.center().y() < b.bottom();
  if (is_one_row) { EXPECT_GT(b.left(), a.left()) << words_of(second) << " stands left of " << words_of(first); }
}

TEST_F(KeyboardTest, TabGoesOnceAroundAllThatIsNamedInReadingOrder) {
  window.put_on_table();
  wait_for_plan();
  QWidget* first = window.first_steps()->strip()->step(GuideStrip::roll);
  first->setFocus(Qt::TabFocusReason);
  std::vector<QWidget*> around{QApplication::focusWidget()};
  for (int i = 0; i < kMostTabs; ++i) {
    press(Qt::Key_Tab);
    if (QApplication::focusWidget() == first) break;
    around.push_back(QApplication::focusWidget());
  }
  ASSERT_LT(around.size(), static_cast<std::size_t>(kMostTabs)) << "Tab never comes back";
  EXPECT_GE(around.size(), 20u);
  EXPECT_EQ(std::set<QWidget*>(around.begin(), around.end()).size(), around.size());
  for (std::size_t i = 0; i < around.size(); ++i) {
    auto* seen = QAccessible::queryAccessibleInterface(around[i]);
    ASSERT_NE(seen, nullptr);
    EXPECT_FALSE(seen->text(QAccessible::Name).isEmpty()) << around[i]->metaObject()->className();
    if (i > 0) expect_in_reading_order(around[i - 1], around[i], window);
  }
}

}  // namespace
}  // namespace foldyard
