#include "shelf/width_typing.h"

#include <gtest/gtest.h>

#include "shelf_sample.h"

namespace foldyard {
namespace {

// Rust is 140 cm wide, with a join over all of it and a flaw at 40 to 55 cm.
TEST(WidthTyping, OnlyWhatWasOverTheWholeWidthGoesWithIt) {
  const Roll rust = sample::shelf_job().rolls[3];
  WidthTyping typing;
  Roll roll = rust;
  for (const int mm : {10, 550, 1450}) roll = typing.typed(roll, Length::mm(mm));
  EXPECT_EQ(roll.fabric.width, Length::mm(1450));
  EXPECT_EQ(roll.flaws[0].across, (Span{Length(), Length::mm(1450)}));
  EXPECT_EQ(roll.flaws[1], rust.flaws[1]);
}

TEST(WidthTyping, WhatIsDoneBetweenTwoVisitsStays) {
  WidthTyping typing;
  Roll roll = typing.typed(sample::shelf_job().rolls[3], Length::mm(1300));
  typing.end();
  roll.flaws.pop_back();
  roll = typing.typed(roll, Length::mm(1200));
  ASSERT_EQ(roll.flaws.size(), 1u);
  EXPECT_EQ(roll.flaws[0].across.to, Length::mm(1200));
}

}  // namespace
}  // namespace foldyard
