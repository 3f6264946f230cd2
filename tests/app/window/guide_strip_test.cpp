#include "window/guide_strip.h"

#include <gtest/gtest.h>

#include <QTest>

#include <vector>

namespace foldyard {
namespace {

TEST(GuideStripTest, TicksEachStepForItself) {
  GuideStrip strip;
  EXPECT_TRUE(strip.step(GuideStrip::sewn)->text().startsWith('2'));
  strip.tick(GuideStrip::sewn);
  EXPECT_TRUE(strip.is_ticked(GuideStrip::sewn));
  EXPECT_FALSE(strip.is_ticked(GuideStrip::roll));
  EXPECT_TRUE(strip.step(GuideStrip::sewn)->text().startsWith(QStringLiteral("✓")));
  EXPECT_TRUE(strip.step(GuideStrip::sewn)->accessibleName().contains("done"));
  EXPECT_FALSE(strip.is_done());
  strip.tick(GuideStrip::roll);
  strip.tick(GuideStrip::printed);
  EXPECT_TRUE(strip.is_done());
  strip.tick(GuideStrip::printed, false);
  EXPECT_FALSE(strip.step(GuideStrip::printed)->accessibleName().contains("done"));
}

TEST(GuideStripTest, EachStepLeadsThere) {
  GuideStrip strip;
  std::vector<int> wanted;
  QObject::connect(&strip, &GuideStrip::wanted, [&](int step) { wanted.push_back(step); });
  for (int i = 0; i < GuideStrip::kSteps; ++i) QTest::keyClick(strip.step(static_cast<GuideStrip::Step>(i)), Qt::Key_Space);
  EXPECT_EQ(wanted, (std::vector<int>{0, 1, 2}));
}

}  // namespace
}  // namespace foldyard
