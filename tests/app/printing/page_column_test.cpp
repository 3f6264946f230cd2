#include "printing/page_column.h"

#include <gtest/gtest.h>

#include <QScrollBar>
#include <QTest>

#include "app/drawing/sample_plans.h"

namespace foldyard {
namespace {

class PageColumnTest : public testing::Test {
 protected:
  PageColumnTest() {
    column.resize(500, 600);
    column.show();
    column.show_pages(sheet, {});
  }
  std::shared_ptr<const Sheet> sheet = std::make_shared<const Sheet>(samples::both_edges_in().sheet(Paper::a4));
  PageColumn column;
};

TEST_F(PageColumnTest, ShowsEveryPageInItsShape) {
  const QRect first = column.place(0), second = column.place(1);
  EXPECT_NEAR(double(first.height()) / first.width(), 297.0 / 210, 0.005);
  EXPECT_GT(second.top(), first.bottom());
  EXPECT_LE(first.width(), column.viewport()->width());
  EXPECT_GE(column.widget()->height(), column.place(sheet->pages() - 1).bottom());
}

TEST_F(PageColumnTest, PaperIsWhiteAndHasAPictureInTheDark) {
  QPalette dark;
  dark.setColor(QPalette::Window, Qt::black);
  column.setPalette(dark);
  const QImage shot = column.viewport()->grab().toImage();
  const QRect page = column.place(0);
  EXPECT_EQ(shot.pixelColor(page.topLeft() + QPoint(3, 3)), QColor(Qt::white));
  int dark_dots = 0;
  for (int x = page.left(); x < page.right(); ++x)
    for (int y = page.top(); y < std::min(page.bottom(), shot.height()); ++y)
      dark_dots += qGray(shot.pixel(x, y)) < 128;
  EXPECT_GT(dark_dots, 500);
}

TEST_F(PageColumnTest, KeysGoThroughThePagesAndComeNearer) {
  EXPECT_EQ(column.page_in_view(), 0);
  QTest::keyClick(&column, Qt::Key_End);
  EXPECT_EQ(column.page_in_view(), sheet->pages() - 1);
  EXPECT_TRUE(column.accessibleDescription().startsWith(QStringLiteral("Page %1 of %1").arg(sheet->pages())))
      << column.accessibleDescription().toStdString();
  QTest::keyClick(&column, Qt::Key_Home);
  const int width = column.place(0).width();
  QTest::keyClick(&column, Qt::Key_Plus);
  EXPECT_GT(column.place(0).width(), width);
  QTest::keyClick(&column, Qt::Key_0);
  EXPECT_EQ(column.place(0).width(), width);
}

TEST_F(PageColumnTest, ShowsTheRangeAlone) {
  column.show_pages(sheet, {1, 1});
  EXPECT_EQ(column.page_in_view(), 1);
  EXPECT_LT(column.widget()->height(), 2 * column.place(0).height());
  column.show_pages(sheet, {70, 80});
  EXPECT_EQ(column.page_in_view(), -1);
}

}  // namespace
}  // namespace foldyard
