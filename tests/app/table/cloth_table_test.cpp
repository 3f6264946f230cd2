#include "table/cloth_table.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QTest>

#include "laid_sample.h"

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

TEST_F(ClothTableTest, PaintsEveryWay) {
  for (const char* way : {"open", "selvedge-to-selvedge", "off-centre", "both-edges-in", "open+end-to-end"}) {
    table.show_cloth(sample::laid(way));
    emit table.folded()->pointed(0, {}, {});
    EXPECT_FALSE(table.grab().isNull()) << way;
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
