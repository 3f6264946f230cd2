#include "window/pinned_ways.h"

#include <gtest/gtest.h>

#include "sample.h"

namespace foldyard {
namespace {

// Rows of the sample: open, selvedge to selvedge, and quarters, refused.
struct PinnedWaysTest : testing::Test {
  PinnedWaysTest() { ways.show(sample::answer()); }
  WayModel ways;
  PinnedWays pinned{&ways};
};

TEST_F(PinnedWaysTest, KeepTheOrderOfPinning) {
  EXPECT_TRUE(pinned.toggle(1));
  EXPECT_TRUE(pinned.toggle(0));
  EXPECT_EQ(pinned.rows(), (std::vector<int>{1, 0}));
  EXPECT_TRUE(pinned.toggle(1));
  EXPECT_EQ(pinned.rows(), std::vector<int>{0});
}

TEST_F(PinnedWaysTest, TakeNoRefusedWay) {
  EXPECT_FALSE(pinned.toggle(2));
  EXPECT_FALSE(pinned.toggle(-1));
  EXPECT_FALSE(pinned.toggle(3));
  EXPECT_TRUE(pinned.rows().empty());
}

TEST_F(PinnedWaysTest, TellWhenTheyChange) {
  int changes = 0;
  QObject::connect(&pinned, &PinnedWays::changed, [&] { ++changes; });
  pinned.toggle(0);
  pinned.clear();
  ways.show(sample::answer());
  EXPECT_EQ(changes, 3);
}

}  // namespace
}  // namespace foldyard
