#include "batch/phased_series.h"

#include <gtest/gtest.h>

#include <atomic>
#include <functional>
#include <map>

#include "core/support/dice.h"
#include "core/support/lengths.h"

namespace foldyard {
namespace {

using test::u;

PhasedEntry phased(int size, int lengths, std::optional<int> phase, std::int64_t gain,
                   std::int64_t cost = 1) {
  return {u(size), lengths, phase ? std::optional(u(*phase)) : std::nullopt, gain, cost};
}

TEST(PhasedSeries, BeginsEachLengthAtItsPhase) {
  const PhasedSeries s = best_phased_series({phased(50, 1, 0, 1)}, {u(0), u(200)}, {u(64), u(10)}, 1000);
  ASSERT_EQ(s.picks.size(), 3u);
  EXPECT_EQ(s.picks[0].at, u(10));
  EXPECT_EQ(s.picks[1].at, u(74));
  EXPECT_EQ(s.picks[2].at, u(138));
  EXPECT_TRUE(s.proved);
  EXPECT_EQ(s.bound, 3);
}

TEST(PhasedSeries, SpacesTheLengthsOfALay) {
  const PhasedEntry lay = phased(50, 3, 5, 3);
  EXPECT_EQ(places_along(lay, {u(64), u(10)}, u(20)), (std::vector<Length>{u(79), u(143), u(207)}));
  EXPECT_EQ(places_along(phased(50, 2, std::nullopt, 3), {u(64), u(10)}, u(20)),
            (std::vector<Length>{u(20), u(70)}));
}

// The gap before 64, and the one behind each length, hold one that needs no phase.
TEST(PhasedSeries, FillsTheGapsWithLengthsThatNeedNoPhase) {
  const PhasedSeries s = best_phased_series({phased(50, 1, 0, 10), phased(14, 1, std::nullopt, 1)},
                                            {u(50), u(178)}, {u(64), u(0)}, 1000);
  EXPECT_EQ(s.gain, 22);  // 14 at 50, 50 at 64, 14 at 114, 50 at 128
  EXPECT_EQ(s.picks.size(), 4u);
}

TEST(PhasedSeries, ABoundHoldsWhereStepsRunOut) {
  const std::vector<PhasedEntry> entries{phased(7, 1, std::nullopt, 7), phased(5, 1, std::nullopt, 5),
                                         phased(3, 1, 2, 3)};
  const PhasedSeries all = best_phased_series(entries, {u(0), u(1000)}, {u(11), u(0)}, 1'000'000);
  const PhasedSeries some = best_phased_series(entries, {u(0), u(1000)}, {u(11), u(0)}, 30);
  EXPECT_TRUE(all.proved);
  EXPECT_FALSE(some.proved);
  EXPECT_GE(some.bound, all.gain);
  EXPECT_LE(some.gain, all.gain);
}

TEST(PhasedSeries, AgreesWithTryingEverySeries) {
  test::Dice dice(test::first_seed());
  for (int round = 0; round < 300; ++round) {
    const int repeat = dice.from_to(2, 9), start = dice.from_to(0, repeat - 1);
    const int from = dice.from_to(0, 4), to = from + dice.from_to(5, 40);
    std::vector<PhasedEntry> entries;
    for (int n = dice.from_to(1, 4); n > 0; --n)
      entries.push_back(phased(dice.from_to(2, 12), dice.from_to(1, 3),
                               dice.coin() ? std::optional(dice.from_to(0, repeat - 1)) : std::nullopt,
                               dice.from_to(1, 20), dice.from_to(0, 3)));
    // Walks unit by unit; each length of a lay begins at the first place it may.
    std::map<int, std::pair<std::int64_t, std::int64_t>> known;
    const std::function<std::pair<std::int64_t, std::int64_t>(int)> best = [&](int at) {
      if (known.count(at)) return known[at];
      std::pair<std::int64_t, std::int64_t> most{0, 0};  // gain, −cost
      if (at < to) most = best(at + 1);
      for (const PhasedEntry& e : entries) {
        int place = at;
        bool fits = true;
        for (std::int64_t i = 0; i < e.lengths; ++i) {
          while (e.phase && (place - start - e.phase->units() + 100 * repeat) % repeat != 0) ++place;
          if (i == 0 && place != at) fits = false;
          place += static_cast<int>(e.size.units());
        }
        if (!fits || place > to) continue;
        const auto rest = best(place);
        most = std::max(most, {rest.first + e.gain, rest.second - e.cost});
      }
      return known[at] = most;
    };
    const auto slow = best(from);
    const PhasedSeries s = best_phased_series(entries, {u(from), u(to)}, {u(repeat), u(start)}, 1'000'000);
    ASSERT_TRUE(s.proved);
    ASSERT_EQ(s.gain, slow.first) << "round " << round;
    ASSERT_EQ(-s.cost, slow.second) << "round " << round;
  }
}

TEST(PhasedSeries, BoundsWhatItGainsWhenItIsStopped) {
  const std::vector<PhasedEntry> entries{phased(50, 1, 0, 10), phased(14, 1, std::nullopt, 1), phased(33, 2, 7, 12)};
  const PhasedSeries whole = best_phased_series(entries, {u(0), u(500)}, {u(64), u(10)}, 100'000);
  ASSERT_TRUE(whole.proved);
  const std::atomic<bool> stop = true, go_on = false;
  const PhasedSeries stopped = best_phased_series(entries, {u(0), u(500)}, {u(64), u(10)}, 100'000, &stop);
  EXPECT_FALSE(stopped.proved);
  EXPECT_LE(stopped.gain, whole.gain);
  EXPECT_GE(stopped.bound, whole.gain);
  EXPECT_EQ(best_phased_series(entries, {u(0), u(500)}, {u(64), u(10)}, 100'000, &go_on).gain, whole.gain);
}

}  // namespace
}  // namespace foldyard
