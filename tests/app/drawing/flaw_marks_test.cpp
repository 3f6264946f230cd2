#include "drawing/flaw_marks.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>

#include "core/support/lengths.h"

namespace foldyard {
namespace {

using test::mm;

// 1500 folded at 750, the left half over the right: x 740 … 770 lies at u 0 … 10
// of the left ply and 0 … 20 of the right.
TEST(FlawMarks, LieOnEveryPlyThatHoldsThem) {
  const FoldPlan fold{{FoldKind::selvedge_to_selvedge, 2, false, true}, {Length::mm(750)}, {1, 0}};
  const FoldMap map = fold_map(fold, Length::mm(1500), Length::mm(900));
  EXPECT_EQ(folded_places(map, {mm(740, 770), mm(100, 120)}),
            (std::vector<Rect>{{mm(0, 10), mm(100, 120)}, {mm(0, 20), mm(100, 120)}}));
  EXPECT_EQ(folded_places(map, {mm(100, 110), mm(0, 5)}),
            (std::vector<Rect>{{mm(640, 650), mm(0, 5)}}));
}

// A flaw of no size to speak of is still seen, and its words stay in the room.
TEST(FlawMarks, AreSeenHoweverSmallAndKeepTheirWordsInTheRoom) {
  QImage image(400, 200, QImage::Format_RGB32);
  image.fill(Qt::green);
  QPainter painter(&image);
  painter.scale(10, 10);
  const QRectF room(2, 2, 36, 16);
  draw_flaw(painter, QRectF(37.9, 17.9, 0.01, 0.01), QStringLiteral("a stain with a long name"), room);
  painter.end();
  int marked = 0;
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x) {
      if (image.pixelColor(x, y) == QColor(Qt::green)) continue;
      ++marked;
      // The mark itself may reach over the rim by half its least size.
      EXPECT_TRUE(room.adjusted(-0.1, -0.1, 1.1, 1.1).contains(x / 10.0, y / 10.0)) << x << ' ' << y;
    }
  EXPECT_GT(marked, 15 * 15);
}

}  // namespace
}  // namespace foldyard
