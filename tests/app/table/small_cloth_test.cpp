#include "table/small_cloth.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>

#include "laid_sample.h"

namespace foldyard {
namespace {

QRect inked(const LaidCloth& cloth, double pixels_per_mm) {
  QImage image(200, 200, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  paint_small_cloth(painter, QRectF(10, 10, 180, 180), cloth, pixels_per_mm);
  painter.end();
  QRect box;
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x)
      if (image.pixelColor(x, y) != QColor(Qt::white)) box |= QRect(x, y, 1, 1);
  return box;
}

TEST(SmallCloth, KeepsToTheScaleAndStandsOnTheGround) {
  const LaidClothPtr cloth = sample::laid("open");
  const QRect box = inked(*cloth, 0.1);
  EXPECT_NEAR(box.width(), cloth->folded().across.to.in_mm() * 0.1, 3);
  EXPECT_NEAR(box.height(), cloth->folded().along.to.in_mm() * 0.1, 3);
  EXPECT_NEAR(box.bottom(), 190, 3);
}

TEST(SmallCloth, ShrinksWhatIsTooLarge) {
  const QRect box = inked(*sample::laid("open"), 10);
  EXPECT_TRUE(QRect(7, 7, 186, 186).contains(box));
}

}  // namespace
}  // namespace foldyard
