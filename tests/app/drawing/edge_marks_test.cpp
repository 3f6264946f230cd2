#include "drawing/edge_marks.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace foldyard {
namespace {

TEST(EdgeMarks, WishesThatAreClearAreKept) {
  EXPECT_EQ(spread({5, 20, 50}, 4, 0, 100), (std::vector<double>{5, 20, 50}));
}

TEST(EdgeMarks, CloseOnesAreShiftedEvenly) {
  // Their middle is 10.5, their distance must be 4: 8.5 and 12.5.
  EXPECT_EQ(spread({10, 11}, 4, 0, 100), (std::vector<double>{8.5, 12.5}));
}

TEST(EdgeMarks, StayInsideTheEdge) {
  EXPECT_EQ(spread({0, 1}, 4, 0, 100), (std::vector<double>{0, 4}));
  EXPECT_EQ(spread({99, 100}, 4, 0, 100), (std::vector<double>{96, 100}));
}

TEST(EdgeMarks, TooManyAreSpreadOverTheEdge) {
  EXPECT_EQ(spread({1, 2, 3}, 10, 0, 10), (std::vector<double>{0, 5, 10}));
}

TEST(EdgeMarks, RandomOnesAreApartInOrderAndInside) {
  const unsigned seed = 20240602;
  std::mt19937 random(seed);
  std::uniform_real_distribution<double> place(0, 100);
  for (int round = 0; round < 300; ++round) {
    std::vector<double> wished(1 + round % 20);
    for (double& wish : wished) wish = place(random);
    std::sort(wished.begin(), wished.end());
    const std::vector<double> places = spread(wished, 4, 0, 100);
    for (std::size_t i = 0; i < places.size(); ++i) {
      EXPECT_GE(places[i], -1e-9) << "seed " << seed;
      EXPECT_LE(places[i], 100 + 1e-9) << "seed " << seed;
      if (i == 0) continue;
      EXPECT_GE(places[i] - places[i - 1], 4 - 1e-9) << "seed " << seed;
    }
  }
}

TEST(EdgeMarks, MarksAtOnePlaceAreJoined) {
  const auto marks = merged({{5, "50"}, {2, "20"}, {5, "50"}});
  ASSERT_EQ(marks.size(), 2u);
  EXPECT_EQ(marks[0].words, "20");
}

}  // namespace
}  // namespace foldyard
