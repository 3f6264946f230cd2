#include "batch/flawed_series.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>

#include "core/support/dice.h"
#include "core/support/lengths.h"

namespace foldyard {
namespace {

using test::Dice;
using test::u;
using test::u_rect;

FlawedEntry plain(int size, int gain) {
  return {Length::units(size), gain, 0, {{{u_rect(0, 10, 0, size), gain}}}};
}

std::vector<Span> spans_of(const FlawedSeries& series) {
  std::vector<Span> spans;
  for (const FlawedPick& pick : series.picks) spans.push_back(pick.on_roll);
  return spans;
}

TEST(FlawedSeries, PassesOverAFlawThatWouldCostMore) {
  // The example of the header.
  const FlawedCloth cloth{u(0, 10), Length(), {u_rect(0, 10, 4, 5)}};
  const FlawedSeries series = best_flawed_series({plain(4, 1)}, cloth, nullptr, {});
  EXPECT_EQ(series.gain, 1 + 1);
  EXPECT_EQ(spans_of(series), (std::vector<Span>{u(0, 4), u(5, 9)}));
  EXPECT_TRUE(series.complete);
}

// Two panels side by side; a flaw under one of them, and no cloth to spare.
TEST(FlawedSeries, CarriesAFlawThatCostsLessThanTheClothAround) {
  const FlawedEntry pair{Length::units(4), 2, 0, {{{u_rect(0, 5, 0, 4), 1}, {u_rect(5, 10, 0, 4), 1}}}};
  const FlawedCloth cloth{u(0, 8), Length(), {u_rect(1, 2, 4, 5)}};
  const FlawedSeries series = best_flawed_series({pair}, cloth, nullptr, {});
  EXPECT_EQ(series.gain, 2 + 1);
  EXPECT_EQ(spans_of(series), (std::vector<Span>{u(0, 4), u(4, 8)}));
}

TEST(FlawedSeries, TakesTheLayoutThatLosesLeast) {
  const FlawedEntry either{Length::units(4), 3, 0,
                           {{{u_rect(0, 5, 0, 4), 3}}, {{u_rect(5, 10, 0, 4), 3}}}};
  const FlawedCloth cloth{u(0, 4), Length(), {u_rect(1, 2, 2, 3)}};
  const FlawedSeries series = best_flawed_series({either}, cloth, nullptr, {});
  EXPECT_EQ(series.gain, 3);
  ASSERT_EQ(series.picks.size(), 1u);
  EXPECT_EQ(series.picks[0].layout, 1);
}

TEST(FlawedSeries, CutsNothingWhereEverythingIsFlawed) {
  const FlawedCloth cloth{u(0, 10), Length(), {u_rect(0, 10, 0, 10)}};
  EXPECT_TRUE(best_flawed_series({plain(4, 1)}, cloth, nullptr, {}).picks.empty());
  EXPECT_TRUE(best_flawed_series({}, cloth, nullptr, {}).picks.empty());
  const FlawedSeries none = best_flawed_series({plain(4, 1)}, {u(10, 10), Length(), {}}, nullptr, {});
  EXPECT_TRUE(none.picks.empty());
  EXPECT_TRUE(none.complete);
}

// Where steps run out the series still fits and adds up.
TEST(FlawedSeries, GivesASoundSeriesWhenItIsCutShort) {
  const std::vector<FlawedEntry> entries{plain(4, 5), plain(7, 9), plain(9, 11)};
  const FlawedCloth cloth{u(0, 5000), Length(), {u_rect(0, 10, 40, 45), u_rect(0, 3, 1000, 1001)}};
  const FlawedSeries short_one = best_flawed_series(entries, cloth, nullptr, {20, 0, nullptr});
  EXPECT_FALSE(short_one.complete);
  EXPECT_LE(short_one.gain, best_flawed_series(entries, cloth, nullptr, {}).gain);
  std::atomic<bool> cancelled = true;
  EXPECT_FALSE(best_flawed_series(entries, cloth, nullptr, {1000, 0, &cancelled}).complete);
}

struct Throw {
  std::vector<FlawedEntry> entries;
  FlawedCloth cloth;
};

Throw throw_roll(Dice& dice) {
  Throw t{{}, {u(dice.from_to(0, 2), dice.from_to(20, 40)), Length::units(dice.from_to(0, 2)), {}}};
  for (int n = dice.from_to(1, 3); n > 0; --n) {
    const int length = dice.from_to(2, 9), lead = static_cast<int>(t.cloth.lead.units());
    FlawedEntry entry{Length::units(length + lead + dice.from_to(0, 1)), 0, dice.from_to(0, 5), {}};
    std::vector<FlawedPanel> panels, mirrored;
    for (int x = 0; x < 9; x += 3) {
      const int from = dice.from_to(0, length - 1), worth = dice.from_to(1, 6);
      entry.gain += worth;
      panels.push_back({u_rect(x, x + 3, from, length), worth});
      mirrored.push_back({u_rect(9 - x - 3, 9 - x, from, length), worth});
    }
    entry.layouts = {panels};
    if (dice.coin()) entry.layouts.push_back(mirrored);
    t.entries.push_back(entry);
  }
  for (int n = dice.from_to(0, 4); n > 0; --n) {
    const int x = dice.from_to(0, 8), y = dice.from_to(0, 38);
    t.cloth.flaws.push_back(u_rect(x, x + dice.from_to(1, 10), y, y + dice.from_to(1, 6)));
  }
  std::stable_sort(t.cloth.flaws.begin(), t.cloth.flaws.end(),
                   [](const Rect& a, const Rect& b) { return a.along.from < b.along.from; });
  return t;
}

int loss_at(const Throw& t, const std::vector<FlawedPanel>& layout, int from) {
  const Length start = Length::units(from) + t.cloth.lead;
  int loss = 0;
  for (const FlawedPanel& p : layout) {
    const Rect on_roll{p.flat.across, {p.flat.along.from + start, p.flat.along.to + start}};
    loss += std::any_of(t.cloth.flaws.begin(), t.cloth.flaws.end(),
                        [&](const Rect& flaw) { return flaw.overlaps(on_roll); })
                ? static_cast<int>(p.worth)
                : 0;
  }
  return loss;
}

// Every length at every whole place.
struct Best {
  int gain = 0;
  int cost = 0;
};
Best slow_best(const Throw& t) {
  const int first = static_cast<int>(t.cloth.usable.from.units());
  const int last = static_cast<int>(t.cloth.usable.to.units());
  std::map<int, Best> best;
  for (int at = first; at <= last; ++at) {
    best[at] = at > first ? best[at - 1] : Best{};
    for (const FlawedEntry& e : t.entries)
      for (const auto& layout : e.layouts) {
        const int from = at - static_cast<int>(e.size.units());
        if (from < first) continue;
        const int net = static_cast<int>(e.gain) - loss_at(t, layout, from);
        if (net <= 0) continue;
        const Best next{best[from].gain + net, best[from].cost + static_cast<int>(e.cost)};
        Best& here = best[at];
        if (next.gain > here.gain || (next.gain == here.gain && next.cost < here.cost)) here = next;
      }
  }
  return best[last];
}

TEST(FlawedSeries, GivesWhatTryingEveryPlaceGives) {
  const unsigned seed = test::first_seed();
  for (unsigned i = 0; i < 3000; ++i) {
    Dice dice(seed + i);
    const Throw t = throw_roll(dice);
    const FlawedSeries series = best_flawed_series(t.entries, t.cloth, nullptr, {});
    const Best slow = slow_best(t);
    ASSERT_TRUE(series.complete);
    ASSERT_EQ(series.gain, slow.gain) << "seed " << seed + i;
    ASSERT_EQ(series.cost, slow.cost) << "seed " << seed + i;
    int gain = 0;
    Length at = t.cloth.usable.from;
    for (const FlawedPick& pick : series.picks) {
      const FlawedEntry& e = t.entries[static_cast<std::size_t>(pick.entry)];
      ASSERT_LE(at, pick.on_roll.from);
      ASSERT_EQ(pick.on_roll.size(), e.size);
      at = pick.on_roll.to;
      gain += static_cast<int>(e.gain) -
              loss_at(t, e.layouts[static_cast<std::size_t>(pick.layout)],
                      static_cast<int>(pick.on_roll.from.units()));
    }
    ASSERT_LE(at, t.cloth.usable.to);
    ASSERT_EQ(gain, series.gain);
  }
}

// A length for the one place: here 3 long, from 5, worth 100.
class OnePlace : public AroundFlaws {
 public:
  std::vector<Length> sizes(Length) const override { return {Length::units(3)}; }
  std::int64_t most_gain(Length) const override { return 100; }
  Gain best(Length from, Length) const override {
    return from == Length::units(5) ? Gain{100, 0} : Gain{};
  }
};

TEST(FlawedSeries, TakesLengthsCutAroundFlaws) {
  const FlawedCloth cloth{u(0, 10), Length(), {u_rect(0, 10, 6, 7)}};
  const OnePlace around;
  const FlawedSeries series = best_flawed_series({plain(5, 1)}, cloth, &around, {});
  EXPECT_EQ(series.gain, 101);
  EXPECT_EQ(spans_of(series), (std::vector<Span>{u(0, 5), u(5, 8)}));
  EXPECT_EQ(series.picks[1].entry, -1);
}

}  // namespace
}  // namespace foldyard
