#include "measure/duration.h"

#include <gtest/gtest.h>

#include <limits>
#include <type_traits>

namespace foldyard {
namespace {

static_assert(!std::is_convertible_v<int, Duration>);
static_assert(!std::is_convertible_v<Length, Duration>);

TEST(Duration, HoldsEightMillionHours) {
  EXPECT_EQ(Duration::seconds(1).ticks(), 320'000'000);
  EXPECT_EQ(std::numeric_limits<std::int64_t>::max() / Duration::seconds(3600).ticks(), 8'006'399);
}

TEST(Duration, OfTravelIsExact) {
  // 1.5 m at 20 s/m is 30 s.
  EXPECT_EQ(travel_time(Length::mm(1500), 20000), Duration::seconds(30));
  // One unit at 1 ms/m is one tick.
  EXPECT_EQ(travel_time(Length::units(1), 1), Duration::ticks(1));
  EXPECT_EQ(travel_time(Length::inches64(1), 20000), Duration::ticks(127 * 20000));
}

TEST(Duration, AddsAndMultiplies) {
  Duration sum = Duration::ms(500);
  sum += Duration::seconds(1);
  EXPECT_EQ(sum, Duration::ms(1500));
  EXPECT_EQ(sum * 4 - Duration::seconds(1), Duration::seconds(5));
  EXPECT_DOUBLE_EQ(Duration::seconds(90).in_minutes(), 1.5);
}

}  // namespace
}  // namespace foldyard
