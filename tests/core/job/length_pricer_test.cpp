#include "job/length_pricer.h"

#include <gtest/gtest.h>

#include "core/support/fold_ways.h"
#include "core/support/order_job.h"
#include "job/cut_back.h"

namespace foldyard {
namespace {

using test::kHalf;
using test::kOpen;
using test::kOpenOnly;

std::int64_t priced(const Pattern& pattern, const std::vector<std::int64_t>& prices) {
  const auto copies = copies_in(pattern, prices.size());
  std::int64_t value = 0;
  for (std::size_t p = 0; p < prices.size(); ++p) value += copies[p] * prices[p];
  return value;
}

// 5 × 5 mm is one, and what is less than that is nothing.
TEST(LengthPricer, PricesPanelsByTheirArea) {
  Job job;
  job.panels = {{"a", Length::mm(100), Length::mm(50), false, true, Worth()}, {"b", Length::mm(4), Length::mm(5), false, true, Worth()}};
  EXPECT_EQ(prices_by_area(job), (std::vector<std::int64_t>{201, 1}));
}

// Of bodies alone three go side by side into 1380, in lengths of 900 and 1800 up to
// the table's 2500.
TEST(LengthPricer, GivesTheLengthsOfOnePanel) {
  const Job job = test::order_job();
  LengthPricer pricer(job, job.rolls[0], {5, 0, 0}, 40'000'000);
  const auto lengths = pricer.lengths(kOpenOnly);
  ASSERT_EQ(lengths.size(), 2u);
  EXPECT_EQ(lengths[0].length, Length::mm(900));
  EXPECT_EQ(lengths[0].value, 15);
  EXPECT_EQ(lengths[1].length, Length::mm(1800));
  EXPECT_EQ(lengths[1].value, 30);
  EXPECT_TRUE(pricer.is_whole());
}

// 1380 × 362.3 mm holds 10 000 panels of 5 × 10 mm, and the table takes 2500.
TEST(LengthPricer, LeavesLengthsOfVeryManyPanelsOut) {
  Job job = test::order_job();
  job.panels[2].across = Length::mm(5), job.panels[2].along = Length::mm(10);
  LengthPricer pricer(job, job.rolls[0], {0, 0, 3}, 40'000'000);
  const auto lengths = pricer.lengths(kOpenOnly);
  ASSERT_FALSE(lengths.empty());
  EXPECT_EQ(lengths.back().length, Length::mm(360));
  EXPECT_EQ(lengths.back().value, 276 * 36 * 3);
  EXPECT_FALSE(pricer.is_whole());
  // But none that a larger panel needs.
  LengthPricer with_bodies(job, job.rolls[0], {1, 0, 3}, 40'000'000);
  EXPECT_EQ(with_bodies.lengths(kOpenOnly).back().length, Length::mm(900));
}

TEST(LengthPricer, WritesPatternsWorthWhatItSays) {
  const Job job = test::order_job();
  const std::vector<std::int64_t> prices = {500, 60, 0};
  const std::vector<FoldWay> ways = {kOpen, kHalf};
  LengthPricer pricer(job, job.rolls[0], prices, 40'000'000);
  const auto lengths = pricer.lengths(ways);
  ASSERT_GT(lengths.size(), 10u);
  for (const PricedLength& l : lengths) {
    const Pattern pattern = pricer.pattern(l, ways);
    EXPECT_GE(priced(pattern, prices), l.value);
    EXPECT_EQ(pattern.length, l.length);
    EXPECT_EQ(pattern.fold.way, ways[static_cast<std::size_t>(l.way)]);
    EXPECT_LE(Wide(l.value), pricer.most_by_area(l.length));
  }
}

// Open cloth gives no less than any fold of the same length.
TEST(LengthPricer, BoundsEveryWay) {
  Job job = test::order_job();
  job.table.depth = job.table.reach = Length::mm(800);  // too shallow for open cloth
  const std::vector<std::int64_t> prices = {500, 60, 90};
  for (const bool end_to_end : {false, true}) {
    LengthPricer pricer(job, job.rolls[0], prices, 40'000'000);
    EXPECT_TRUE(pricer.lengths({FoldWay{FoldKind::open, 1, end_to_end, true}}).empty());
    std::map<Length, std::int64_t> most;
    for (const PricedLength& l : pricer.bounding(end_to_end)) most[l.length] = l.value;
    int compared = 0;
    for (const FoldWay& way : all_ways(4)) {
      if (way.end_to_end != end_to_end) continue;
      for (const PricedLength& l : pricer.lengths({way})) {
        const auto next = most.upper_bound(l.length);
        ASSERT_NE(next, most.begin());
        EXPECT_LE(l.value, std::prev(next)->second) << way_name(way);
        ++compared;
      }
    }
    EXPECT_GT(compared, 20);
  }
}

TEST(LengthPricer, SellsNothingAtNoPrice) {
  const Job job = test::order_job();
  LengthPricer pricer(job, job.rolls[0], {0, 0, -3}, 40'000'000);
  EXPECT_FALSE(pricer.sells());
  EXPECT_TRUE(pricer.lengths(kOpenOnly).empty());
  EXPECT_TRUE(pricer.bounding(false).empty());
}

// With few steps, or stopped, lengths give no more, and it says that there may be more.
TEST(LengthPricer, SaysWhereItDidNotSearchAll) {
  const Job job = test::order_job();
  const std::vector<std::int64_t> prices = {500, 60, 90};
  const std::atomic<bool> stop = true, go = false;
  EXPECT_TRUE(LengthPricer(job, job.rolls[0], prices, 40'000'000, &go).is_whole());
  EXPECT_FALSE(LengthPricer(job, job.rolls[0], prices, 40'000'000, &stop).is_whole());
  EXPECT_TRUE(LengthPricer(job, job.rolls[0], {0, 0, 0}, 40'000'000, &stop).is_whole());
  LengthPricer whole(job, job.rolls[0], prices, 40'000'000), few(job, job.rolls[0], prices, 1'000);
  EXPECT_FALSE(few.is_whole());
  std::map<Length, std::int64_t> most;
  for (const PricedLength& l : whole.lengths(kOpenOnly)) most[l.length] = l.value;
  for (const PricedLength& l : few.lengths(kOpenOnly)) {
    ASSERT_NE(most.upper_bound(l.length), most.begin());
    EXPECT_LE(l.value, std::prev(most.upper_bound(l.length))->second);
  }
}

// Cloth that must not be turned over is not folded end to end, and of a roll that its ends
// use up nothing is cut.
TEST(LengthPricer, CutsNoLengthsOfAWayThatIsRefused) {
  Job job = test::order_job();
  job.rolls[0].fabric.nap = Nap::one_way;
  LengthPricer one_way(job, job.rolls[0], {500, 60, 90}, 40'000'000);
  EXPECT_TRUE(one_way.lengths({test::kOpenEndToEnd}).empty());
  EXPECT_FALSE(one_way.lengths(kOpenOnly).empty());
  job.losses.squaring = job.rolls[0].length;
  LengthPricer nothing(job, job.rolls[0], {500, 60, 90}, 40'000'000);
  EXPECT_TRUE(nothing.lengths(kOpenOnly).empty());
}

}  // namespace
}  // namespace foldyard
