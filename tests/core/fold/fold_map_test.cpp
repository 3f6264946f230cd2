#include "fold/fold_map.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>
#include <random>

#include "core/fold/folded_strip.h"
#include "core/support/fold_ways.h"
#include "core/support/lengths.h"

namespace foldyard {
namespace {

using test::FoldedStrip;
using test::kHalf;
using test::kOpenEndToEnd;
using test::lengths;
using test::mm;
using test::u;

const Leg& leg_under(const AxisMap& map, int x) {
  return *std::find_if(map.legs().begin(), map.legs().end(),
                       [x](const Leg& leg) { return u(x) <= leg.flat.to; });
}

bool on_a_line(const std::vector<int>& lines, int x) {
  return std::find(lines.begin(), lines.end(), x) != lines.end();
}

// Same places and faces, and the same order in every stack. A point on a fold
// line belongs to two layers and is left out of the stacks.
void expect_same(const FoldedStrip& strip, int whole, const std::vector<int>& lines,
                 const std::vector<int>& levels) {
  const AxisMap map(u(whole), lengths(lines), levels);
  for (int x = 0; x <= whole; ++x) {
    EXPECT_EQ(map.fold(u(x)).units(), strip.place(x)) << "at " << x << " of " << whole;
    if (on_a_line(lines, x)) continue;
    EXPECT_EQ(leg_under(map, x).mirrored, strip.face_down(x)) << "at " << x;
    for (int y = 0; y < x; ++y) {
      if (on_a_line(lines, y) || strip.place(x) != strip.place(y)) continue;
      EXPECT_EQ(leg_under(map, x).level < leg_under(map, y).level, strip.layer(x) < strip.layer(y))
          << x << " and " << y;
    }
  }
}

std::vector<int> random_lines(std::mt19937& random, int whole, int count) {
  std::vector<int> lines;
  while (static_cast<int>(lines.size()) < count) {
    const int line = std::uniform_int_distribution<int>(1, whole - 1)(random);
    if (!on_a_line(lines, line)) lines.push_back(line);
  }
  std::sort(lines.begin(), lines.end());
  return lines;
}

std::vector<int> upward(int legs) {
  std::vector<int> levels;
  for (int i = 0; i < legs; ++i) levels.push_back(i);
  return levels;
}

TEST(FoldMapAgainstAFoldedStrip, OpenClothStaysWhereItLies) {
  expect_same(FoldedStrip(20), 20, {}, {0});
}

TEST(FoldMapAgainstAFoldedStrip, SelvedgeToSelvedge) {
  FoldedStrip strip(40);
  strip.fold_cloth_left_of(20);
  expect_same(strip, 40, {20}, {1, 0});
}

TEST(FoldMapAgainstAFoldedStrip, OffCentreAtEveryPlace) {
  for (int line = 1; line < 30; ++line) {
    FoldedStrip strip(30);
    strip.fold_cloth_left_of(line);
    expect_same(strip, 30, {line}, {1, 0});
  }
}

TEST(FoldMapAgainstAFoldedStrip, BothEdgesInWithSingleClothBetween) {
  for (int left = 1; left <= 10; ++left) {
    FoldedStrip strip(40);
    strip.fold_cloth_left_of(left);
    strip.fold_cloth_right_of(30);
    expect_same(strip, 40, {left, 30}, {1, 0, 2});
  }
}

TEST(FoldMapAgainstAFoldedStrip, ThirdsWithLegsOfAnySize) {
  std::mt19937 random(31);
  for (int trial = 0; trial < 50; ++trial) {
    const std::vector<int> lines = random_lines(random, 36, 2);
    FoldedStrip strip(36);
    strip.fold_cloth_right_of(lines[0]);
    strip.fold_cloth_right_of(lines[1]);
    expect_same(strip, 36, lines, upward(3));
  }
}

TEST(FoldMapAgainstAFoldedStrip, QuartersByFoldingDoubleTwice) {
  // 48 wide: the left half over the right (fold edge at place 24), then all
  // that lies left of place 36 over the rest. The lines come to lie at 12, 24
  // and 36 of the flat cloth.
  FoldedStrip strip(48);
  strip.fold_all_left_of(24);
  strip.fold_all_left_of(36);
  expect_same(strip, 48, {12, 24, 36}, {1, 2, 3, 0});
}

TEST(FoldMapAgainstAFoldedStrip, QuartersWithTheSecondFoldAnywhereInTheDoubleCloth) {
  // 48 wide and folded double at 24: the second fold at place 24 + s makes
  // lines at 24 − s and 24 + s.
  for (int s = 1; s < 24; ++s) {
    FoldedStrip strip(48);
    strip.fold_all_left_of(24);
    strip.fold_all_left_of(24 + s);
    expect_same(strip, 48, {24 - s, 24, 24 + s}, {1, 2, 3, 0});
  }
}

TEST(FoldMapAgainstAFoldedStrip, FanOfFiveWithLegsOfAnySize) {
  std::mt19937 random(32);
  for (int trial = 0; trial < 50; ++trial) {
    const std::vector<int> lines = random_lines(random, 50, 4);
    FoldedStrip strip(50);
    for (int line : lines) strip.fold_cloth_right_of(line);
    expect_same(strip, 50, lines, upward(5));
  }
}

TEST(FoldMapAgainstAFoldedStrip, FanOfFourAndQuartersLayTheSamePlacesOverEachOther) {
  FoldedStrip fan(40);
  for (int line : {10, 20, 30}) fan.fold_cloth_right_of(line);
  FoldedStrip quarters(40);
  quarters.fold_all_left_of(20);
  quarters.fold_all_left_of(30);
  // The fan begins at the left selvedge, the quarters at the middle; both lay
  // a place x over 20 − x, 20 + x and 40 − x.
  for (int x = 0; x <= 40; ++x) EXPECT_EQ(fan.place(x), 10 - quarters.place(x)) << x;
}

TEST(FoldMap, HasTheHeadersExample) {
  const AxisMap map(Length::mm(1500), {Length::mm(750)}, {1, 0});
  EXPECT_EQ(map.folded_size(), Length::mm(750));
  ASSERT_EQ(map.legs().size(), 2u);
  EXPECT_TRUE(map.legs()[0].mirrored);
  EXPECT_EQ(map.legs()[0].level, 1);
  EXPECT_FALSE(map.legs()[1].mirrored);
  ASSERT_EQ(map.edges().size(), 1u);
  EXPECT_EQ(map.edges()[0].at, Length());
  EXPECT_EQ(map.edges()[0].line, Length::mm(750));
  EXPECT_TRUE(map.edges()[0].cloth_after);
  EXPECT_EQ(map.places_of(mm(0, 225)), std::vector<Span>{mm(525, 975)});
  EXPECT_EQ(map.places_of(mm(225, 675)), (std::vector<Span>{mm(75, 525), mm(975, 1425)}));
}

TEST(FoldMap, JoinsOnlyThePliesThatAFoldEdgeJoins) {
  // 1480 in quarters, 370 wide; legs 0 … 3 at levels 1 2 3 0. Leg 3 lies
  // unmirrored from its line 1110 on, so u = 0 is the places 370 and 1110 and
  // u = 370 is 0, 740 and 1480. At u = 0 two pairs are joined, at 370 only the
  // middle one; the others end there in selvedges.
  const AxisMap map(Length::mm(1480), {Length::mm(370), Length::mm(740), Length::mm(1110)},
                    {1, 2, 3, 0});
  EXPECT_EQ(map.places_of(mm(0, 100)), (std::vector<Span>{mm(270, 470), mm(1010, 1210)}));
  EXPECT_EQ(map.places_of(mm(270, 370)),
            (std::vector<Span>{mm(0, 100), mm(640, 840), mm(1380, 1480)}));
  EXPECT_EQ(map.places_of(mm(100, 200)), (std::vector<Span>{mm(170, 270), mm(470, 570),
                                                            mm(910, 1010), mm(1210, 1310)}));
  EXPECT_EQ(map.places_of(mm(0, 370)), std::vector<Span>{mm(0, 1480)});
}

TEST(FoldMap, GivesWhatAShortPlyCoversOfASpan) {
  // 100 units folded at 30: double on [0,30], single on [30,70].
  const AxisMap map(u(100), {u(30)}, {1, 0});
  EXPECT_EQ(map.folded_size(), u(70));
  EXPECT_EQ(map.places_of(u(20, 50)), (std::vector<Span>{u(0, 10), u(50, 80)}));
  EXPECT_EQ(map.places_of(u(30, 70)), std::vector<Span>{u(60, 100)});
}

TEST(FoldMap, LeavesOutPliesThatOnlyTouchTheSpan) {
  // A fan of 3 with legs of 10, 30 and 10 units. Leg 0 is [0,10] on the table,
  // leg 1 comes back over it to −20, leg 2 goes [−20,−10]; moved to 0 these are
  // [20,30], [0,30] and [0,10]. On [10,20] only leg 1 lies.
  const AxisMap map(u(50), {u(10), u(40)}, {0, 1, 2});
  EXPECT_EQ(map.folded_size(), u(30));
  EXPECT_EQ(map.places_of(u(10, 20)), std::vector<Span>{u(20, 30)});
  EXPECT_TRUE(map.places_of(u(15, 15)).empty());
  EXPECT_TRUE(map.places_of(u(30, 40)).empty());
}

TEST(FoldMap, SaysOnWhichSideOfAnEdgeTheClothLies) {
  const AxisMap fan(u(30), {u(10), u(20)}, {0, 1, 2});
  ASSERT_EQ(fan.edges().size(), 2u);
  EXPECT_EQ(fan.edges()[0].at, u(10));
  EXPECT_FALSE(fan.edges()[0].cloth_after);
  EXPECT_EQ(fan.edges()[0].first_leg, 0);
  EXPECT_EQ(fan.edges()[1].at, u(0));
  EXPECT_TRUE(fan.edges()[1].cloth_after);
  EXPECT_EQ(fan.edges()[1].first_leg, 1);
}

TEST(FoldMap, IsCreasedOnlyWhereALineLiesStrictlyInside) {
  const AxisMap map(u(100), {u(50)}, {1, 0});
  EXPECT_FALSE(map.is_creased(u(0, 50)));
  EXPECT_TRUE(map.is_creased(u(0, 51)));
  EXPECT_FALSE(map.is_creased(u(50, 100)));
  EXPECT_TRUE(map.is_creased(u(49, 51)));
}

TEST(FoldMap, FoldsEndToEndAtHalfTheLengthWithTheFreeEndOnTop) {
  const FoldPlan plan{kOpenEndToEnd, {}, {0}};
  const FoldMap map = fold_map(plan, u(100), u(60));
  EXPECT_EQ(map.across.folded_size(), u(100));
  EXPECT_EQ(map.along.folded_size(), u(30));
  EXPECT_EQ(map.along.fold(u(0)), map.along.fold(u(60)));
  EXPECT_EQ(map.along.legs()[0].level, 1);
  EXPECT_TRUE(map.along.legs()[0].mirrored);
  FoldedStrip strip(60);
  strip.fold_cloth_left_of(30);
  expect_same(strip, 60, {30}, {1, 0});
}

TEST(FoldMap, FoldsAnOddLengthHalfAUnitOffItsMiddle) {
  const FoldPlan plan{kOpenEndToEnd, {}, {0}};
  // 61 = 30 + 31: the longer leg lies on the table.
  EXPECT_EQ(fold_map(plan, u(100), u(61)).along.folded_size(), u(31));
}

TEST(FoldMap, LeavesTheLengthFlatUnlessEndToEnd) {
  const FoldPlan plan{kHalf, {u(50)}, {1, 0}};
  const FoldMap map = fold_map(plan, u(100), u(61));
  EXPECT_EQ(map.across.folded_size(), u(50));
  EXPECT_EQ(map.along.folded_size(), u(61));
  EXPECT_TRUE(map.along.edges().empty());
}

struct RandomFold {
  int whole;
  std::vector<int> lines;
  std::vector<int> levels;
};

RandomFold random_fold(std::mt19937& random) {
  const int whole = std::uniform_int_distribution<int>(10, 200)(random);
  const int count = std::uniform_int_distribution<int>(0, 6)(random);
  RandomFold fold{whole, random_lines(random, whole, count), upward(count + 1)};
  std::shuffle(fold.levels.begin(), fold.levels.end(), random);
  return fold;
}

class FoldMapOnRandomFolds : public testing::Test {
 protected:
  const unsigned seed_ = std::random_device{}();
  std::mt19937 random_{seed_};
  void SetUp() override {
    RecordProperty("seed", std::to_string(seed_));
    std::printf("seed %u\n", seed_);
  }
};

TEST_F(FoldMapOnRandomFolds, LaysTheLowestLegFaceUpAndTurnsEverySecondOne) {
  for (int trial = 0; trial < 300; ++trial) {
    const RandomFold fold = random_fold(random_);
    const AxisMap map(u(fold.whole), lengths(fold.lines), fold.levels);
    for (std::size_t i = 0; i < map.legs().size(); ++i) {
      const Leg& leg = map.legs()[i];
      EXPECT_EQ(leg.flat.size(), leg.folded.size());
      if (leg.level == 0) { EXPECT_FALSE(leg.mirrored); }
      if (i > 0) { EXPECT_NE(leg.mirrored, map.legs()[i - 1].mirrored); }
    }
  }
}

TEST_F(FoldMapOnRandomFolds, IsContinuousAndStartsAtZero) {
  for (int trial = 0; trial < 300; ++trial) {
    const RandomFold fold = random_fold(random_);
    const AxisMap map(u(fold.whole), lengths(fold.lines), fold.levels);
    Length lowest = map.fold(u(0)), highest = lowest;
    for (int x = 1; x <= fold.whole; ++x) {
      const Length step = map.fold(u(x)) - map.fold(u(x - 1));
      EXPECT_TRUE(step == u(1) || step == u(-1)) << "at " << x;
      lowest = std::min(lowest, map.fold(u(x)));
      highest = std::max(highest, map.fold(u(x)));
    }
    EXPECT_EQ(lowest, u(0));
    EXPECT_EQ(highest, map.folded_size());
  }
}

// By counting unit by unit: place x is under [from, to] if it folds into it.
TEST_F(FoldMapOnRandomFolds, PlacesOfASpanAreThoseThatFoldIntoIt) {
  for (int trial = 0; trial < 300; ++trial) {
    const RandomFold fold = random_fold(random_);
    const AxisMap map(u(fold.whole), lengths(fold.lines), fold.levels);
    std::uniform_int_distribution<std::int64_t> any(0, map.folded_size().units());
    const auto [from, to] = std::minmax({any(random_), any(random_)});
    const std::vector<Span> places = map.places_of(u(from, to));
    for (int x = 0; x < fold.whole; ++x) {
      const auto [low, high] = std::minmax({map.fold(u(x)), map.fold(u(x + 1))});
      const bool under = u(from) <= low && high <= u(to);
      const auto covers = [x](Span place) { return place.covers(u(x, x + 1)); };
      EXPECT_EQ(std::count_if(places.begin(), places.end(), covers), under ? 1 : 0)
          << "unit " << x << " under " << from << " to " << to;
    }
    for (std::size_t i = 1; i < places.size(); ++i) {
      EXPECT_LT(places[i - 1].to, places[i].from) << "apart, or they would be one";
    }
  }
}

TEST_F(FoldMapOnRandomFolds, UnfoldingAPartitionCoversTheClothOnce) {
  for (int trial = 0; trial < 300; ++trial) {
    const RandomFold fold = random_fold(random_);
    const AxisMap map(u(fold.whole), lengths(fold.lines), fold.levels);
    std::uniform_int_distribution<std::int64_t> step(1, 40);
    Length sum;
    std::vector<Span> places;
    for (Length from; from < map.folded_size();) {
      const Length to = std::min(map.folded_size(), from + u(step(random_)));
      for (Span place : map.places_of({from, to})) places.push_back(place);
      from = to;
    }
    std::sort(places.begin(), places.end());
    for (Span place : places) {
      EXPECT_EQ(place.from, sum) << "no gap and no overlap";
      sum = place.to;
    }
    EXPECT_EQ(sum, u(fold.whole));
  }
}

TEST_F(FoldMapOnRandomFolds, SelvedgeToSelvedgeMirrorsOneHalfOnTheOther) {
  for (int trial = 0; trial < 100; ++trial) {
    const int half = std::uniform_int_distribution<int>(1, 500)(random_);
    const AxisMap map(u(2 * half), {u(half)}, {1, 0});
    const int x = std::uniform_int_distribution<int>(0, half)(random_);
    EXPECT_EQ(map.fold(u(half - x)), map.fold(u(half + x)));
  }
}

}  // namespace
}  // namespace foldyard
