// Lines that run from right to left mirror the window, and not the cloth.

#include <gtest/gtest.h>

#include <QApplication>
#include <QImage>

#include "sample.h"
#include "window/main_window.h"

namespace foldyard {
namespace {

// What a window shows: where the shelf and the plan stand, and the flat cloth.
struct Shown {
  int shelf = 0;
  int plan = 0;
  int left_edge = 0;   // of the cloth
  int right_edge = 0;
  QImage cloth;
};

Shown shown() {
  MainWindow window;
  window.resize(1200, 800);
  window.show();
  window.document().open(sample::job(), {});
  EXPECT_TRUE(sample::waited_for([&] { return !window.planner().is_busy(); }, 60000));
  QApplication::processEvents();
  BoardView* flat = window.plan_view()->table()->flat();
  return {window.shelf()->mapTo(&window, QPoint()).x(), window.plan_view()->mapTo(&window, QPoint()).x(),
          flat->mapFromScene(QPointF(0, 0)).x(), flat->mapFromScene(QPointF(1500, 0)).x(),
          flat->viewport()->grab().toImage()};
}

TEST(RightToLeftTest, MirrorsTheWindowAndNotTheCloth) {
  const Shown there = shown();
  QApplication::setLayoutDirection(Qt::RightToLeft);
  const Shown back = shown();
  QApplication::setLayoutDirection(Qt::LeftToRight);
  EXPECT_LT(there.shelf, there.plan);
  EXPECT_GT(back.shelf, back.plan);
  EXPECT_LT(there.left_edge, there.right_edge);
  EXPECT_LT(back.left_edge, back.right_edge);
  EXPECT_EQ(there.cloth.size(), back.cloth.size());
}

}  // namespace
}  // namespace foldyard
