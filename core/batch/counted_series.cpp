#include "batch/counted_series.h"

#include <algorithm>
#include <map>
#include <optional>

#include "measure/index.h"
#include "measure/stop.h"
#include "measure/wide.h"

namespace foldyard {

std::int64_t CountBounds::given_back(const std::vector<std::int64_t>& copies) const {
  Wide sum = 0;
  for (std::size_t p = 0; p < prices.size(); ++p) {
    if (prices[p] > 0) sum += Wide(prices[p]) * (most[p] - copies[p]);
    if (prices[p] < 0) sum += Wide(prices[p]) * std::max<std::int64_t>(0, least[p] - copies[p]);
  }
  const Wide edge = Wide(1) << 61;
  return static_cast<std::int64_t>(std::clamp<Wide>(sum, -edge, edge));
}

std::int64_t CountBounds::price_of(const std::vector<std::int64_t>& copies) const {
  std::int64_t sum = 0;
  for (std::size_t p = 0; p < prices.size(); ++p) sum += prices[p] * copies[p];
  return sum;
}

namespace {

constexpr std::size_t kMostGreedy = 200;

class CountedSearch {
 public:
  CountedSearch(const std::vector<LimitedEntry>& entries, Length capacity, const CountBounds& bounds,
                const SeriesBudget& budget)
      : entries_(entries), capacity_(capacity), bounds_(bounds), budget_(budget), rest_(priced(), capacity) {}

  CountedSeries run() {
    order();
    for (std::size_t i = 0; i < std::min(order_.size(), kMostGreedy); ++i) fill_greedily(order_[i]);
    fill_greedily(-1);
    const bool whole = enumerate();
    best_.complete = whole && !is_cancelled();
    best_.steps = steps_;
    return best_;
  }

 private:
  using Copies = std::vector<std::int64_t>;
  struct State {
    Length used;
    std::int64_t gain = 0;
    std::int64_t cost = 0;
    Copies copies;
    int parent = -1;
    int entry = -1;
    bool beaten = false;
  };

  bool is_cancelled() const { return is_set(budget_.cancelled); }

  std::vector<RestBound::Lay> priced() const {
    std::vector<RestBound::Lay> lays;
    for (const LimitedEntry& e : entries_) lays.push_back({e.size, e.gain - bounds_.price_of(e.copies)});
    return lays;
  }

  // The densest at the prices first.
  void order() {
    const std::vector<RestBound::Lay> lays = priced();
    for (int i = 0; i < std::ssize(entries_); ++i) order_.push_back(i);
    std::stable_sort(order_.begin(), order_.end(), [&](int a, int b) {
      return Wide(lays[a].gain) * lays[b].size.units() > Wide(lays[b].gain) * lays[a].size.units();
    });
  }

  bool is_enough(const Copies& copies) const {
    for (std::size_t p = 0; p < copies.size(); ++p)
      if (copies[p] < bounds_.least[p]) return false;
    return true;
  }

  // Copies with one more of an entry; empty where that is too many.
  std::optional<Copies> with(const Copies& copies, const LimitedEntry& entry) const {
    Copies sum = copies;
    for (std::size_t p = 0; p < sum.size(); ++p) {
      sum[p] += entry.copies[p];
      if (sum[p] > bounds_.most[p]) return std::nullopt;
      if (bounds_.most[p] == CountBounds::kNoMost) sum[p] = std::min(sum[p], bounds_.least[p]);
    }
    return sum;
  }

  void consider(const std::vector<int>& picks, std::int64_t gain, std::int64_t cost) {
    if (best_.found && (gain < best_.gain || (gain == best_.gain && cost >= best_.cost))) return;
    best_.picks = picks;
    best_.gain = gain;
    best_.cost = cost;
    best_.found = true;
  }

  // One entry until what it gives is no longer asked for, then whatever fits, the
  // densest first.
  void fill_greedily(int first) {
    std::vector<int> picks;
    Copies copies(bounds_.least.size(), 0);
    Length used;
    std::int64_t gain = 0, cost = 0;
    const auto add = [&](int i) {
      const LimitedEntry& e = entries_[ix(i)];
      if (used + e.size > capacity_) return false;
      const auto sum = with(copies, e);
      if (!sum) return false;
      copies = *sum;
      used += e.size;
      gain += e.gain;
      cost += e.cost;
      picks.push_back(i);
      return true;
    };
    const auto helps = [&](int i) {
      for (std::size_t p = 0; p < copies.size(); ++p)
        if (copies[p] < bounds_.least[p] && entries_[ix(i)].copies[p] > 0) return true;
      return false;
    };
    while (first >= 0 && helps(first) && add(first)) {}
    for (const int i : order_)
      while (helps(i) && add(i)) {}
    for (const int i : order_)
      while (entries_[ix(i)].gain > 0 && add(i)) {}
    if (is_enough(copies)) consider(picks, gain, cost);
  }

  std::vector<int> picks_of(const State& state) const {
    std::vector<int> picks;
    for (const State* s = &state; s->entry >= 0; s = &states_[ix(s->parent)]) picks.push_back(s->entry);
    std::reverse(picks.begin(), picks.end());
    return picks;
  }

  bool can_beat(const State& s) const {
    const std::int64_t most = s.gain + rest_.at(capacity_ - s.used) + bounds_.given_back(s.copies);
    return !best_.found || most > best_.gain;
  }

  // Keeps the state unless another beats it; marks those that it beats.
  void keep(State state) {
    std::vector<int>& others = by_copies_[state.copies];
    const auto beats = [](const State& a, const State& b) {
      return a.used <= b.used && (a.gain > b.gain || (a.gain == b.gain && a.cost <= b.cost));
    };
    for (const int i : others)
      if (beats(states_[ix(i)], state)) return;
    std::erase_if(others, [&](int i) {
      State& other = states_[ix(i)];
      if (beats(state, other)) other.beaten = true;
      return other.beaten;
    });
    others.push_back(static_cast<int>(states_.size()));
    states_.push_back(std::move(state));
    if (is_enough(states_.back().copies)) {
      const State& s = states_.back();
      if (!best_.found || s.gain > best_.gain || (s.gain == best_.gain && s.cost < best_.cost))
        consider(picks_of(s), s.gain, s.cost);
    }
  }

  // All states, entry by entry; false where steps or states ran out.
  bool enumerate() {
    keep({{}, 0, 0, Copies(bounds_.least.size(), 0)});
    for (const int e : order_) {
      const LimitedEntry& entry = entries_[ix(e)];
      for (std::size_t i = 0; i < states_.size(); ++i) {
        if (++steps_ > budget_.steps || std::ssize(states_) > budget_.states) return false;
        if (steps_ % 4096 == 0 && is_cancelled()) return false;
        if (states_[i].beaten || states_[i].used + entry.size > capacity_) continue;
        auto copies = with(states_[i].copies, entry);
        if (!copies) continue;
        State next{states_[i].used + entry.size, states_[i].gain + entry.gain, states_[i].cost + entry.cost,
                   *std::move(copies), static_cast<int>(i), e};
        if (can_beat(next)) keep(std::move(next));
      }
    }
    return true;
  }

  const std::vector<LimitedEntry>& entries_;
  Length capacity_;
  const CountBounds& bounds_;
  SeriesBudget budget_;
  RestBound rest_;
  std::vector<int> order_;
  std::vector<State> states_;
  std::map<Copies, std::vector<int>> by_copies_;
  CountedSeries best_;
  std::int64_t steps_ = 0;
};

}  // namespace

CountedSeries best_counted_series(const std::vector<LimitedEntry>& entries, Length capacity,
                                  const CountBounds& bounds, const SeriesBudget& budget) {
  return CountedSearch(entries, capacity, bounds, budget).run();
}

}  // namespace foldyard
