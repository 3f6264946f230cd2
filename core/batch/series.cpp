#include "batch/series.h"

#include <algorithm>
#include <map>
#include <numeric>

#include "measure/wide.h"

namespace foldyard {

namespace {

struct Candidate {
  std::int64_t size;
  std::int64_t gain;
  std::int64_t cost;
  int entry;
};

struct State {
  std::int64_t gain = -1;
  std::int64_t cost = 0;
  std::int64_t from = -1;
  int candidate = -1;
};

bool is_better(std::int64_t gain, std::int64_t cost, const State& than) {
  return gain != than.gain ? gain > than.gain : cost < than.cost;
}

// Entries that no entry of at most their size beats, smallest first.
std::vector<Candidate> undominated(const std::vector<SeriesEntry>& entries, Length capacity) {
  std::vector<Candidate> all;
  for (int i = 0; i < static_cast<int>(entries.size()); ++i)
    if (entries[i].size <= capacity)
      all.push_back({entries[i].size.units(), entries[i].gain, entries[i].cost, i});
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

class SeriesSearch {
 public:
  SeriesSearch(std::vector<Candidate> candidates, std::int64_t capacity, std::int64_t steps)
      : candidates_(std::move(candidates)), capacity_(capacity), steps_left_(steps) {
    densest_ = candidates_.front();
    for (const Candidate& c : candidates_)
      if (Wide(c.gain) * densest_.size > Wide(densest_.gain) * c.size) densest_ = c;
    std::stable_sort(candidates_.begin(), candidates_.end(),
                     [this](const Candidate& a, const Candidate& b) { return loss(a) < loss(b); });
    scale();
  }

  Series run() {
    const std::int64_t most = bound(capacity_);
    std::int64_t step = std::max<std::int64_t>(1, densest_.gain / 128);
    for (std::int64_t slack = 0;; slack = slack * 4 + step) {
      target_ = std::max<std::int64_t>(0, most - slack);
      const bool finished = pass();
      if (!finished || best_.gain >= target_) return answer(finished, most);
    }
  }

 private:
  // What a candidate falls short of the best density, rounded up.
  std::int64_t loss(const Candidate& c) const {
    return static_cast<std::int64_t>((Wide(c.size) * densest_.gain - Wide(c.gain) * densest_.size +
                                      densest_.size - 1) / densest_.size);
  }
  std::int64_t bound(std::int64_t rest) const {
    return static_cast<std::int64_t>(Wide(rest) * densest_.gain / densest_.size);
  }

  // Sizes in the largest unit that all share keep the places few.
  void scale() {
    std::int64_t unit = 0;
    for (const Candidate& c : candidates_) unit = std::gcd(unit, c.size);
    for (Candidate& c : candidates_) c.size /= unit;
    densest_.size /= unit;
    capacity_ /= unit;
  }

  bool pass() {
    reached_.clear();
    reached_[0] = State{0, 0, -1, -1};
    best_ = State{-1, 0, -1, -1};
    best_place_ = 0;
    for (auto it = reached_.begin(); it != reached_.end(); ++it) {
      if (is_better(it->second.gain, it->second.cost, best_)) {
        best_ = it->second;
        best_place_ = it->first;
      }
      if (!extend(it->first, it->second)) return false;
    }
    return true;
  }

  bool extend(std::int64_t place, const State& state) {
    const std::int64_t spare = state.gain + bound(capacity_ - place) - target_;
    for (int i = 0; i < static_cast<int>(candidates_.size()); ++i) {
      const Candidate& c = candidates_[i];
      if (loss(c) > spare + 1) break;
      const std::int64_t next = place + c.size;
      if (next > capacity_) continue;
      if (--steps_left_ < 0) return false;
      const std::int64_t gain = state.gain + c.gain;
      if (gain + bound(capacity_ - next) < target_) continue;
      State& there = reached_[next];
      if (is_better(gain, state.cost + c.cost, there)) there = {gain, state.cost + c.cost, place, i};
    }
    return true;
  }

  Series answer(bool finished, std::int64_t most) {
    Series series;
    series.gain = best_.gain;
    series.cost = best_.cost;
    series.proved = finished;
    series.bound = finished ? best_.gain : most;
    for (State s = best_; s.candidate >= 0; s = reached_[s.from])
      series.picks.push_back(candidates_[s.candidate].entry);
    std::reverse(series.picks.begin(), series.picks.end());
    return series;
  }

  std::vector<Candidate> candidates_;
  std::int64_t capacity_;
  std::int64_t steps_left_;
  std::int64_t target_ = 0;
  Candidate densest_{};
  std::map<std::int64_t, State> reached_;
  State best_;
  std::int64_t best_place_ = 0;
};

}  // namespace

Series best_series(const std::vector<SeriesEntry>& entries, Length capacity, std::int64_t steps) {
  std::vector<Candidate> candidates = undominated(entries, capacity);
  if (candidates.empty()) {
    Series none;
    none.proved = true;
    return none;
  }
  return SeriesSearch(std::move(candidates), capacity.units(), steps).run();
}

}  // namespace foldyard
