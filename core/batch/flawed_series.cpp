#include "batch/flawed_series.h"

#include <algorithm>

#include "batch/flawed_front.h"
#include "batch/flaw_places.h"
#include "measure/stop.h"
#include "measure/wide.h"

namespace foldyard {

namespace {

constexpr std::int64_t kNoStepLimit = INT64_MAX / 2;

// One pass along the roll. least_rise: how much more a place must gain than any
// before it to be kept; 1 keeps all that matter. target: what is known to be
// reached already.
class Pass {
 public:
  Pass(const std::vector<FlawedEntry>& entries, const FlawPlaces& places,
       const AroundFlaws* around, std::int64_t least_rise, std::int64_t target,
       const FlawedBudget& budget)
      : entries_(entries), places_(places), around_(around), front_(least_rise), target_(target),
        steps_left_(least_rise > 1 ? kNoStepLimit : budget.steps),
        around_left_(places.cloth().flaws.size(),
                     budget.around / std::max<std::int64_t>(1, std::ssize(places.cloth().flaws))),
        cancelled_(budget.cancelled) {
    for (const FlawedEntry& e : entries_)
      if (!densest_ || Wide(e.gain) * densest_->size.units() > Wide(densest_->gain) * e.size.units())
        densest_ = &e;
  }

  FlawedSeries run() {
    front_.start_at(cloth().usable.from);
    const std::vector<FlawPlaces::Start>& starts = places_.starts();
    auto start = starts.begin();
    for (Length at = cloth().usable.from; at != FlawedFront::kNoPlace && goes_on();) {
      expand(at);
      Length next = front_.next_after(at);
      for (; start != starts.end() && start->from < next && goes_on(); ++start) {
        begin_behind(*start);
        next = front_.next_after(at);
      }
      at = next;
    }
    return answer();
  }

 private:
  const FlawedCloth& cloth() const { return places_.cloth(); }

  bool goes_on() {
    stopped_ = stopped_ || is_set(cancelled_);
    return !stopped_ && steps_left_ > 0;
  }

  // Whether so much gain up to a place, and the best density of any entry behind
  // it, can still reach the target.
  bool can_reach_target(std::int64_t gain, Length at) const {
    const Length rest = cloth().usable.to - at;
    return gain + static_cast<std::int64_t>(Wide(rest.units()) * densest_->gain /
                                                  densest_->size.units()) >= target_;
  }

  void expand(Length at) {
    const Reached state = front_.at(at);
    if (!can_reach_target(state.gain, at)) return;
    for (int e = 0; e < static_cast<int>(entries_.size()) && goes_on(); ++e)
      for (int l = 0; l < static_cast<int>(entries_[e].layouts.size()); ++l) {
        const bool touched = try_entry(state, at, at, e, l);
        if (!touched) break;  // every other layout gains the same
      }
    if (around_) try_around(state, at);
  }

  void begin_behind(const FlawPlaces::Start& start) {
    const Length at = front_.last_up_to(start.from);
    if (at == start.from) return;  // begins there in any case
    const Reached& state = front_.at(at);
    if (can_reach_target(state.gain, start.from)) try_entry(state, at, start.from, start.entry, start.layout);
  }

  // Whether flaws lie under it, so that another layout may lose less.
  bool try_entry(const Reached& state, Length at, Length from, int e, int l) {
    --steps_left_;
    const FlawedEntry& entry = entries_[e];
    const Span span{from, from + entry.size};
    if (span.to > cloth().usable.to) return false;
    if (!front_.would_rise(span.to, state.gain + entry.gain, state.cost + entry.cost)) return false;
    if (!can_reach_target(state.gain + entry.gain, span.to)) return false;
    const FlawPlaces::Range under = places_.under(span);
    if (under.first == under.last) {
      front_.add({state.gain + entry.gain, state.cost + entry.cost, at, {e, l, span}});
      return false;
    }
    steps_left_ -= static_cast<std::int64_t>(entry.layouts[l].size());
    const std::int64_t gain = entry.gain - places_.loss(under, entry.layouts[l], from);
    if (gain > 0) front_.add({state.gain + gain, state.cost + entry.cost, at, {e, l, span}});
    return true;
  }

  void try_around(const Reached& state, Length at) {
    for (const Length size : around_->sizes(at)) {
      const Span span{at, at + size};
      if (span.to > cloth().usable.to || !goes_on()) break;
      const FlawPlaces::Range under = places_.under(span);
      if (under.first == under.last || around_left_[under.first] <= 0) continue;
      const std::int64_t most = state.gain + around_->most_gain(size);
      if (!front_.would_rise(span.to, most, 0) || !can_reach_target(most, span.to)) continue;
      --around_left_[under.first];
      const AroundFlaws::Gain found = around_->best(at, size);
      if (found.gain > 0)
        front_.add({state.gain + found.gain, state.cost + found.cost, at, {-1, 0, span}});
    }
  }

  FlawedSeries answer() {
    const Reached* last = &front_.last();
    FlawedSeries series{{}, last->gain, last->cost, steps_left_ > 0 && !stopped_};
    for (; !last->pick.on_roll.is_empty(); last = &front_.at(last->before))
      series.picks.push_back(last->pick);
    std::reverse(series.picks.begin(), series.picks.end());
    return series;
  }

  const std::vector<FlawedEntry>& entries_;
  const FlawPlaces& places_;
  const AroundFlaws* around_;
  FlawedFront front_;
  std::int64_t target_;
  std::int64_t steps_left_;
  std::vector<std::int64_t> around_left_;  // by flaw
  const std::atomic<bool>* cancelled_;
  bool stopped_ = false;
  const FlawedEntry* densest_ = nullptr;
};

// A pass over few places: so much must a place rise over those before it.
std::int64_t coarse_rise(const std::vector<FlawedEntry>& entries, const FlawedCloth& cloth) {
  constexpr std::int64_t kPlaces = 512;
  Wide most = 0;
  for (const FlawedEntry& e : entries)
    most = std::max(most, Wide(e.gain) * cloth.usable.size().units() / e.size.units());
  return static_cast<std::int64_t>(most / kPlaces) + 1;
}

bool is_better(const FlawedSeries& a, const FlawedSeries& b) {
  return a.gain != b.gain ? a.gain > b.gain : a.cost < b.cost;
}

}  // namespace

FlawedSeries best_flawed_series(const std::vector<FlawedEntry>& entries, const FlawedCloth& cloth,
                                const AroundFlaws* around, const FlawedBudget& budget) {
  if (entries.empty() || cloth.usable.is_empty()) return {{}, 0, 0, true};
  const FlawPlaces places(entries, cloth);
  const FlawedSeries coarse =
      Pass(entries, places, around, coarse_rise(entries, cloth), 0, budget).run();
  const FlawedSeries fine = Pass(entries, places, around, 1, coarse.gain, budget).run();
  FlawedSeries best = is_better(coarse, fine) ? coarse : fine;
  best.complete = fine.complete;
  return best;
}

}  // namespace foldyard
