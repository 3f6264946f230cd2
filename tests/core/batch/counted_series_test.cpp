#include "batch/counted_series.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <atomic>
#include <functional>

#include "core/support/dice.h"
#include "core/support/lengths.h"

namespace foldyard {
namespace {

using test::u;

constexpr std::int64_t kNoMost = CountBounds::kNoMost;

// The example of the header.
std::vector<LimitedEntry> counted_example() { return {{u(4), 5, 0, {0}}, {u(3), 2, 0, {1}}}; }

TEST(CountedSeries, HasAtLeastWhatIsAskedFor) {
  const auto at_least = [](std::int64_t n) {
    return best_counted_series(counted_example(), u(10), {{n}, {kNoMost}, {0}});
  };
  EXPECT_EQ(at_least(0).gain, 10);  // 4 + 4
  EXPECT_EQ(at_least(1).gain, 9);   // 4 + 3 + 3
  EXPECT_EQ(at_least(2).gain, 9);
  EXPECT_EQ(at_least(3).gain, 6);
  EXPECT_TRUE(at_least(3).complete);
  EXPECT_FALSE(at_least(4).found);
  EXPECT_TRUE(at_least(4).complete);
}

TEST(CountedSeries, AnyBonusGivesTheSame) {
  for (std::int64_t bonus : {0, 1, 2, 3, 100})
    EXPECT_EQ(best_counted_series(counted_example(), u(10), {{2}, {kNoMost}, {-bonus}}).gain, 9) << bonus;
}

TEST(CountedSeries, SaysWhereItsStepsRanOut) {
  std::vector<LimitedEntry> many;
  for (int i = 0; i < 40; ++i) many.push_back({u(50 + i), 100 + 2 * i, 0, {i % 3, i % 2}});
  const CountedSeries cut_short = best_counted_series(many, u(1000), {{4, 2}, {9, kNoMost}, {1, -1}}, {50, 1000});
  EXPECT_FALSE(cut_short.complete);
  EXPECT_TRUE(cut_short.found);
  std::atomic<bool> stop = true;
  EXPECT_FALSE(best_counted_series(many, u(1000), {{4, 2}, {9, kNoMost}, {1, -1}}, {50'000, 1000, &stop}).complete);
}

// What is found before it is stopped is within the bounds, and is not called the best.
TEST(CountedSeries, StaysWithinTheBoundsWhenItIsStopped) {
  std::vector<LimitedEntry> many;
  for (int i = 0; i < 40; ++i) many.push_back({u(50 + i), 100 + 7 * i % 31, i % 5, {i % 3, i % 2}});
  const CountBounds bounds{{4, 2}, {9, kNoMost}, {1, -1}};
  const CountedSeries whole = best_counted_series(many, u(1000), bounds);
  ASSERT_TRUE(whole.complete);
  ASSERT_GT(whole.steps, 4096);
  const std::atomic<bool> stop = true;
  for (const SeriesBudget& budget :
       {SeriesBudget{1'000'000, 300'000, &stop}, SeriesBudget{1'000'000, 20}, SeriesBudget{0, 20}}) {
    const CountedSeries found = best_counted_series(many, u(1000), bounds, budget);
    EXPECT_FALSE(found.complete);
    EXPECT_LE(found.steps, 4096);
    ASSERT_TRUE(found.found);
    EXPECT_LE(found.gain, whole.gain);
    std::vector<std::int64_t> copies{0, 0};
    for (const int pick : found.picks)
      for (std::size_t p = 0; p < 2; ++p) copies[p] += many[static_cast<std::size_t>(pick)].copies[p];
    EXPECT_GE(copies[0], 4);
    EXPECT_LE(copies[0], 9);
    EXPECT_GE(copies[1], 2);
  }
}

TEST(CountBounds, GiveBackWhatIsStillAllowedOrAskedFor) {
  const CountBounds bounds{{0, 5}, {8, kNoMost}, {3, -2}};
  EXPECT_EQ(bounds.given_back({0, 0}), 3 * 8 - 2 * 5);
  EXPECT_EQ(bounds.given_back({6, 4}), 3 * 2 - 2 * 1);
  EXPECT_EQ(bounds.given_back({8, 9}), 0);
  EXPECT_EQ(bounds.price_of({2, 3}), 0);
}

// Every series, one entry after another; the lowest number where none is within.
std::int64_t slow_best(const std::vector<LimitedEntry>& entries, std::int64_t room, const CountBounds& bounds,
                       const std::vector<std::int64_t>& copies, std::size_t from = 0) {
  bool within = true;
  for (std::size_t p = 0; p < copies.size(); ++p) {
    if (copies[p] > bounds.most[p]) return std::numeric_limits<std::int64_t>::min();
    within = within && copies[p] >= bounds.least[p];
  }
  std::int64_t best = within ? 0 : std::numeric_limits<std::int64_t>::min();
  for (std::size_t e = from; e < entries.size(); ++e) {
    if (entries[e].size.units() > room) continue;
    std::vector<std::int64_t> more = copies;
    for (std::size_t p = 0; p < more.size(); ++p) more[p] += entries[e].copies[p];
    const std::int64_t rest = slow_best(entries, room - entries[e].size.units(), bounds, more, e);
    if (rest != std::numeric_limits<std::int64_t>::min()) best = std::max(best, rest + entries[e].gain);
  }
  return best;
}

TEST(CountedSeries, GivesWhatTryingEverySeriesGives) {
  const unsigned first = test::first_seed();
  int found = 0, none = 0;
  for (unsigned seed = first; seed < first + 400 && !HasFailure(); ++seed) {
    test::Dice dice(seed);
    std::vector<LimitedEntry> entries;
    const int many = dice.from_to(1, 4);
    for (int i = 0; i < many; ++i)
      entries.push_back({u(dice.from_to(3, 9)), dice.from_to(-2, 9), dice.from_to(0, 3),
                         {dice.from_to(0, 2), dice.from_to(0, 2)}});
    CountBounds bounds{{dice.from_to(0, 5), 0}, {kNoMost, dice.from_to(0, 6)}, {-dice.from_to(0, 5), dice.from_to(0, 5)}};
    const int room = dice.from_to(3, 30);
    const CountedSeries series = best_counted_series(entries, u(room), bounds);
    const std::int64_t slow = slow_best(entries, room, bounds, {0, 0});
    SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed));
    ASSERT_TRUE(series.complete);
    EXPECT_EQ(series.found, slow != std::numeric_limits<std::int64_t>::min());
    if (series.found) {
      EXPECT_EQ(series.gain, slow);
    }
    (series.found ? found : none)++;
  }
  EXPECT_GT(found, 50);
  EXPECT_GT(none, 10);
}

}  // namespace
}  // namespace foldyard
