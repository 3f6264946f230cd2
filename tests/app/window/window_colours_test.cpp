#include "window/window_colours.h"

#include <gtest/gtest.h>

#include <vector>

#include "drawing/palette.h"

namespace foldyard {
namespace {

struct Pair {
  const char* what;
  QColor WindowColours::*front;
  QColor WindowColours::*ground;
  double least;  // WCAG 2.2: 4.5 for text (1.4.3), 3 for what shows a control (1.4.11)
};

const std::vector<Pair> kPairs = {
    {"text on linen", &WindowColours::ink, &WindowColours::linen, 4.5},
    {"text on a thread", &WindowColours::ink, &WindowColours::weave, 4.5},
    {"text in a field", &WindowColours::ink, &WindowColours::field, 4.5},
    {"soft text on linen", &WindowColours::soft_ink, &WindowColours::linen, 4.5},
    {"soft text on a thread", &WindowColours::soft_ink, &WindowColours::weave, 4.5},
    {"soft text in a field", &WindowColours::soft_ink, &WindowColours::field, 4.5},
    {"faded text on linen", &WindowColours::faded_ink, &WindowColours::linen, 4.5},
    {"chosen text", &WindowColours::on_chalk, &WindowColours::chalk, 4.5},
    {"heading on tape", &WindowColours::on_tape, &WindowColours::tape, 4.5},
    {"fault on linen", &WindowColours::fault, &WindowColours::linen, 4.5},
    {"fault in a field", &WindowColours::fault, &WindowColours::field, 4.5},
    {"fault on a thread", &WindowColours::fault, &WindowColours::weave, 4.5},
    {"outline of a field on linen", &WindowColours::soft_ink, &WindowColours::linen, 3},
    {"focus on linen", &WindowColours::chalk, &WindowColours::linen, 3},
    {"focus in a field", &WindowColours::chalk, &WindowColours::field, 3},
};

TEST(WindowColours, ReachTheContrastsOfBothShades) {
  for (const auto shade : {Shade::light, Shade::dark})
    for (const auto& pair : kPairs)
      EXPECT_GE(contrast(window_colours(shade).*pair.front, window_colours(shade).*pair.ground), pair.least)
          << pair.what << (shade == Shade::dark ? ", dark" : ", light");
}

TEST(WindowColours, ChosenTextOfTheStandardPaletteWouldNot) {
  // White on #308cc6, the selection of the standard style, is 3.69 : 1.
  EXPECT_NEAR(contrast(Qt::white, QColor(0x30, 0x8c, 0xc6)), 3.69, 0.01);
}

TEST(WindowPalette, KnowsItsShade) {
  EXPECT_EQ(shade_of(window_palette(Shade::light)), Shade::light);
  EXPECT_EQ(shade_of(window_palette(Shade::dark)), Shade::dark);
}

TEST(WindowStyleSheet, HasNoColourLeftOpen) {
  for (const auto shade : {Shade::light, Shade::dark})
    EXPECT_FALSE(window_style_sheet(shade).contains(QLatin1Char('%')));
}

}  // namespace
}  // namespace foldyard
