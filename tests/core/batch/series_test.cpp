#include "batch/series.h"

#include <gtest/gtest.h>

#include <chrono>
#include <thread>

#include "core/support/dice.h"
#include "core/support/series_entry.h"

namespace foldyard {
namespace {

using test::entry;

constexpr std::int64_t kPlenty = 10'000'000;

TEST(BestSeries, IsTheHeadersExample) {
  // 4 + 3 + 3 fill 10 and gain 5 + 3 + 3.
  const Series best = best_series({entry(4, 5), entry(3, 3)}, Length::units(10), kPlenty);
  EXPECT_EQ(best.gain, 11);
  EXPECT_EQ(best.bound, 11);
  EXPECT_TRUE(best.proved);
  EXPECT_EQ(best.picks.size(), 3u);
}

// The short one is denser, and so short that thousands fit where one slot of a
// coarse count lies.
TEST(BestSeries, DoesNotLoseShortLengthsOnALongRoll) {
  const Series best =
      best_series({entry(1'000'003, 1'000'000), entry(1'601, 1'700)}, Length::units(320'000'007), kPlenty);
  const std::int64_t fit = 320'000'007 / 1'601;
  EXPECT_GE(best.bound, fit * 1'700);
  EXPECT_TRUE(!best.proved || best.gain == fit * 1'700) << best.gain;
}

TEST(BestSeries, IsEmptyWhereNothingFits) {
  const Series none = best_series({entry(11, 5)}, Length::units(10), kPlenty);
  EXPECT_TRUE(none.picks.empty());
  EXPECT_EQ(none.gain, 0);
  EXPECT_TRUE(none.proved);
  EXPECT_TRUE(best_series({}, Length::units(10), kPlenty).picks.empty());
}

TEST(BestSeries, FillsTheRollToTheUnit) {
  EXPECT_EQ(best_series({entry(10, 5)}, Length::units(10), kPlenty).gain, 5);
}

TEST(BestSeries, CostsLeastAmongEqualGains) {
  // One of 6 or two of 3 gain 4 either way; the two cost 2, the one 3.
  const Series best = best_series({entry(6, 4, 3), entry(3, 2, 1)}, Length::units(6), kPlenty);
  EXPECT_EQ(best.gain, 4);
  EXPECT_EQ(best.cost, 2);
}

TEST(BestSeries, TakesLeastClothAmongEquals) {
  const Series best = best_series({entry(6, 4), entry(5, 4)}, Length::units(9), kPlenty);
  EXPECT_EQ(best.picks, std::vector<int>{1});
}

TEST(BestSeries, AdmitsThatItRanOutOfSteps) {
  const Series best = best_series({entry(7, 9), entry(5, 6), entry(3, 3)}, Length::units(1000), 3);
  EXPECT_FALSE(best.proved);
  // No series gains more than 9 for each 7.
  EXPECT_GE(best.bound, 142 * 9);
  EXPECT_LE(best.gain, best.bound);
}

struct Slow {
  std::int64_t gain = 0;
  std::int64_t cost = 0;
};

// Every multiset of entries that fits, one entry after another.
void try_all(const std::vector<SeriesEntry>& entries, std::size_t i, std::int64_t room, Slow sum,
             Slow& best) {
  if (sum.gain > best.gain || (sum.gain == best.gain && sum.cost < best.cost)) best = sum;
  if (i == entries.size()) return;
  const SeriesEntry& e = entries[i];
  for (std::int64_t n = 0; n * e.size.units() <= room; ++n)
    try_all(entries, i + 1, room - n * e.size.units(),
            {sum.gain + n * e.gain, sum.cost + n * e.cost}, best);
}

std::vector<SeriesEntry> throw_entries(test::Dice& dice) {
  std::vector<SeriesEntry> entries;
  const int unit = dice.from_to(1, 3);
  for (int n = dice.from_to(1, 5); n > 0; --n)
    entries.push_back(entry(unit * dice.from_to(2, 20), dice.from_to(1, 40), dice.from_to(0, 9)));
  return entries;
}

TEST(BestSeries, FindsWhatTryingEverySeriesFinds) {
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + 1000 && !HasFailure(); ++seed) {
    SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed));
    test::Dice dice(seed);
    const std::vector<SeriesEntry> entries = throw_entries(dice);
    const Length capacity = Length::units(dice.from_to(1, 60));
    Slow slow;
    try_all(entries, 0, capacity.units(), {}, slow);
    const Series found = best_series(entries, capacity, kPlenty);
    EXPECT_EQ(found.gain, slow.gain);
    EXPECT_EQ(found.cost, slow.cost);
    EXPECT_EQ(found.bound, slow.gain);
    EXPECT_TRUE(found.proved);
  }
}

void expect_adds_up(const std::vector<SeriesEntry>& entries, Length capacity, const Series& found) {
  Length size;
  std::int64_t gain = 0, cost = 0;
  for (const int pick : found.picks) {
    const SeriesEntry& e = entries[static_cast<std::size_t>(pick)];
    size += e.size;
    gain += e.gain;
    cost += e.cost;
  }
  EXPECT_LE(size, capacity);
  EXPECT_EQ(gain, found.gain);
  EXPECT_EQ(cost, found.cost);
}

TEST(BestSeries, PicksAddUpAndFit) {
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + 300 && !HasFailure(); ++seed) {
    SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed));
    test::Dice dice(seed);
    const std::vector<SeriesEntry> entries = throw_entries(dice);
    const Length capacity = Length::units(dice.from_to(1, 2000));
    const Series found = best_series(entries, capacity, kPlenty);
    expect_adds_up(entries, capacity, found);
  }
}

TEST(BestSeries, BoundsTrulyWhateverTheSteps) {
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + 300 && !HasFailure(); ++seed) {
    SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed));
    test::Dice dice(seed);
    const std::vector<SeriesEntry> entries = throw_entries(dice);
    const Length capacity = Length::units(dice.from_to(1, 60));
    Slow slow;
    try_all(entries, 0, capacity.units(), {}, slow);
    const Series found = best_series(entries, capacity, dice.from_to(0, 60));
    EXPECT_GE(found.bound, slow.gain);
    EXPECT_LE(found.gain, slow.gain);
    EXPECT_TRUE(!found.proved || found.gain == slow.gain);
  }
}

// By density at once: not always the best, but true, and never nothing.
TEST(BestSeries, GivesASeriesAndATrueBoundWhenItIsCancelled) {
  const std::atomic<bool> cancelled{true};
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + 300 && !HasFailure(); ++seed) {
    SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed));
    test::Dice dice(seed);
    const std::vector<SeriesEntry> entries = throw_entries(dice);
    const Length capacity = Length::units(dice.from_to(1, 60));
    Slow slow;
    try_all(entries, 0, capacity.units(), {}, slow);
    const Series found = best_series(entries, capacity, kPlenty, &cancelled);
    expect_adds_up(entries, capacity, found);
    EXPECT_EQ(found.picks.empty(), slow.gain == 0);
    EXPECT_GE(found.bound, slow.gain);
    EXPECT_LE(found.gain, slow.gain);
    EXPECT_TRUE(!found.proved || found.gain == slow.gain);
  }
}

// Sizes that share no unit, on a roll of a million: too many places for a slot
// each. Whenever it is stopped, the series fits and the bound holds.
TEST(BestSeries, IsHonestWheneverItIsStopped) {
  test::Dice dice(test::first_seed());
  std::vector<SeriesEntry> entries;
  for (int i = 0; i < 600; ++i) {
    const int size = dice.from_to(9'000, 90'000);
    entries.push_back(entry(size, size + dice.from_to(0, 300), dice.from_to(0, 9)));
  }
  const Length capacity = Length::units(1'000'003);
  const Series whole = best_series(entries, capacity, kPlenty);
  for (int wait = 0; wait < 20'000; wait += 1'000) {
    std::atomic<bool> cancelled{false};
    std::thread stopper([&] {
      std::this_thread::sleep_for(std::chrono::microseconds(wait));
      cancelled = true;
    });
    const Series found = best_series(entries, capacity, kPlenty, &cancelled);
    stopper.join();
    expect_adds_up(entries, capacity, found);
    EXPECT_FALSE(found.picks.empty());
    EXPECT_GE(found.bound, whole.gain);
    EXPECT_LE(found.gain, whole.bound);
  }
}

// Two million of the shortest fit, too many to bound the rests of the roll one by one.
TEST(BestSeries, BoundsTrulyWhereTheShortestFitsMillionsOfTimes) {
  const std::vector<SeriesEntry> entries = {entry(2, 2), entry(3, 4)};
  const Length capacity = Length::units(4'000'000);
  const Series best = best_series(entries, capacity, 1'000);
  EXPECT_FALSE(best.proved);
  EXPECT_GE(best.bound, 1'333'333 * 4);
  EXPECT_LE(best.gain, 1'333'333 * 4);
  Length size;
  std::int64_t gain = 0;
  for (const int pick : best.picks) {
    size += entries[static_cast<std::size_t>(pick)].size;
    gain += entries[static_cast<std::size_t>(pick)].gain;
  }
  EXPECT_LE(size, capacity);
  EXPECT_EQ(gain, best.gain);
  EXPECT_FALSE(best.picks.empty());
}

}  // namespace
}  // namespace foldyard
