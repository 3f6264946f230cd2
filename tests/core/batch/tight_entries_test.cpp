#include "batch/tight_entries.h"

#include <gtest/gtest.h>

#include "core/support/dice.h"
#include "core/support/series_entry.h"

namespace foldyard {
namespace {

using test::entry;

TEST(TightEntries, AreThoseOfTheHeadersExample) {
  const std::vector<SeriesEntry> entries{entry(4, 5), entry(3, 3), entry(5, 5)};
  EXPECT_EQ(tight_entries(entries, Length::units(10)), (std::vector<int>{0, 1}));
}

TEST(TightEntries, AreNoneThatDoNotFit) {
  EXPECT_EQ(tight_entries({entry(4, 5), entry(11, 99)}, Length::units(10)), std::vector<int>{0});
  EXPECT_EQ(tight_entries({}, Length::units(10)), std::vector<int>());
}

// Every series of the most gain, found by trying all, holds tight entries only,
// and each tight entry is in one.
class AllSeries {
 public:
  AllSeries(const std::vector<SeriesEntry>& entries) : entries_(entries), used_(entries.size()) {}

  std::vector<int> in_some_best(int capacity) {
    extend(0, capacity, 0);
    std::vector<int> list;
    for (std::size_t i = 0; i < used_.size(); ++i)
      if (used_[i]) list.push_back(static_cast<int>(i));
    return list;
  }

 private:
  void extend(std::size_t from, int rest, std::int64_t gain) {
    if (gain > most_) std::fill(used_.begin(), used_.end(), false), most_ = gain;
    if (gain == most_)
      for (const std::size_t i : held_) used_[i] = true;
    for (std::size_t i = from; i < entries_.size(); ++i) {
      const int size = static_cast<int>(entries_[i].size.units());
      if (size > rest) continue;
      held_.push_back(i);
      extend(i, rest - size, gain + entries_[i].gain);
      held_.pop_back();
    }
  }

  const std::vector<SeriesEntry>& entries_;
  std::vector<bool> used_;
  std::vector<std::size_t> held_;
  std::int64_t most_ = 0;
};

TEST(TightEntries, AreThoseThatSomeBestSeriesHolds) {
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + 300; ++seed) {
    SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed));
    test::Dice dice(seed);
    std::vector<SeriesEntry> entries;
    for (int n = dice.from_to(1, 5); n > 0; --n) entries.push_back(entry(dice.from_to(3, 12), dice.from_to(1, 12)));
    const int capacity = dice.from_to(5, 40);
    EXPECT_EQ(tight_entries(entries, Length::units(capacity)), AllSeries(entries).in_some_best(capacity));
  }
}

// Left to them alone, the search finds as much for as little.
TEST(TightEntries, LoseNoSeries) {
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + 300; ++seed) {
    SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed));
    test::Dice dice(seed);
    std::vector<SeriesEntry> entries, tight;
    for (int n = dice.from_to(1, 9); n > 0; --n)
      entries.push_back(entry(dice.from_to(3, 30), dice.from_to(1, 30), dice.from_to(0, 9)));
    const Length capacity = Length::units(dice.from_to(5, 200));
    for (const int i : tight_entries(entries, capacity)) tight.push_back(entries[static_cast<std::size_t>(i)]);
    const Series all = best_series(entries, capacity, 1'000'000), few = best_series(tight, capacity, 1'000'000);
    EXPECT_EQ(few.gain, all.gain);
    EXPECT_EQ(few.cost, all.cost);
  }
}

}  // namespace
}  // namespace foldyard
