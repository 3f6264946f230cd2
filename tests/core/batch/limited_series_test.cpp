#include "batch/limited_series.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <atomic>

#include "core/support/dice.h"
#include "core/support/lengths.h"

namespace foldyard {
namespace {

using test::u;

// The example of the header.
std::vector<LimitedEntry> limited_example() { return {{u(4), 5, 0, {2}}, {u(3), 3, 0, {0}}}; }

TEST(LimitedSeries, CutsNoMoreThanTheLimit) {
  EXPECT_EQ(best_limited_series(limited_example(), u(10), {{2}, {0}}, 0).gain, 11);
  const LimitedSeries less = best_limited_series(limited_example(), u(10), {{1}, {0}}, 0);
  EXPECT_EQ(less.gain, 9);
  EXPECT_TRUE(less.complete);
}

TEST(LimitedSeries, AnyPricesGiveTheSame) {
  for (std::int64_t price : {1, 2, 3, 100})
    EXPECT_EQ(best_limited_series(limited_example(), u(10), {{2}, {price}}, 0).gain, 11) << price;
}

TEST(LimitedSeries, PicksNothingThatDoesNotBeat) {
  const LimitedSeries none = best_limited_series(limited_example(), u(10), {{2}, {1}}, 11);
  EXPECT_TRUE(none.complete);
  EXPECT_TRUE(none.picks.empty());
  EXPECT_EQ(best_limited_series(limited_example(), u(10), {{2}, {1}}, 10).gain, 11);
}

TEST(LimitedSeries, SaysWhereItsStepsRanOut) {
  std::vector<LimitedEntry> many;
  for (int i = 0; i < 40; ++i) many.push_back({u(50 + i), 100 + 2 * i, 0, {i % 3, i % 2}});
  const LimitedSeries cut_short = best_limited_series(many, u(1000), {{9, 9}, {1, 1}}, 0, {100, 1000});
  EXPECT_FALSE(cut_short.complete);
  EXPECT_GT(cut_short.gain, 0);
  std::atomic<bool> stop = true;
  // Free of prices the first could be cut twice, for 10; within its limit there are 8.
  const std::vector<LimitedEntry> two{{u(5), 5, 0, {1}}, {u(5), 3, 0, {0}}};
  EXPECT_FALSE(best_limited_series(two, u(10), {{1}, {0}}, 0, {1'000, 1'000, &stop}).complete);
  EXPECT_TRUE(best_limited_series(two, u(10), {{1}, {0}}, 0).complete);
}

// Forty panels of which a million may be cut are more than a search counts side by side.
TEST(LimitedSeries, IsGoodButNotCalledBestWhereTooMuchIsToBeCounted) {
  std::vector<LimitedEntry> entries;
  for (int i = 0; i < 40; ++i) {
    entries.push_back({u(30 + i), 60 + i, 0, std::vector<std::int64_t>(40, 0)});
    entries.back().copies[static_cast<std::size_t>(i)] = 1;
  }
  const CopyLimits limits{std::vector<std::int64_t>(40, 1'000'000), std::vector<std::int64_t>(40, 0)};
  const LimitedSeries found = best_limited_series(entries, u(300), limits, 0);
  EXPECT_FALSE(found.complete);
  EXPECT_EQ(found.gain, 10 * 60);  // ten of the densest
  EXPECT_EQ(found.picks.size(), 10u);
}

// More entries than are put together one by one, and stopped by the count of its states or on the way.
TEST(LimitedSeries, StaysWithinItsLimitsWhenItIsStopped) {
  std::vector<LimitedEntry> many;
  for (int i = 0; i < 450; ++i) many.push_back({u(50 + i % 97), 100 + 13 * i % 89, i % 4, {i % 3, i % 2}});
  const CopyLimits limits{{9, 9}, {5, 5}};
  const std::atomic<bool> stop = true;
  for (const SeriesBudget& budget : {SeriesBudget{1'000'000, 10}, SeriesBudget{1'000'000, 300'000, &stop}}) {
    const LimitedSeries found = best_limited_series(many, u(1000), limits, 0, budget);
    EXPECT_FALSE(found.complete);
    std::int64_t gain = 0, size = 0, first = 0, second = 0;
    for (const int pick : found.picks) {
      const LimitedEntry& e = many[static_cast<std::size_t>(pick)];
      gain += e.gain, size += e.size.units(), first += e.copies[0], second += e.copies[1];
    }
    EXPECT_GT(gain, 0);
    EXPECT_EQ(gain, found.gain);
    EXPECT_LE(size, 1000);
    EXPECT_LE(std::max(first, second), 9);
  }
}

TEST(RestBound, IsExactWhereSizesShareAUnit) {
  const RestBound rest({{u(4), 5}, {u(3), 3}}, u(10));
  EXPECT_EQ(rest.at(u(2)), 0);
  EXPECT_EQ(rest.at(u(3)), 3);
  EXPECT_EQ(rest.at(u(10)), 11);
}

// Every series, one entry after another, by what it uses up.
std::int64_t slow_best(const std::vector<LimitedEntry>& entries, std::int64_t room, const std::vector<std::int64_t>& left,
                       std::size_t from = 0) {
  std::int64_t best = 0;
  for (std::size_t e = from; e < entries.size(); ++e) {
    std::vector<std::int64_t> rest = left;
    bool fits = entries[e].size.units() <= room;
    for (std::size_t p = 0; p < left.size(); ++p) fits = fits && (rest[p] -= entries[e].copies[p]) >= 0;
    if (fits) best = std::max(best, entries[e].gain + slow_best(entries, room - entries[e].size.units(), rest, e));
  }
  return best;
}

TEST(LimitedSeries, AgreesWithTryingEverySeries) {
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + 400 && !HasFailure(); ++seed) {
    test::Dice dice(seed);
    std::vector<LimitedEntry> entries;
    for (int n = dice.from_to(1, 6); n > 0; --n)
      entries.push_back({u(dice.from_to(5, 20)), dice.from_to(0, 30), dice.from_to(0, 9),
                         {dice.from_to(0, 3), dice.from_to(0, 2)}});
    const CopyLimits limits{{dice.from_to(0, 8), dice.from_to(0, 5)}, {dice.from_to(0, 9), dice.from_to(0, 9)}};
    const Length capacity = u(dice.from_to(10, 70));
    const LimitedSeries found = best_limited_series(entries, capacity, limits, 0);
    EXPECT_TRUE(found.complete);
    EXPECT_EQ(found.gain, slow_best(entries, capacity.units(), limits.most)) << "FOLDYARD_SEED=" << seed;
    std::int64_t gain = 0, size = 0;
    for (const int pick : found.picks) gain += entries[pick].gain, size += entries[pick].size.units();
    EXPECT_EQ(gain, found.gain);
    EXPECT_LE(size, capacity.units());
  }
}

}  // namespace
}  // namespace foldyard
