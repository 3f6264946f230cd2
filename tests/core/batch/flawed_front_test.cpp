#include "batch/flawed_front.h"

#include <gtest/gtest.h>

namespace foldyard {
namespace {

Length at(int n) { return Length::units(n); }

Reached reached(int gain, int cost, int place) {
  return {gain, cost, at(0), {0, 0, {at(0), at(place)}}};
}

TEST(FlawedFront, KeepsAPlaceOnlyIfItGainsMoreThanEveryEarlierOne) {
  FlawedFront front(1);
  front.start_at(at(0));
  front.add(reached(5, 0, 7));
  front.add(reached(5, 0, 8));  // no more than at 7
  EXPECT_EQ(front.next_after(at(0)), at(7));
  EXPECT_EQ(front.next_after(at(7)), FlawedFront::kNoPlace);
  front.add(reached(6, 0, 9));
  front.add(reached(6, 0, 7));  // takes its place, and that at 9
  EXPECT_EQ(front.at(at(7)).gain, 6);
  EXPECT_EQ(front.next_after(at(7)), FlawedFront::kNoPlace);
  EXPECT_EQ(front.last().gain, 6);
}

TEST(FlawedFront, PrefersLessCostAmongEqualGains) {
  FlawedFront front(1);
  front.start_at(at(0));
  front.add(reached(5, 3, 7));
  EXPECT_FALSE(front.would_rise(at(8), 5, 3));
  EXPECT_TRUE(front.would_rise(at(8), 5, 2));
  EXPECT_FALSE(front.would_rise(at(8), 4, 0));
  EXPECT_TRUE(front.would_rise(at(6), 1, 9));
}

TEST(FlawedFront, KeepsFewerPlacesWhereTheyMustRiseByMore) {
  FlawedFront front(10);
  front.start_at(at(0));
  front.add(reached(9, 0, 3));
  EXPECT_EQ(front.next_after(at(0)), FlawedFront::kNoPlace);
  front.add(reached(10, 0, 4));
  EXPECT_EQ(front.next_after(at(0)), at(4));
  EXPECT_FALSE(front.would_rise(at(5), 10, -1));
}

TEST(FlawedFront, FindsTheLastPlaceUpToAnother) {
  FlawedFront front(1);
  front.start_at(at(2));
  front.add(reached(5, 0, 7));
  EXPECT_EQ(front.last_up_to(at(6)), at(2));
  EXPECT_EQ(front.last_up_to(at(7)), at(7));
  EXPECT_EQ(front.last_up_to(at(99)), at(7));
}

}  // namespace
}  // namespace foldyard
