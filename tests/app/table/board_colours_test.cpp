#include "table/board_colours.h"

#include <gtest/gtest.h>

#include "drawing/palette.h"

namespace foldyard {
namespace {

TEST(BoardColours, ChalkIsReadOnAnyCloth) {
  for (int red = 0; red < 256; red += 15)
    for (int green = 0; green < 256; green += 15)
      for (int blue = 0; blue < 256; blue += 15) {
        const QColor cloth(red, green, blue);
        EXPECT_GE(contrast(chalk_on(cloth), cloth), 4.5) << cloth.name().toStdString();
      }
}

TEST(BoardColours, TapesTagsAndWordsAreRead) {
  for (const bool dark : {false, true}) {
    const BoardColours& colours = board_colours(dark);
    EXPECT_GE(contrast(colours.on_tape, colours.tape), 4.5);
    EXPECT_GE(contrast(colours.on_tag, colours.tag), 4.5);
    EXPECT_GE(contrast(colours.ink, colours.board), 4.5);
    EXPECT_GE(contrast(colours.ink, colours.rim), 4.5);
    EXPECT_GE(contrast(colours.pointed, colours.board), 3);
  }
}

TEST(BoardColours, ATextThatIsNoColourGivesLinen) { EXPECT_EQ(cloth_colour("moss"), cloth_colour("")); }

}  // namespace
}  // namespace foldyard
