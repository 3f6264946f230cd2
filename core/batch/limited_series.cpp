#include "batch/limited_series.h"

#include <algorithm>
#include <numeric>
#include <unordered_map>

#include "cutting/copies_hash.h"
#include "measure/index.h"
#include "measure/stop.h"
#include "measure/wide.h"

namespace foldyard {

std::int64_t CopyLimits::given_back() const { return price_of(most); }

std::int64_t CopyLimits::price_of(const std::vector<std::int64_t>& copies) const {
  return std::inner_product(prices.begin(), prices.end(), copies.begin(), std::int64_t{0});
}

namespace {

constexpr std::int64_t kSlots = 4096;

// The unit all sizes share where that makes few slots, else one that does and
// that no size is less than.
std::int64_t slot_unit(const std::vector<RestBound::Lay>& lays, std::int64_t capacity) {
  std::int64_t shared = 0, least = capacity;
  for (const RestBound::Lay& lay : lays) {
    shared = std::gcd(shared, lay.size.units());
    least = std::min(least, lay.size.units());
  }
  if (shared > 0 && capacity / shared <= kSlots) return shared;
  return std::max<std::int64_t>(1, std::min(least, capacity / kSlots + 1));
}

}  // namespace

RestBound::RestBound(const std::vector<Lay>& lays, Length capacity)
    : unit_(slot_unit(lays, capacity.units())),
      most_(static_cast<std::size_t>(capacity.units() / unit_ + 1), 0) {
  std::vector<std::int64_t> best(most_.size(), 0);  // by size in slots
  for (const Lay& lay : lays) {
    if (lay.size > capacity) continue;
    std::int64_t& there = best[ix(lay.size.units() / unit_)];
    there = std::max(there, lay.gain);
  }
  std::vector<std::pair<std::size_t, std::int64_t>> worthwhile;
  std::int64_t before = 0;
  for (std::size_t size = 1; size < best.size(); ++size)
    if (best[size] > before) worthwhile.push_back({size, before = best[size]});
  for (std::size_t i = 1; i < most_.size(); ++i) {
    most_[i] = most_[i - 1];
    for (const auto& [size, gain] : worthwhile) {
      if (size > i) break;
      most_[i] = std::max(most_[i], most_[i - size] + gain);
    }
  }
}

namespace {

using limited::Copies;
using limited::Counting;
using limited::operator+;

constexpr int kDensityBits = 16;

struct Entry {
  std::int64_t size;
  std::int64_t gain;
  std::int64_t priced;
  std::int64_t cost;
  std::int64_t density;  // priced gain a unit of roll, scaled, rounded up, ≥ 0
  Copies copies;
  int index;
};

struct PartialSeries {
  Copies copies{};
  std::int64_t size = 0;
  std::int64_t gain = 0;
  std::int64_t priced = 0;
  std::int64_t cost = 0;
  int cut = -1;  // the last of its cuts
  bool beaten = false;
};

struct Taken {
  int entry;
  int before;
};

bool is_within(const std::vector<std::int64_t>& copies, const std::vector<std::int64_t>& most) {
  for (std::size_t i = 0; i < most.size(); ++i)
    if (copies[i] > most[i]) return false;
  return true;
}

class Search {
 public:
  Search(const std::vector<LimitedEntry>& entries, Length capacity, const CopyLimits& limits,
         std::int64_t to_beat, const SeriesBudget& budget)
      : given_(entries), capacity_(capacity.units()), limits_(limits), budget_(budget),
        counting_(limits.most), given_back_(limits.given_back()), rest_(lays_of(), capacity) {
    best_.gain = to_beat;
  }

  LimitedSeries run() {
    try_greedily();
    if (counting_.fits()) search();
    LimitedSeries found = best_;
    found.complete = complete_;
    found.steps = steps_;
    if (best_.picks.empty()) found.gain = 0;
    return found;
  }

 private:
  std::vector<RestBound::Lay> lays_of() const {
    std::vector<RestBound::Lay> lays;
    for (const LimitedEntry& e : given_)
      if (is_within(e.copies, limits_.most)) lays.push_back({e.size, e.gain - limits_.price_of(e.copies)});
    return lays;
  }

  bool is_cancelled() const { return is_set(budget_.cancelled); }

  // Takes as many of each entry as cloth and limits allow: in the order of gain
  // a length of roll, and again with each entry put first.
  void try_greedily() {
    std::vector<int> order;
    for (int i = 0; i < std::ssize(given_); ++i)
      if (is_within(given_[i].copies, limits_.most) && given_[i].size.units() <= capacity_ && given_[i].gain > 0) order.push_back(i);
    std::stable_sort(order.begin(), order.end(), [&](int a, int b) {
      return Wide(given_[a].gain) * given_[b].size.units() > Wide(given_[b].gain) * given_[a].size.units();
    });
    const std::size_t firsts = std::min<std::size_t>(order.size(), 64);
    for (std::size_t first = 0; first < firsts; ++first) {
      std::vector<int> tried = order;
      if (tried.size() > 400) tried.resize(400);
      std::rotate(tried.begin(), tried.begin() + static_cast<std::ptrdiff_t>(first), tried.begin() + static_cast<std::ptrdiff_t>(first) + 1);
      fill_greedily(tried);
    }
  }

  void fill_greedily(const std::vector<int>& order) {
    LimitedSeries series;
    std::vector<std::int64_t> left = limits_.most;
    std::int64_t room = capacity_;
    for (const int i : order) {
      const LimitedEntry& e = given_[i];
      while (e.size.units() <= room && is_within(e.copies, left)) {
        room -= e.size.units();
        for (std::size_t p = 0; p < left.size(); ++p) left[p] -= e.copies[p];
        series.gain += e.gain;
        series.cost += e.cost;
        series.picks.push_back(i);
      }
    }
    if (beats(series.gain, series.cost)) best_ = series;
  }

  bool beats(std::int64_t gain, std::int64_t cost) const {
    return gain > best_.gain || (gain == best_.gain && !best_.picks.empty() && cost < best_.cost);
  }

  void search() {
    list_entries();
    states_.push_back({});
    places_[Copies{}] = {0};
    std::int64_t pruned_at = best_.gain;
    for (std::size_t e = 0; e < entries_.size(); ++e) {
      if (!is_worth_it(entries_[e])) continue;
      if (best_.gain > pruned_at || e % 64 == 63) prune(e), pruned_at = best_.gain;
      if (is_cancelled() || !add_everywhere(entries_[e])) return;
    }
    complete_ = true;
  }

  void list_entries() {
    for (int i = 0; i < std::ssize(given_); ++i) {
      const LimitedEntry& e = given_[i];
      if (e.size.units() > capacity_ || e.gain <= 0 || !is_within(e.copies, limits_.most)) continue;
      Entry entry{e.size.units(), e.gain, e.gain - limits_.price_of(e.copies), e.cost, 0, {}, i};
      if (entry.priced > 0)
        entry.density = static_cast<std::int64_t>((Wide(entry.priced) << kDensityBits) / entry.size) + 1;
      for (std::size_t p = 0; p < e.copies.size(); ++p)
        if (e.copies[p] > 0)
          entry.copies = entry.copies + counting_.one(static_cast<int>(p), static_cast<int>(e.copies[p]));
      entries_.push_back(entry);
    }
    std::stable_sort(entries_.begin(), entries_.end(), [](const Entry& a, const Entry& b) {
      return a.density != b.density ? a.density > b.density : a.priced > b.priced;
    });
  }

  bool is_worth_it(const Entry& e) const {
    return e.priced + rest_.at(Length::units(capacity_ - e.size)) + given_back_ >= best_.gain + limits_.step;
  }

  // What a state can still come to with entries no denser than this.
  bool is_hopeful(std::int64_t priced, std::int64_t size, const Entry& e) const {
    const std::int64_t room = capacity_ - size, needed = best_.gain + limits_.step - given_back_ - priced;
    return rest_.at(Length::units(room)) >= needed && ((Wide(room) * e.density) >> kDensityBits) + 1 >= needed;
  }

  // Forgets what is beaten or can come to no more than the best.
  void prune(std::size_t next) {
    std::erase_if(states_, [&](const PartialSeries& s) { return s.beaten || !is_hopeful(s.priced, s.size, entries_[next]); });
    places_.clear();
    for (int i = 0; i < std::ssize(states_); ++i) places_[states_[ix(i)].copies].push_back(i);
  }

  bool add_everywhere(const Entry& e) {
    for (std::size_t i = 0; i < states_.size(); ++i) {
      if (++steps_ > budget_.steps || std::ssize(states_) > budget_.states) return false;
      if (steps_ % 4096 == 0 && is_cancelled()) return false;
      const PartialSeries& s = states_[i];
      if (s.beaten || s.size + e.size > capacity_ || !counting_.within_limits(s.copies, e.copies)) continue;
      if (is_hopeful(s.priced + e.priced, s.size + e.size, e) || beats(s.gain + e.gain, s.cost + e.cost)) add(s, e);
    }
    return true;
  }

  void add(const PartialSeries& from, const Entry& e) {
    PartialSeries s{from.copies + e.copies, from.size + e.size, from.gain + e.gain, from.priced + e.priced,
                    from.cost + e.cost, -1, false};
    std::vector<int>& same = places_[s.copies];
    for (const int i : same) {
      PartialSeries& other = states_[ix(i)];
      if (other.beaten) continue;
      if (other.size <= s.size && (other.gain > s.gain || (other.gain == s.gain && other.cost <= s.cost))) return;
      if (s.size <= other.size && (s.gain > other.gain || (s.gain == other.gain && s.cost <= other.cost)))
        other.beaten = true;
    }
    cuts_.push_back({e.index, from.cut});
    s.cut = static_cast<int>(cuts_.size()) - 1;
    same.push_back(static_cast<int>(states_.size()));
    if (beats(s.gain, s.cost)) keep(s);
    states_.push_back(s);
  }

  void keep(const PartialSeries& s) {
    best_.gain = s.gain;
    best_.cost = s.cost;
    best_.picks.clear();
    for (int cut = s.cut; cut >= 0; cut = cuts_[ix(cut)].before)
      best_.picks.push_back(cuts_[ix(cut)].entry);
  }

  const std::vector<LimitedEntry>& given_;
  std::int64_t capacity_;
  const CopyLimits& limits_;
  SeriesBudget budget_;
  Counting counting_;
  std::int64_t given_back_;
  RestBound rest_;
  std::vector<Entry> entries_;
  std::vector<PartialSeries> states_;
  std::vector<Taken> cuts_;
  std::unordered_map<Copies, std::vector<int>, CopiesHash> places_;
  LimitedSeries best_;
  bool complete_ = false;
  std::int64_t steps_ = 0;
};

}  // namespace

LimitedSeries best_limited_series(const std::vector<LimitedEntry>& entries, Length capacity,
                                  const CopyLimits& limits, std::int64_t to_beat,
                                  const SeriesBudget& budget) {
  return Search(entries, capacity, limits, to_beat, budget).run();
}

}  // namespace foldyard
