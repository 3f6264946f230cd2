#include "drawing/palette.h"

#include <gtest/gtest.h>

#include <set>

namespace foldyard {
namespace {

// WCAG 2.2, 1.4.3: text needs 4.5 : 1. Black on white is 21 : 1 by definition.
constexpr double kText = 4.5;

TEST(Palette, ContrastIsThatOfTheDefinition) {
  EXPECT_NEAR(contrast(Qt::black, Qt::white), 21, 1e-9);
  EXPECT_NEAR(contrast(Qt::white, Qt::black), 21, 1e-9);
  EXPECT_NEAR(contrast(Qt::red, Qt::red), 1, 1e-9);
}

TEST(Palette, WordsAndStrokesAreReadableOnEveryGround) {
  std::vector<QColor> grounds{palette::paper(), palette::pale(), palette::tape()};
  for (int panel = 0; panel < 16; ++panel) grounds.push_back(panel_look(panel).fill);
  for (const QColor& ground : grounds)
    for (const QColor& stroke :
         {palette::ink(), palette::soft_ink(), palette::chalk(), palette::blade()})
      EXPECT_GE(contrast(stroke, ground), kText)
          << stroke.name().toStdString() << " on " << ground.name().toStdString();
}

TEST(Palette, StrokesStayReadableInGrey) {
  for (const QColor& stroke :
       {palette::ink(), palette::soft_ink(), palette::chalk(), palette::blade()}) {
    const int grey = qGray(stroke.rgb());
    EXPECT_GE(contrast(QColor(grey, grey, grey), palette::paper()), kText);
  }
}

TEST(Palette, FirstEightPanelsHaveEightHatches) {
  std::set<Hatch> hatches;
  for (int panel = 0; panel < 8; ++panel) hatches.insert(panel_look(panel).hatch);
  EXPECT_EQ(hatches.size(), 8u);
}

TEST(Palette, ColourAndHatchTogetherRepeatOnlyAfterSixtyFour) {
  std::set<std::pair<QRgb, Hatch>> looks;
  for (int panel = 0; panel < 64; ++panel)
    looks.insert({panel_look(panel).fill.rgb(), panel_look(panel).hatch});
  EXPECT_EQ(looks.size(), 64u);
}

TEST(Palette, AnyClothLeavesInkReadable) {
  for (const char* colour : {"#000000", "#ffffff", "#102040", "#ff0000", "", "no colour"})
    EXPECT_GE(contrast(palette::ink(), cloth_ground(colour)), 7) << colour;
}

}  // namespace
}  // namespace foldyard
