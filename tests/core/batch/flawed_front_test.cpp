#include "batch/flawed_front.h"

#include <gtest/gtest.h>

#include "core/support/lengths.h"

namespace foldyard {
namespace {

using test::u;

Reached reached(int gain, int cost, int place) {
  return {gain, cost, u(0), {0, 0, {u(0), u(place)}}};
}

TEST(FlawedFront, KeepsAPlaceOnlyIfItGainsMoreThanEveryEarlierOne) {
  FlawedFront front(1);
  front.start_at(u(0));
  front.add(reached(5, 0, 7));
  front.add(reached(5, 0, 8));  // no more than at 7
  EXPECT_EQ(front.next_after(u(0)), u(7));
  EXPECT_EQ(front.next_after(u(7)), FlawedFront::kNoPlace);
  front.add(reached(6, 0, 9));
  front.add(reached(6, 0, 7));  // takes its place, and that at 9
  EXPECT_EQ(front.at(u(7)).gain, 6);
  EXPECT_EQ(front.next_after(u(7)), FlawedFront::kNoPlace);
  EXPECT_EQ(front.last().gain, 6);
}

TEST(FlawedFront, PrefersLessCostAmongEqualGains) {
  FlawedFront front(1);
  front.start_at(u(0));
  front.add(reached(5, 3, 7));
  EXPECT_FALSE(front.would_rise(u(8), 5, 3));
  EXPECT_TRUE(front.would_rise(u(8), 5, 2));
  EXPECT_FALSE(front.would_rise(u(8), 4, 0));
  EXPECT_TRUE(front.would_rise(u(6), 1, 9));
}

TEST(FlawedFront, KeepsFewerPlacesWhereTheyMustRiseByMore) {
  FlawedFront front(10);
  front.start_at(u(0));
  front.add(reached(9, 0, 3));
  EXPECT_EQ(front.next_after(u(0)), FlawedFront::kNoPlace);
  front.add(reached(10, 0, 4));
  EXPECT_EQ(front.next_after(u(0)), u(4));
  EXPECT_FALSE(front.would_rise(u(5), 10, -1));
}

TEST(FlawedFront, RisesByAnythingBeforeItsFirstPlace) {
  FlawedFront front(10);
  front.start_at(u(5));
  EXPECT_TRUE(front.would_rise(u(4), 0, 9));
  EXPECT_FALSE(front.would_rise(u(5), 9, 0));
}

TEST(FlawedFront, FindsTheLastPlaceUpToAnother) {
  FlawedFront front(1);
  front.start_at(u(2));
  front.add(reached(5, 0, 7));
  EXPECT_EQ(front.last_up_to(u(6)), u(2));
  EXPECT_EQ(front.last_up_to(u(7)), u(7));
  EXPECT_EQ(front.last_up_to(u(99)), u(7));
}

}  // namespace
}  // namespace foldyard
