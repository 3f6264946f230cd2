#include "table/board_view.h"

#include <gtest/gtest.h>

#include <QContextMenuEvent>
#include <QTest>

#include <cmath>
#include <set>

#include "laid_sample.h"

namespace foldyard {
namespace {

struct Seen {
  int patch = -2;
  Length across, along;
};

struct BoardViewTest : testing::Test {
  void show(Side side, const char* way) {
    view = std::make_unique<BoardView>(side, QStringLiteral("Cloth"));
    view->resize(600, 700);
    view->show_cloth(sample::laid(way));
    view->show();
    QObject::connect(view.get(), &BoardView::pointed, [this](int patch, Length across, Length along) {
      seen = {patch, across, along};
      view->light(patch);
    });
  }
  QPoint pixel(const QPointF& scene) const { return view->mapFromScene(scene); }
  QPoint middle(int patch) const {
    const Patch& p = view->cloth()->patches[static_cast<std::size_t>(patch)];
    return pixel(scene_rect(rects_of(p, Side::folded).front()).center());
  }

  std::unique_ptr<BoardView> view;
  Seen seen;
};

TEST_F(BoardViewTest, PointingAtAPatchTellsWhichAndSaysItInWords) {
  show(Side::folded, "selvedge-to-selvedge");
  for (int i = 0; i < static_cast<int>(view->cloth()->patches.size()); ++i) {
    QTest::mouseMove(view->viewport(), middle(i) + QPoint(1, 0));
    QTest::mouseMove(view->viewport(), middle(i));
    EXPECT_EQ(seen.patch, i);
    EXPECT_EQ(view->accessibleDescription(), patch_words(*view->cloth(), view->cloth()->patches[static_cast<std::size_t>(i)]));
  }
}

TEST_F(BoardViewTest, ArrowKeysReachEveryPatch) {
  show(Side::folded, "open");
  std::set<int> reached = {0};
  std::vector<int> waiting = {0};
  while (!waiting.empty()) {
    const int from = waiting.back();
    waiting.pop_back();
    for (const auto key : {Qt::Key_Left, Qt::Key_Right, Qt::Key_Up, Qt::Key_Down}) {
      view->light(from);
      QTest::keyClick(view.get(), key);
      if (reached.insert(seen.patch).second) waiting.push_back(seen.patch);
    }
  }
  EXPECT_EQ(reached.size(), view->cloth()->patches.size());
}

TEST_F(BoardViewTest, ZoomsAroundAndBackToTheWhole) {
  show(Side::folded, "open");
  const double whole = view->transform().m11();
  QTest::keyClick(view.get(), Qt::Key_Plus);
  EXPECT_NEAR(view->transform().m11(), whole * 1.25, 1e-9);
  QTest::keyClick(view.get(), Qt::Key_0);
  EXPECT_NEAR(view->transform().m11(), whole, 1e-9);
  QTest::keyClick(view.get(), Qt::Key_Minus);
  EXPECT_NEAR(view->transform().m11(), whole, 1e-9);
}

TEST_F(BoardViewTest, TwoClicksMeasureTheDistance) {
  show(Side::folded, "open");
  view->set_measuring(true);
  EXPECT_TRUE(view->measured().isEmpty());
  const QPoint a = pixel({100, -100}), b = pixel({400, -500});
  QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, a);
  QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, b);
  const double mm = QLineF(view->mapToScene(a), view->mapToScene(b)).length();
  EXPECT_NEAR(mm, 500, 5);
  const QString whole = QString::number(std::round(mm) / 10);
  EXPECT_TRUE(view->measured().startsWith(whole + QStringLiteral(" cm"))) << view->measured().toStdString();
}

TEST_F(BoardViewTest, AFoldLineIsDraggedOnlyWhereItMayMove) {
  show(Side::flat, "off-centre");
  const double line = view->cloth()->cloth().fold.lines.front().in_mm();
  int taken = 0, left = 0;
  Length to;
  QObject::connect(view.get(), &BoardView::line_taken, [&] { ++taken; });
  QObject::connect(view.get(), &BoardView::line_left, [&] { ++left; });
  QObject::connect(view.get(), &BoardView::line_moved, [&](int, Length place) { to = place; });
  const auto drag = [&] {
    QTest::mousePress(view->viewport(), Qt::LeftButton, {}, pixel({line, -400}));
    QTest::mouseMove(view->viewport(), pixel({line + 60, -400}));
    QTest::mouseRelease(view->viewport(), Qt::LeftButton, {}, pixel({line + 60, -400}));
  };
  drag();
  EXPECT_EQ(taken, 0);
  view->set_line_movable(true);
  drag();
  EXPECT_EQ(taken, 1);
  EXPECT_EQ(left, 1);
  EXPECT_NEAR(to.in_mm(), line + 60, 5);
}

TEST_F(BoardViewTest, TheKeyboardStepsAFoldLine) {
  show(Side::flat, "off-centre");
  view->set_line_movable(true);
  std::vector<std::pair<int, int>> steps;
  QObject::connect(view.get(), &BoardView::line_stepped, [&](int line, int by) { steps.emplace_back(line, by); });
  QTest::keyClick(view.get(), Qt::Key_Right, Qt::ControlModifier);
  QTest::keyClick(view.get(), Qt::Key_Left, Qt::ControlModifier);
  EXPECT_EQ(steps, (std::vector<std::pair<int, int>>{{0, 1}, {0, -1}}));
}

TEST_F(BoardViewTest, PAsksForThePinOfTheHeldLine) {
  show(Side::flat, "off-centre");
  std::vector<int> asked;
  QObject::connect(view.get(), &BoardView::pin_toggled, [&](int line) { asked.push_back(line); });
  QTest::keyClick(view.get(), Qt::Key_P);
  EXPECT_TRUE(asked.empty());  // lines do not move
  view->set_line_movable(true);
  QTest::keyClick(view.get(), Qt::Key_P);
  EXPECT_EQ(asked, std::vector<int>{0});
}

TEST_F(BoardViewTest, AContextMenuIsAskedForWhatLiesThere) {
  show(Side::flat, "off-centre");
  view->set_line_movable(true);
  std::vector<std::pair<int, int>> asked;
  QObject::connect(view.get(), &BoardView::menu_wanted, [&](int line, int patch, const QPoint&) { asked.emplace_back(line, patch); });
  const auto ask_at = [&](const QPoint& at) {
    QContextMenuEvent event(QContextMenuEvent::Mouse, at, view->viewport()->mapToGlobal(at));
    QCoreApplication::sendEvent(view->viewport(), &event);
  };
  ask_at(pixel({view->cloth()->cloth().fold.lines.front().in_mm(), -400}));
  ASSERT_EQ(asked.size(), 1u);
  EXPECT_EQ(asked[0].first, 0);
  const Patch& patch = view->cloth()->patches.front();
  ASSERT_FALSE(patch.flats.empty());
  const QPoint inside = pixel(scene_rect(patch.flats.front()).center());
  ask_at(inside);
  ASSERT_EQ(asked.size(), 2u);
  EXPECT_EQ(asked[1].second, view->cloth()->patch_at_flat(across_at(view->mapToScene(inside)), along_at(view->mapToScene(inside))));
}

// A pin and a tick change the picture, each where it is set.
TEST_F(BoardViewTest, ShowsPinsAndWhereALineCameToRest) {
  show(Side::flat, "off-centre");
  const QImage bare = view->grab().toImage();
  view->set_pins({true});
  const QImage pinned = view->grab().toImage();
  EXPECT_NE(pinned, bare);
  view->set_pins({});
  view->set_snap(Snap::yield_changes, view->cloth()->cloth().fold.lines.front());
  const QImage changes = view->grab().toImage();
  view->set_snap(Snap::tape_mark, view->cloth()->cloth().fold.lines.front());
  EXPECT_NE(changes, bare);
  EXPECT_NE(view->grab().toImage(), changes);
  view->set_snap(Snap::none, {});
  EXPECT_EQ(view->grab().toImage(), bare);
}

}  // namespace
}  // namespace foldyard
