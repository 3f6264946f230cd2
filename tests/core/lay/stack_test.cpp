#include "lay/stack.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>

#include "core/support/dice.h"

namespace foldyard {
namespace {

std::vector<Length> heights(const std::vector<int>& mm) {
  std::vector<Length> all;
  for (const int h : mm) all.push_back(Length::mm(h));
  return all;
}

std::size_t lays(int pieces, int most_plies, int pieces_a_ply) {
  const std::size_t plies = static_cast<std::size_t>((pieces + pieces_a_ply - 1) / pieces_a_ply);
  const std::vector<Length> one(plies, Length::mm(1));
  return fewest_stacks(one, 1, {Length::mm(1000), most_plies}).stacks.size();
}

// Least numbers of lays: order over most plies times pieces a ply, rounded up.
// Source: I. Vilumsone-Nemes, Industrial Cutting of Textile Materials, table 4.1, p. 33
// (25 and 114 pieces, 30 plies: 1 and 4 lays); scribd.com/presentation/575728029, Cutting
// plan (260 pieces, 50 plies of 4: 2 lays; 440, 60 of 4: 2; 1300, 75 of 5: 4).
TEST(Stack, MakesAsManyLaysAsPublishedPlans) {
  EXPECT_EQ(lays(25, 30, 1), 1u);
  EXPECT_EQ(lays(114, 30, 1), 4u);
  EXPECT_EQ(lays(260, 50, 4), 2u);
  EXPECT_EQ(lays(440, 60, 4), 2u);
  EXPECT_EQ(lays(1300, 75, 5), 4u);
}

// 2488 pieces, 8 in a ply: at the least 311 plies.
// Source: stitchdiary.com, 8 ways to minimize fabric losses.
TEST(Stack, CutsAPublishedNumberOfPlies) {
  EXPECT_EQ(lays(2488, 311, 8), 1u);
  EXPECT_EQ(lays(2488, 310, 8), 2u);
}

TEST(Stack, PacksByHeight) {
  const Stacks two = fewest_stacks(heights({12, 12, 13, 13}), 1, {Length::mm(25), 99});
  EXPECT_EQ(two.stacks.size(), 2u);
  EXPECT_EQ(two.least, 2);
  // First fit gives 6 + 3, 5 + 4 … here three; 6 + 4 and 5 + 3 + 2 give two.
  EXPECT_EQ(fewest_stacks(heights({6, 5, 4, 3, 2}), 1, {Length::mm(10), 99}).stacks.size(), 2u);
}

TEST(Stack, KeepsToTheCapOnPlies) {
  EXPECT_EQ(fewest_stacks(heights({1, 1, 1, 1, 1}), 4, {Length::mm(100), 8}).stacks.size(), 3u);
}

TEST(Stack, HoldsEachLengthOnceWithinTheCutter) {
  for (unsigned seed = 1; seed < 200; ++seed) {
    test::Dice dice(seed);
    std::vector<Length> all;
    for (int n = dice.from_to(1, 20); n > 0; --n) all.push_back(Length::mm(dice.from_to(2, 12)));
    const int plies = dice.from_to(1, 3), most = dice.from_to(plies, 9);
    const Stacks found = fewest_stacks(all, plies, {Length::mm(20), most});
    std::vector<int> seen;
    for (const auto& stack : found.stacks) {
      Length height;
      for (const int i : stack) height += all[static_cast<std::size_t>(i)];
      EXPECT_LE(height, Length::mm(20)) << "seed " << seed;
      EXPECT_LE(std::ssize(stack) * plies, most) << "seed " << seed;
      seen.insert(seen.end(), stack.begin(), stack.end());
    }
    std::sort(seen.begin(), seen.end());
    std::vector<int> expected(all.size());
    std::iota(expected.begin(), expected.end(), 0);
    EXPECT_EQ(seen, expected) << "seed " << seed;
    EXPECT_GE(std::ssize(found.stacks), found.least);
    if (all.size() <= 12) {
      EXPECT_EQ(std::ssize(found.stacks), found.least) << "seed " << seed;
    }
  }
}

}  // namespace
}  // namespace foldyard
