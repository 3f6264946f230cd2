#include "cloth/shrinkage.h"

#include <gtest/gtest.h>

namespace foldyard {
namespace {

TEST(BeforeShrinking, IsTheSizeOverWhatIsLeft) {
  EXPECT_EQ(before_shrinking(Length::mm(970), 300), Length::mm(1000));
  EXPECT_EQ(before_shrinking(Length::mm(450), 0), Length::mm(450));
  EXPECT_EQ(before_shrinking(Length(), 5000), Length());
}

// Published: 20 measured before and 17 after is a shrinkage of 15 %
// (kembrel.com): what is to measure 17 is cut 20.
TEST(BeforeShrinking, TurnsAPublishedExampleRound) {
  EXPECT_EQ(before_shrinking(Length::mm(170), 1500), Length::mm(200));
}

// 400 / 0.95 = 421.0526 mm = 134 736.84 units: the next even number is 134 738.
TEST(BeforeShrinking, RoundsUpToAnEvenUnit) {
  EXPECT_EQ(before_shrinking(Length::mm(400), 500), Length::units(134'738));
  // 97 / 0.97 = 100 exactly; 98 / 0.97 = 101.03, and 102 is even.
  EXPECT_EQ(before_shrinking(Length::units(97), 300), Length::units(100));
  EXPECT_EQ(before_shrinking(Length::units(98), 300), Length::units(102));
}

TEST(BeforeShrinking, LeavesNoLessThanAskedAndTheLeastThatDoes) {
  for (std::int64_t lost : {1, 99, 300, 1234, 5000, 9999})
    for (std::int64_t units = 1; units < 2000; ++units) {
      const std::int64_t cut = before_shrinking(Length::units(units), lost).units();
      const std::int64_t kept = Shrinkage::kWhole - lost;
      ASSERT_EQ(cut % 2, 0);
      ASSERT_GE(cut * kept, units * Shrinkage::kWhole) << units << " at " << lost;
      ASSERT_LT((cut - 2) * kept, units * Shrinkage::kWhole) << units << " at " << lost;
    }
}

TEST(BeforeShrinking, HoldsTheLongestLengthThereMayBe) {
  EXPECT_EQ(before_shrinking(kLongest, 5000), kLongest * 2);
}

}  // namespace
}  // namespace foldyard
