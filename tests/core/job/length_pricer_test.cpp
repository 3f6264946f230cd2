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

// Of bodies alone three go side by side into 1380, in lengths of 900 and 1800 up to
// the table's 2500.
// 5 × 5 mm is one, and what is less than that is nothing.
TEST(LengthPricer, PricesPanelsByTheirArea) {
  Job job;
  job.panels = {{"a", Length::mm(100), Length::mm(50), false, true, Worth()}, {"b", Length::mm(4), Length::mm(5), false, true, Worth()}};
  EXPECT_EQ(prices_by_area(job), (std::vector<std::int64_t>{201, 1}));
}

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

}  // namespace
}  // namespace foldyard
