#include "cutting/grid.h"

#include <gtest/gtest.h>

#include "core/support/dice.h"
#include "core/support/grids.h"
#include "core/support/lengths.h"

namespace foldyard {
namespace {

using test::lengths;
using test::Places;
using test::places;

Grid normal(const std::vector<int>& sizes, int limit) {
  return normal_places(lengths(sizes), Length::units(limit));
}

TEST(NormalPlaces, AreTheHeadersExample) {
  // 300, 450, 2 × 300, 300 + 450, 2 × 450 and 3 × 300; 1050 is beyond.
  EXPECT_EQ(places(normal({450, 300}, 1000)), (Places{300, 450, 600, 750, 900}));
}

TEST(NormalPlaces, TakeInTheLimitAndNothingBeyond) {
  EXPECT_EQ(places(normal({5}, 10)), (Places{5, 10}));
  EXPECT_EQ(places(normal({5}, 9)), (Places{5}));
  EXPECT_EQ(places(normal({5}, 4)), Places());
  EXPECT_EQ(places(normal({}, 10)), Places());
}

// Every number from 1 on is marked if one of the sizes leads back to a marked
// one.
TEST(NormalPlaces, AreAllSumsOfSizes) {
  const unsigned seed = test::first_seed();
  test::Dice dice(seed);
  for (int round = 0; round < 100; ++round) {
    std::vector<int> sizes;
    for (int n = dice.from_to(1, 4); n > 0; --n) sizes.push_back(dice.from_to(2, 30));
    const int limit = dice.from_to(10, 100);
    std::vector<bool> reached(static_cast<std::size_t>(limit) + 1);
    reached[0] = true;
    Places expected;
    for (int place = 1; place <= limit; ++place)
      for (const int size : sizes)
        if (place >= size && reached[static_cast<std::size_t>(place - size)] &&
            !reached[static_cast<std::size_t>(place)]) {
          reached[static_cast<std::size_t>(place)] = true;
          expected.push_back(place);
        }
    EXPECT_EQ(places(normal(sizes, limit)), expected) << "seed " << seed << " round " << round;
  }
}

TEST(PlacesAfter, BeginWithAFirstSize) {
  // 5 and 9, each with fours added up to 17: 5 9 13 17 and 9 13 17.
  const Grid grid = places_after(lengths({9, 5, 30}), lengths({4}), Length::units(17));
  EXPECT_EQ(places(grid), (Places{5, 9, 13, 17}));
}

TEST(Grid, FindsTheFloorOfAnyLength) {
  const Grid grid(lengths({3, 5, 9}));
  const int expected[] = {-1, -1, -1, 0, 0, 1, 1, 1, 1, 2, 2, 2};
  for (int u = 0; u < 12; ++u) EXPECT_EQ(grid.floor_index(Length::units(u)), expected[u]) << u;
  EXPECT_EQ(grid.floor_index(Length::units(-1)), -1);
  EXPECT_EQ(grid.index_of(Length::units(5)), 1);
  EXPECT_EQ(grid.index_of(Length::units(6)), -1);
  EXPECT_EQ(Grid().floor_index(Length::units(6)), -1);
}

TEST(Grid, FindsTheFloorWhereAllPlacesShareAUnit) {
  const Grid grid(lengths({300, 450, 600}));
  EXPECT_EQ(grid.floor_index(Length::units(299)), -1);
  EXPECT_EQ(grid.floor_index(Length::units(449)), 0);
  EXPECT_EQ(grid.floor_index(Length::units(450)), 1);
  EXPECT_EQ(grid.floor_index(Length::units(599)), 1);
  EXPECT_EQ(grid.floor_index(Length::units(100'000)), 2);
}

// Of 3 and 5 up to 15, one size alone gives 3 6 9 12 15 and 5 10, both 8 11 13 14.
TEST(NormalPlaces, KeepAllThereIsRoomFor) {
  EXPECT_EQ(places(normal_places(lengths({3, 5}), Length::units(15), 11)),
            (Places{3, 5, 6, 8, 9, 10, 11, 12, 13, 14, 15}));
}

TEST(NormalPlaces, KeepThoseOfFewestSizesAndThinTheRestEvenly) {
  // Room for nine: the seven, and the second and fourth of the others.
  EXPECT_EQ(places(normal_places(lengths({3, 5}), Length::units(15), 9)),
            (Places{3, 5, 6, 9, 10, 11, 12, 14, 15}));
}

// Up to 30 one size alone gives 3 5 6 9 10 12 15 18 20 21 24 25 27 30. Of room for four the
// sizes take two, so that a panel finds its place; the other twelve are thinned to the
// sixth and the last.
TEST(NormalPlaces, KeepSingleSizesFirst) {
  EXPECT_EQ(places(normal_places(lengths({3, 5}), Length::units(30), 4)), (Places{3, 5, 18, 30}));
}

// Two sizes in room for three: more than half, so that all are thinned evenly.
TEST(NormalPlaces, ThinSingleSizesWhereTheyWouldTakeMostOfTheRoom) {
  EXPECT_EQ(places(normal_places(lengths({3, 5}), Length::units(30), 3)).size(), 3u);
}

}  // namespace
}  // namespace foldyard
