#include "drawing/label.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>

namespace foldyard {
namespace {

QRectF drawn(const QRectF& box, const Label& label) {
  QImage image(400, 400, QImage::Format_RGB32);
  QPainter painter(&image);
  return draw_label(painter, box, label);
}

TEST(Label, StaysInItsBoxWhateverTheSize) {
  const Label label{"Seat cushion top with welt allowance", "24 × 26 in", "P4", 7.5, true};
  for (double width : {1.0, 3.0, 5.0, 8.0, 15.0, 40.0})
    for (double height : {1.0, 3.0, 5.0, 8.0, 15.0, 40.0}) {
      const QRectF box(10, 10, width, height);
      EXPECT_TRUE(box.adjusted(-0.01, -0.01, 0.01, 0.01).contains(drawn(box, label)) ||
                  drawn(box, label).isEmpty())
          << width << " × " << height;
    }
}

TEST(Label, NothingWhereNothingFits) {
  EXPECT_TRUE(drawn(QRectF(0, 0, 2, 2), {"Tie", "", "P1", 7.5, true}).isEmpty());
}

TEST(Label, RunsUpwardsInANarrowBox) {
  const QRectF place = drawn(QRectF(0, 0, 5, 40), {"Back cushion", "", "P1", 7.5, true});
  EXPECT_GT(place.height(), place.width());
}

TEST(Label, TheCodeStandsInForANameThatDoesNotFit) {
  EXPECT_FALSE(
      drawn(QRectF(0, 0, 6, 6), {"Rückenkissenbezug", "45 × 90 cm", "P1", 7.5, true}).isEmpty());
}

}  // namespace
}  // namespace foldyard
