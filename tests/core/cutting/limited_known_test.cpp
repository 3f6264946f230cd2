#include "cutting/limited_known.h"

#include <gtest/gtest.h>

#include "core/support/dice.h"

namespace foldyard::limited {
namespace {

struct Known {
  Counting counting{std::vector<std::int64_t>{7, 7, 7}};
  Builds builds;
  KnownBuilds known{builds, counting};

  static Build build(int width, int height, const Copies& copies, std::int64_t gain = 0) {
    Build b;
    b.width = width;
    b.height = height;
    b.copies = copies;
    b.gain = gain;
    return b;
  }
  // Whether it is new.
  bool offer(const Build& b) {
    if (known.has_as_good(b)) return false;
    builds.push_back(b);
    known.add(static_cast<int>(builds.size()) - 1);
    return true;
  }
};

TEST(KnownBuilds, KeepTheSmallestOfTheSamePanels) {
  Known k;
  const Copies one = k.counting.one(1, 3);
  EXPECT_TRUE(k.offer(Known::build(4, 5, one)));
  EXPECT_FALSE(k.offer(Known::build(4, 5, one)));
  EXPECT_FALSE(k.offer(Known::build(5, 5, one)));
  EXPECT_TRUE(k.offer(Known::build(5, 4, one)));
  EXPECT_TRUE(k.offer(Known::build(4, 4, one)));
  EXPECT_TRUE(k.known.is_given_up(0));
  EXPECT_TRUE(k.known.is_given_up(1));
  EXPECT_FALSE(k.known.is_given_up(2));
}

TEST(KnownBuilds, TellPanelsRimsAndGainsApart) {
  Known k;
  EXPECT_TRUE(k.offer(Known::build(4, 5, k.counting.one(0, 3))));
  EXPECT_TRUE(k.offer(Known::build(4, 5, k.counting.one(0, 2))));
  EXPECT_TRUE(k.offer(Known::build(4, 5, k.counting.one(0, 3), 1)));
  EXPECT_FALSE(k.offer(Known::build(4, 5, k.counting.one(0, 3))));
  Build at_joint = Known::build(4, 5, k.counting.one(0, 3));
  at_joint.rim = kJoint;
  EXPECT_TRUE(k.offer(at_joint));
}

// Against a look at every build, over more builds than the first slots hold.
TEST(KnownBuilds, AgreeWithALookAtAll) {
  Known k;
  test::Dice dice(test::first_seed());
  for (int i = 0; i < 6000; ++i) {
    Copies copies{};
    for (int p = 0; p < 3; ++p) copies = copies + k.counting.one(p, dice.from_to(0, 7));
    const Build b = Known::build(dice.from_to(1, 9), dice.from_to(1, 9), copies, dice.from_to(0, 2));
    bool is_new = true;
    for (const Build& a : k.builds)
      if (a.copies == b.copies && a.width <= b.width && a.height <= b.height && a.gain >= b.gain) is_new = false;
    ASSERT_EQ(k.offer(b), is_new) << i;
  }
}

}  // namespace
}  // namespace foldyard::limited
