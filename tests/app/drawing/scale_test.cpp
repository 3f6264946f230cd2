#include "drawing/scale.h"

#include <gtest/gtest.h>

namespace foldyard {
namespace {

TEST(Scale, RoundsUpToOneToReadOffARuler) {
  EXPECT_EQ(round_scale(17.3).words(), "1 : 20");
  EXPECT_EQ(round_scale(20).words(), "1 : 20");
  EXPECT_EQ(round_scale(20.1).words(), "1 : 25");
  EXPECT_EQ(round_scale(7.2).words(), "1 : 7.5");
  EXPECT_EQ(round_scale(1).words(), "1 : 1");
  EXPECT_EQ(round_scale(8123).words(), "1 : 10000");
}

TEST(Scale, TellsWhatALengthTakesOnPaper) {
  EXPECT_DOUBLE_EQ(Scale{20}.mm(Length::mm(1500)), 75);
}

TEST(Scale, BarsAreRoundAndFit) {
  // 1 : 20, 50 mm of paper: 1000 mm would just fit; in inches 36 in = 914.4 mm.
  EXPECT_EQ(bar_length({20}, Unit::cm, 50), Length::mm(1000));
  EXPECT_EQ(bar_length({20}, Unit::inch, 50), Length::inches64(36 * 64));
  EXPECT_EQ(bar_length({20}, Unit::cm, 49.9), Length::mm(500));
}

}  // namespace
}  // namespace foldyard
