#include "job/last_length.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/support/order_job.h"

namespace foldyard {
namespace {

struct FinderSetting {
  Job job = test::order_job();
  Result<BatchCase> c = batch_case(job);
  BatchLengths lengths{job, *c};
  LastLengthFinder find{job, *c, lengths, 20'000};
};

// Three bodies of 450 × 900 side by side leave 30; three pockets of 230 × 200, which may
// turn, need another 200 along, and find room beside nothing else.
TEST(LastLength, HoldsAllInTheShortestLength) {
  FinderSetting s;
  const auto bodies = s.find(0, 0, {3, 0, 0}, Length::mm(2'000));
  ASSERT_TRUE(bodies);
  EXPECT_EQ(s.lengths.pool()[static_cast<std::size_t>(*bodies)].size, Length::mm(940));
  const auto both = s.find(0, 0, {3, 3, 0}, Length::mm(2'000));
  ASSERT_TRUE(both);
  const OrderLength& length = s.lengths.pool()[static_cast<std::size_t>(*both)];
  EXPECT_EQ(length.size, Length::mm(1'140));
  EXPECT_EQ(length.yield, (std::vector<std::int64_t>{3, 3, 0}));
}

TEST(LastLength, SaysWhereNoneIsShortEnough) {
  FinderSetting s;
  EXPECT_FALSE(s.find(0, 0, {3, 0, 0}, Length::mm(939)));
  EXPECT_TRUE(s.find(0, 0, {3, 0, 0}, Length::mm(940)));
  EXPECT_FALSE(s.find(0, 0, {3, 0, 0}, Length::mm(939)));  // known, and too long
  EXPECT_FALSE(s.find(0, 0, {100, 0, 0}, Length::mm(9'000)));
}

// Folded in half the cloth holds a body on the fold and one beside it twice; end to end
// two lie over each other, behind the trim that opens the fold.
TEST(LastLength, IsFoundForClothFoldedInHalfOrEndToEnd) {
  FinderSetting s;
  const auto in_half = [] {
    Job job = test::order_job();
    job.table.depth = job.table.reach = Length::mm(800);
    return job;
  }();
  const Result<BatchCase> folded = batch_case(in_half);
  BatchLengths lengths(in_half, *folded);
  LastLengthFinder find(in_half, *folded, lengths, 20'000);
  const auto three = find(0, 0, {3, 0, 0}, Length::mm(2'000));
  ASSERT_TRUE(three);
  EXPECT_EQ(lengths.pool()[static_cast<std::size_t>(*three)].size, Length::mm(940));
  EXPECT_EQ(lengths.pool()[static_cast<std::size_t>(*three)].yield, (std::vector<std::int64_t>{3, 0, 0}));
  const auto six = s.find(0, 1, {6, 0, 0}, Length::mm(4'000));
  ASSERT_TRUE(six);
  EXPECT_EQ(s.lengths.pool()[static_cast<std::size_t>(*six)].size, (Length::mm(900) + s.job.losses.fold_trim) * 2 + Length::mm(40));
  EXPECT_GE(s.lengths.pool()[static_cast<std::size_t>(*six)].yield[0], 6);
}

// In thirds a front lies on each of three plies, 300 of 466 wide; in the joints are creases.
TEST(LastLength, IsFoundUnderOtherWaysWhereItHoldsAll) {
  FinderSetting s;
  const std::vector<FoldWay>& ways = s.c->kinds[0].ways;
  const auto thirds = std::find_if(ways.begin(), ways.end(), [](const FoldWay& w) { return w.kind == FoldKind::fan && w.legs == 3 && !w.end_to_end; });
  ASSERT_NE(thirds, ways.end());
  const int way = static_cast<int>(thirds - ways.begin());
  const auto found = s.find(0, way, {0, 0, 6}, Length::mm(1'000));
  ASSERT_TRUE(found);
  const OrderLength& length = s.lengths.pool()[static_cast<std::size_t>(*found)];
  EXPECT_EQ(length.way, way);
  EXPECT_GE(length.yield[2], 6);
  EXPECT_LE(length.size, Length::mm(1'000));
  EXPECT_FALSE(s.find(0, way, {0, 0, 60}, Length::mm(1'000)));
}

// In units of 5.39 mm the folded cloth is 128 wide. A body of 84 has one half on the fold and
// a whole beside it, three in a row; one of 83 has no half in whole 1/320 mm, and two lie in a row.
TEST(LastLength, LaysNothingOnTheFoldThatHasNoHalf) {
  constexpr Length kCommon = Length::units(1'725);
  const auto shortest = [&](int across) {
    Job job = test::order_job();
    job.table = {Length::mm(4'000), Length::mm(800), Length::mm(800)};
    job.losses.fold_trim = kCommon;
    job.panels[0].across = kCommon * across;
    const Result<BatchCase> c = batch_case(job);
    BatchLengths lengths(job, *c);
    const std::optional<int> found = LastLengthFinder(job, *c, lengths, 20'000)(0, 0, {6, 0, 0}, Length::mm(4'000));
    return found ? lengths.pool()[static_cast<std::size_t>(*found)].size : Length();
  };
  EXPECT_EQ(shortest(84), Length::mm(2 * 900 + 40));
  EXPECT_EQ(shortest(83), Length::mm(3 * 900 + 40));
}

TEST(LastLength, IsNoneOfNothing) {
  FinderSetting s;
  EXPECT_FALSE(s.find(0, 0, {0, 0, 0}, Length::mm(2'000)));
  EXPECT_TRUE(s.lengths.pool().empty());
}

}  // namespace
}  // namespace foldyard
