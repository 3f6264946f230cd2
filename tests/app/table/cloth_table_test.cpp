#include "table/cloth_table.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QTest>

#include <cstdlib>

#include "laid_sample.h"
#include "table/board_colours.h"

namespace foldyard {
namespace {

struct ClothTableTest : testing::Test {
  ClothTableTest() {
    table.resize(900, 700);
    table.show();
  }
  ClothTable table;
};

TEST_F(ClothTableTest, PointingInOnePictureLightsUpTheOthers) {
  const LaidClothPtr cloth = sample::laid("selvedge-to-selvedge");
  table.show_cloth(cloth);
  emit table.folded()->pointed(0, {}, {});
  EXPECT_EQ(table.flat()->lit(), 0);
  const Rect flat = cloth->patches.back().flats.front();
  emit table.flat()->pointed(static_cast<int>(cloth->patches.size()) - 1, flat.across.from, flat.along.from);
  EXPECT_EQ(table.folded()->lit(), static_cast<int>(cloth->patches.size()) - 1);
  emit table.flat()->pointed(-1, {}, {});
  EXPECT_EQ(table.lit(), -1);
}

TEST_F(ClothTableTest, AnEmptyTableSaysWhatToDo) {
  table.set_empty_words(QStringLiteral("Choose a roll."));
  table.show_cloth(nullptr);
  const auto* label = table.findChild<QLabel*>();
  ASSERT_NE(label, nullptr);
  EXPECT_TRUE(label->isVisible());
  EXPECT_EQ(label->text(), "Choose a roll.");
  EXPECT_FALSE(table.folded()->isVisible());
  table.show_cloth(sample::laid("open"));
  EXPECT_TRUE(table.folded()->isVisible());
}

// The share of a picture that has a colour, to a few shades.
double share(const QImage& image, const QColor& colour) {
  int found = 0;
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x) {
      const QColor pixel = image.pixelColor(x, y);
      found += std::abs(pixel.red() - colour.red()) + std::abs(pixel.green() - colour.green()) +
                   std::abs(pixel.blue() - colour.blue()) < 12;
    }
  return static_cast<double>(found) / image.width() / image.height();
}

TEST_F(ClothTableTest, PaintsEveryWayWithItsTapesAndLightsUpWhatIsPointedAt) {
  std::vector<QImage> seen;
  for (const char* way : {"open", "selvedge-to-selvedge", "off-centre", "both-edges-in", "open+end-to-end"}) {
    table.show_cloth(sample::laid(way));
    const QImage plain = table.grab().toImage();
    EXPECT_GT(share(plain, board_colours(false).tape), 0.02) << way;
    EXPECT_GT(share(plain, board_colours(false).board), 0.05) << way;
    emit table.folded()->pointed(0, {}, {});
    EXPECT_NE(table.grab().toImage(), plain) << way;
    for (const QImage& other : seen) EXPECT_NE(plain, other) << way;
    seen.push_back(plain);
  }
}

// The cloth is drawn to the scale that the tapes say.
TEST_F(ClothTableTest, ClothIsToScaleWithTheTable) {
  const LaidClothPtr cloth = sample::laid("open");
  table.show_cloth(cloth);
  const QRectF shown = table.folded()->viewportTransform().mapRect(scene_rect(cloth->folded()));
  EXPECT_NEAR(shown.width() / shown.height(), cloth->folded().across.to.in_mm() / cloth->folded().along.to.in_mm(), 1e-9);
}

}  // namespace
}  // namespace foldyard
