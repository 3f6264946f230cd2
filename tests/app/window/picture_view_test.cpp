#include "window/picture_view.h"

#include <gtest/gtest.h>

#include <QPainter>
#include <QScrollBar>
#include <QTest>

#include "sample.h"

namespace foldyard {
namespace {

TEST(PictureView, PaintsIntoItsPaperAndTellsTheWords) {
  PictureView view("Picture");
  view.resize(600, 700);
  QRectF painted;
  view.show([&](QPainter&, const QRectF& area) { painted = area; }, "three panels");
  view.QWidget::show();
  ASSERT_TRUE(sample::waited_for([&] { return !painted.isEmpty(); }, 3000));
  EXPECT_LE(painted.width(), 600);
  EXPECT_GT(painted.width(), 540);
  EXPECT_EQ(view.accessibleName(), "Picture");
  EXPECT_EQ(view.accessibleDescription(), "three panels");
}

TEST(PictureView, GoesNearerAndScrollsByKeys) {
  PictureView view("Picture");
  view.resize(600, 700);
  view.QWidget::show();
  EXPECT_EQ(view.horizontalScrollBar()->maximum(), 0);
  view.zoom_in();
  view.zoom_in();
  EXPECT_GT(view.horizontalScrollBar()->maximum(), 0);
  QTest::keyClick(&view, Qt::Key_Right);
  EXPECT_GT(view.horizontalScrollBar()->value(), 0);
  view.fit();
  EXPECT_EQ(view.zoom(), 1);
  EXPECT_EQ(view.horizontalScrollBar()->maximum(), 0);
  for (int i = 0; i < 40; ++i) view.zoom_in();
  EXPECT_LE(view.zoom(), 8);
}

TEST(PictureView, ScrollsRatherThanPaintTooSmall) {
  PictureView view("Picture");
  view.resize(600, 200);
  view.QWidget::show();
  EXPECT_GT(view.verticalScrollBar()->maximum(), 0);
  EXPECT_EQ(view.horizontalScrollBar()->maximum(), 0);
}

}  // namespace
}  // namespace foldyard
