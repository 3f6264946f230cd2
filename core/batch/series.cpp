#include "batch/series.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <optional>

#include "measure/stop.h"
#include "measure/wide.h"

namespace foldyard {

namespace {

struct Candidate {
  std::int64_t size;
  std::int64_t gain;
  std::int64_t cost;
  int entry;
  std::int64_t loss = 0;
};

struct State {
  std::int64_t gain = -1;
  std::int64_t cost = 0;
  std::int64_t from = -1;
  int candidate = -1;
};

// With fewer steps for each entry no search is begun.
constexpr std::int64_t kStepsAnEntry = 8;

bool is_better(std::int64_t gain, std::int64_t cost, const State& than) {
  return gain != than.gain ? gain > than.gain : cost < than.cost;
}

// The densest entry that fits into what is left, as often as it fits; −1 at the end.
int densest_of(const std::vector<SeriesEntry>& entries, Length room) {
  int best = -1;
  for (int i = 0; i < static_cast<int>(entries.size()); ++i) {
    const SeriesEntry& e = entries[i];
    if (e.size > room || e.gain <= 0) continue;
    if (best < 0 || Wide(e.gain) * entries[best].size.units() > Wide(entries[best].gain) * e.size.units()) best = i;
  }
  return best;
}

// What a search that is stopped can give at once. The densest of all entries
// bounds every series.
Series by_density(const std::vector<SeriesEntry>& entries, Length capacity) {
  Series series;
  Length room = capacity;
  for (int i; (i = densest_of(entries, room)) >= 0;) {
    const SeriesEntry& e = entries[i];
    const std::int64_t times = room.units() / e.size.units();
    if (series.picks.empty())
      series.bound = static_cast<std::int64_t>(Wide(capacity.units()) * e.gain / e.size.units());
    series.picks.insert(series.picks.end(), static_cast<std::size_t>(times), i);
    series.gain += e.gain * times;
    series.cost += e.cost * times;
    room = room - e.size * times;
  }
  series.proved = series.picks.empty();
  return series;
}

// Entries that no entry of at most their size beats, smallest first.
std::vector<Candidate> undominated(const std::vector<SeriesEntry>& entries, Length capacity) {
  std::vector<Candidate> all;
  for (int i = 0; i < static_cast<int>(entries.size()); ++i)
    if (entries[i].size <= capacity)
      all.push_back({entries[i].size.units(), entries[i].gain, entries[i].cost, i, 0});
  std::stable_sort(all.begin(), all.end(), [](const Candidate& a, const Candidate& b) {
    return a.size != b.size ? a.size < b.size : a.gain != b.gain ? a.gain > b.gain : a.cost < b.cost;
  });
  std::vector<Candidate> kept;
  State best;
  for (const Candidate& c : all)
    if (is_better(c.gain, c.cost, best)) {
      best.gain = c.gain;
      best.cost = c.cost;
      kept.push_back(c);
    }
  return kept;
}

// The places of the roll that series reach: a slot for each where they are
// few, else only those reached.
class Places {
 public:
  explicit Places(std::int64_t last) {
    if (last < kMostSlots) slots_.resize(last + 1);
  }
  bool are_few() const { return !slots_.empty(); }
  State& at(std::int64_t place) { return slots_.empty() ? sparse_[place] : slots_[place]; }
  void clear() {
    std::fill(slots_.begin(), slots_.end(), State{});
    sparse_.clear();
  }
  // Visits reached places in ascending order, also those reached on the way;
  // stops when visit says so.
  template <class Visit>
  bool visit_all(Visit visit) {
    for (std::size_t i = 0; i < slots_.size(); ++i)
      if (slots_[i].gain >= 0 && !visit(static_cast<std::int64_t>(i), slots_[i])) return false;
    for (auto it = sparse_.begin(); it != sparse_.end(); ++it)
      if (!visit(it->first, it->second)) return false;
    return true;
  }

 private:
  static constexpr std::int64_t kMostSlots = 1 << 18;
  std::vector<State> slots_;
  std::map<std::int64_t, State> sparse_;
};

std::int64_t shortest(const std::vector<Candidate>& candidates) {
  std::int64_t size = candidates.front().size;
  for (const Candidate& c : candidates) size = std::min(size, c.size);
  return size;
}

// The same knapsack in a coarse unit. With sizes rounded down it bounds every
// rest of the roll; with sizes rounded up its series can be cut. Cancelled, it
// holds only the shortest rests, and is of no use.
class CoarseSeries {
 public:
  CoarseSeries(const std::vector<Candidate>& candidates, std::int64_t capacity, bool round_up, Stop cancelled)
      : unit_(round_up ? capacity / kSlots + 1 : slot(candidates, capacity)), states_(capacity / unit_ + 1) {
    states_[0].gain = 0;
    for (std::int64_t i = 1; i < std::ssize(states_); ++i) {
      if (is_set(cancelled)) return;
      states_[i] = states_[i - 1];
      states_[i].candidate = -1;
      states_[i].from = i - 1;
      for (int c = 0; c < static_cast<int>(candidates.size()); ++c) try_candidate(candidates, i, c, round_up);
    }
  }

  std::int64_t gain_of(std::int64_t rest) const { return states_[rest / unit_].gain; }
  State best() const { return states_.back(); }
  const State& at(std::int64_t slot) const { return states_[slot]; }

 private:
  static constexpr std::int64_t kSlots = 8192;

  // No longer than the shortest candidate: rounded down it would take no room.
  static std::int64_t slot(const std::vector<Candidate>& candidates, std::int64_t capacity) {
    return std::min(capacity / kSlots + 1, shortest(candidates));
  }

  void try_candidate(const std::vector<Candidate>& candidates, std::int64_t i, int index, bool round_up) {
    const Candidate& c = candidates[index];
    const std::int64_t size = (c.size + (round_up ? unit_ - 1 : 0)) / unit_;
    if (size > i) return;
    const State& from = states_[i - size];
    if (is_better(from.gain + c.gain, from.cost + c.cost, states_[i]))
      states_[i] = {from.gain + c.gain, from.cost + c.cost, i - size, index};
  }

  std::int64_t unit_;
  std::vector<State> states_;
};

class SeriesSearch {
 public:
  SeriesSearch(std::vector<Candidate> candidates, std::int64_t capacity, std::int64_t steps, Stop cancelled)
      : cancelled_(cancelled), candidates_(std::move(candidates)), unit_(shared_unit()), capacity_(capacity / unit_),
        places_(capacity_), steps_left_(steps) {
    for (Candidate& c : candidates_) c.size /= unit_;
    densest_ = candidates_.front();
    for (const Candidate& c : candidates_)
      if (Wide(c.gain) * densest_.size > Wide(densest_.gain) * c.size) densest_ = c;
    for (Candidate& c : candidates_) c.loss = loss(c);
    std::stable_sort(candidates_.begin(), candidates_.end(),
                     [](const Candidate& a, const Candidate& b) { return a.loss < b.loss; });
    if (places_.are_few() || capacity_ / shortest(candidates_) > kMostShortest) return;
    tails_.emplace(candidates_, capacity_, false, cancelled_);
    if (is_set(cancelled_)) tails_.reset();
    steps_left_ = std::min(steps_left_, kMostSparseSteps);
  }

  Series run() {
    const std::int64_t most = bound(capacity_);
    const std::int64_t step = std::max<std::int64_t>(1, densest_.gain / 128);
    for (std::int64_t slack = 0;; slack = slack * 4 + step) {
      target_ = std::max<std::int64_t>(0, most - slack);
      const bool finished = pass();
      if (finished && best_.gain >= target_) return answer(best_.gain, true);
      if (is_set(cancelled_)) return answer(most, false);
      if (!finished) return coarse_answer(most);
    }
  }

 private:
  std::int64_t shared_unit() const {
    std::int64_t unit = 0;
    for (const Candidate& c : candidates_) unit = std::gcd(unit, c.size);
    return unit;
  }
  // What a candidate falls short of the best density, rounded up.
  std::int64_t loss(const Candidate& c) const {
    return static_cast<std::int64_t>((Wide(c.size) * densest_.gain - Wide(c.gain) * densest_.size +
                                      densest_.size - 1) / densest_.size);
  }
  std::int64_t density_bound(std::int64_t rest) const {
    return static_cast<std::int64_t>(Wide(rest) * densest_.gain / densest_.size);
  }
  std::int64_t bound(std::int64_t rest) const {
    return tails_ ? std::min(tails_->gain_of(rest), density_bound(rest)) : density_bound(rest);
  }

  bool pass() {
    places_.clear();
    places_.at(0) = State{0, 0, -1, -1};
    best_ = State{};
    return places_.visit_all([this](std::int64_t place, const State& state) {
      if (is_better(state.gain, state.cost, best_)) best_ = state;
      return extend(place, State(state));
    });
  }

  // Only candidates whose loss the target still allows are worth taking.
  bool extend(std::int64_t place, State state) {
    if (is_set(cancelled_)) return false;
    const std::int64_t spare = state.gain + density_bound(capacity_ - place) - target_;
    if (spare < 0) return true;
    for (int i = 0; i < static_cast<int>(candidates_.size()); ++i) {
      const Candidate& c = candidates_[i];
      if (c.loss > spare + 1) break;
      const std::int64_t next = place + c.size;
      if (next > capacity_) continue;
      if (--steps_left_ < 0) return false;
      if (tails_ && state.gain + c.gain + bound(capacity_ - next) < target_) continue;
      State& there = places_.at(next);
      if (is_better(state.gain + c.gain, state.cost + c.cost, there))
        there = {state.gain + c.gain, state.cost + c.cost, place, i};
    }
    return true;
  }

  Series answer(std::int64_t most, bool proved) {
    Series series{{}, best_.gain, best_.cost, most, proved};
    for (State s = best_; s.candidate >= 0; s = places_.at(s.from))
      series.picks.push_back(candidates_[s.candidate].entry);
    std::reverse(series.picks.begin(), series.picks.end());
    return series;
  }

  // Out of steps: a series with sizes rounded up a little, and the last bound.
  Series coarse_answer(std::int64_t most) {
    const CoarseSeries coarse(candidates_, capacity_, true, cancelled_);
    if (is_set(cancelled_)) return answer(most, false);
    State s = coarse.best();
    Series series{{}, s.gain, s.cost, most, s.gain == most};
    for (; s.from >= 0; s = coarse.at(s.from))
      if (s.candidate >= 0) series.picks.push_back(candidates_[s.candidate].entry);
    return series;
  }

  static constexpr std::int64_t kMostSparseSteps = 400'000;
  static constexpr std::int64_t kMostShortest = 1 << 20;  // a job has fewer than 2^18
  Stop cancelled_;
  std::vector<Candidate> candidates_;
  std::int64_t unit_;
  std::int64_t capacity_;
  Places places_;
  std::optional<CoarseSeries> tails_;  // where the places are many
  std::int64_t steps_left_;
  std::int64_t target_ = 0;
  Candidate densest_{};
  State best_;
};

}  // namespace

Series best_series(const std::vector<SeriesEntry>& entries, Length capacity, std::int64_t steps,
                   const std::atomic<bool>* cancelled) {
  const bool has_few = steps < kStepsAnEntry * static_cast<std::int64_t>(entries.size());
  if (has_few || is_set(cancelled)) return by_density(entries, capacity);
  std::vector<Candidate> candidates = undominated(entries, capacity);
  if (candidates.empty()) {
    Series none;
    none.proved = true;
    return none;
  }
  const Series found = SeriesSearch(std::move(candidates), capacity.units(), steps, cancelled).run();
  if (found.proved || !is_set(cancelled)) return found;
  Series dense = by_density(entries, capacity);
  if (dense.gain <= found.gain) return found;
  dense.bound = std::min(dense.bound, found.bound);
  return dense;
}

}  // namespace foldyard
