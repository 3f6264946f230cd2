#include "cutting/strips.h"

#include <gtest/gtest.h>

#include "core/support/fold_ways.h"

namespace foldyard {
namespace {

using test::kOffCentre;
using test::kPlainFlaps;

// Both edges in, plain: cloth 40 with no selvedge folds to 20, flaps of 10.
class StripsOfFlaps : public testing::Test {
 protected:
  StripsOfFlaps() {
    const Fabric fabric{Length::units(40), {}, Length::units(1), Nap::none, ""};
    layouts_ = layouts_of(kPlainFlaps, fabric, {Length::units(1), Length::units(1), Length::units(100)});
  }
  int slits(int left, StripUse left_use, int right, StripUse right_use, StripUse middle) const {
    const Length x = Length::units(left), y = Length::units(right);
    return StripsAt(*layouts_[0], {x, x, left_use}, {y, y, right_use}).slits(middle);
  }

  std::vector<std::unique_ptr<FoldLayout>> layouts_;
};

constexpr StripUse kNone = StripUse::none, kNarrower = StripUse::narrower, kExact = StripUse::exact;

TEST_F(StripsOfFlaps, ShareTheSlitsBetweenNeighbours) {
  // 8, 6 and 6 fill 20: two slits.
  EXPECT_EQ(slits(8, kExact, 6, kExact, kExact), 2);
}

TEST_F(StripsOfFlaps, NeedASlitMoreWhereAStripIsNarrowerThanItsPlace) {
  // The left strip ends short of 8: its slit is not the middle's.
  EXPECT_EQ(slits(8, kNarrower, 6, kExact, kExact), 3);
  EXPECT_EQ(slits(8, kExact, 6, kExact, kNarrower), 3);
  EXPECT_EQ(slits(8, kNarrower, 6, kNarrower, kNarrower), 4);
}

TEST_F(StripsOfFlaps, NeedNoSlitsForWhatIsNotUsed) {
  EXPECT_EQ(slits(8, kNone, 6, kNone, kNone), 0);
  EXPECT_EQ(slits(8, kExact, 6, kNone, kNone), 1);
  EXPECT_EQ(slits(8, kNone, 6, kExact, kNone), 1);
  EXPECT_EQ(slits(8, kNone, 6, kNone, kExact), 2);
}

TEST_F(StripsOfFlaps, NeedOneSlitWhereTheTwoEndsMeet) {
  EXPECT_EQ(slits(10, kExact, 10, kExact, kNone), 1);
}

TEST_F(StripsOfFlaps, LeaveTheMiddleWhatTheyDoNotTake) {
  const Length six = Length::units(6), eight = Length::units(8);
  const StripsAt at(*layouts_[0], {eight, eight, kExact}, {six, six, kExact});
  EXPECT_EQ(at.whole, Length::units(20));
  EXPECT_EQ(at.start, eight);
  EXPECT_EQ(at.middle, six);
}

// Off-centre the middle goes on under the flap: slit at 3 of 5, it begins there.
TEST(StripsAt, LetTheMiddleBeginUnderAFlapThatIsSlitNarrower) {
  const Fabric fabric{Length::units(40), {}, Length::units(1), Nap::none, ""};
  const auto layouts = layouts_of(kOffCentre, fabric, {Length::units(1), Length::units(1), Length::units(100)});
  const StripsAt at(*layouts[0], {Length::units(5), Length::units(3), kExact}, {});
  EXPECT_EQ(at.start, Length::units(3));
  EXPECT_EQ(at.middle, Length::units(40 - 2 * 5 + 2));
}

}  // namespace
}  // namespace foldyard
