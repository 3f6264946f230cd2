#include "measure/length.h"

#include <gtest/gtest.h>

#include <type_traits>

namespace foldyard {
namespace {

// A length is not a number, nor a number a length, unless someone says so.
static_assert(!std::is_convertible_v<int, Length>);
static_assert(!std::is_convertible_v<std::int64_t, Length>);
static_assert(!std::is_convertible_v<Length, std::int64_t>);
static_assert(!std::is_convertible_v<Length, double>);
static_assert(!std::is_constructible_v<Length, int>);
static_assert(!std::is_convertible_v<Length, Area>);
static_assert(!std::is_convertible_v<Area, Length>);

template <class A, class B>
concept Addable = requires(A a, B b) { a + b; };
template <class A, class B>
concept Comparable = requires(A a, B b) { a < b; };
template <class A, class B>
concept Multipliable = requires(A a, B b) { a * b; };

static_assert(Addable<Length, Length>);
static_assert(!Addable<Length, int>);
static_assert(!Addable<Length, Area>);
static_assert(!Comparable<Length, int>);
static_assert(!Comparable<Length, Area>);
static_assert(!Multipliable<Area, Area>);
static_assert(!Multipliable<Area, Length>);

static_assert(std::is_same_v<decltype(Length() * Length()), Area>);
static_assert(std::is_same_v<decltype(Length() * 2), Length>);
static_assert(std::is_same_v<decltype(Length() / 2), Length>);
static_assert(std::is_same_v<decltype(Length() / Length()), std::int64_t>);

// International yard and pound agreement of 1959: 1 yd = 0.9144 m exactly.
TEST(Length, HoldsTheYardOf1959Exactly) {
  EXPECT_EQ(Length::units(Length::kUnitsPerYard) * 10000, Length::mm(1000) * 9144);
}

// Same agreement: 1 in = 1/36 yd = 25.4 mm.
TEST(Length, HoldsTheInchExactly) {
  EXPECT_EQ(Length::inches64(64), Length::units(Length::kUnitsPerInch));
  EXPECT_EQ(Length::inches64(64) * 10, Length::mm(254));
  EXPECT_EQ(Length::inches64(64) * 36, Length::units(Length::kUnitsPerYard));
}

TEST(Length, HasTheHeadersExample) {
  // 450 × 320 = 144 000 and 1 in = 8128: 152 128.
  EXPECT_EQ(Length::mm(450) + Length::inches64(64), Length::units(152128));
}

TEST(Length, DividesTowardsZero) {
  EXPECT_EQ(Length::units(7) / 2, Length::units(3));
  EXPECT_EQ(Length::units(-7) / 2, Length::units(-3));
  EXPECT_EQ(Length::mm(25) / Length::mm(6), 4);
}

TEST(Length, KnowsEvenCountsOfUnits) {
  EXPECT_TRUE(Length::units(0).is_even());
  EXPECT_TRUE(Length::mm(1).is_even());
  EXPECT_FALSE(Length::inches64(1).is_even());
  EXPECT_FALSE(Length::units(-1).is_even());
}

// ISO 216: A4 is 210 × 297 mm, and A0 … A4 halve from nearly 1 m².
TEST(Area, OfA4IsNearlyASixteenthOfASquareMetre) {
  const Area a4 = Length::mm(210) * Length::mm(297);
  EXPECT_EQ(a4, Area::square_units(210 * 320LL * 297 * 320));
  EXPECT_NEAR(a4.in_square_metres(), 1.0 / 16, 0.0002);  // 0.06237
}

TEST(Area, OfTheLargestRollLeavesRoom) {
  // 1 km × 3 m = 3.2e8 × 9.6e5 = 3.072e14; 30 000 of them stay under 2^63.
  const Area roll = kLongest * Length::mm(3000);
  EXPECT_EQ(roll.square_units(), 307'200'000'000'000);
  EXPECT_GT((roll * 30000).square_units(), 0);
}

}  // namespace
}  // namespace foldyard
