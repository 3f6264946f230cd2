#include "cloth/shrinkage.h"

#include <gtest/gtest.h>

namespace foldyard {
namespace {

TEST(BeforeShrinking, IsTheSizeThatLosesItsShare) {
  // 100 cm less 3 % is 97 cm; 50 % halves.
  EXPECT_EQ(before_shrinking(Length::mm(970), 300), Length::mm(1000));
  EXPECT_EQ(before_shrinking(Length::mm(450), 5000), Length::mm(900));
  EXPECT_EQ(before_shrinking(Length::mm(450), 0), Length::mm(450));
}

TEST(BeforeShrinking, RoundsUpToAWholeUnit) {
  // 100 / 0.97 = 103.09…; 97 / 0.97 = 100 with nothing to round.
  EXPECT_EQ(before_shrinking(Length::units(100), 300), Length::units(104));
  EXPECT_EQ(before_shrinking(Length::units(97), 300), Length::units(100));
  EXPECT_EQ(before_shrinking(Length::units(1), 1), Length::units(2));
}

TEST(BeforeShrinking, LeavesEnoughAndNoUnitTooMuch) {
  for (std::int64_t hundredths : {1, 99, 300, 1250, 4999, 9999}) {
    for (std::int64_t after : {1, 319, 144'000, 320'000'000}) {
      const std::int64_t cut = before_shrinking(Length::units(after), hundredths).units();
      EXPECT_GE(cut * (Shrinkage::kWhole - hundredths), after * Shrinkage::kWhole);
      EXPECT_LT((cut - 1) * (Shrinkage::kWhole - hundredths), after * Shrinkage::kWhole);
    }
  }
}

}  // namespace
}  // namespace foldyard
