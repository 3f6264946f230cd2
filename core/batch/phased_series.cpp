#include "batch/phased_series.h"

#include <algorithm>
#include <map>

#include "cutting/phase_axis.h"
#include "measure/stop.h"
#include "measure/wide.h"

namespace foldyard {

namespace {

struct Value {
  std::int64_t gain = 0;
  std::int64_t cost = 0;

  bool beats(const Value& other) const {
    return gain != other.gain ? gain > other.gain : cost < other.cost;
  }
};

// The best way of getting to a place, and what it ends with.
struct Label {
  Value value;
  int entry = -1;
  Length from;  // the place before
  Length at;    // where the entry begins
};

// From the beginning of a length to where the next of its lay begins.
Length step_of(const PhasedEntry& e, Length repeat) {
  if (!e.phase) return e.size;
  const std::int64_t repeats = (e.size.units() + repeat.units() - 1) / repeat.units();
  return repeat * repeats;
}

Length extent_of(const PhasedEntry& e, Length repeat) {
  return step_of(e, repeat) * (e.lengths - 1) + e.size;
}

class PhasedSearch {
 public:
  PhasedSearch(const std::vector<PhasedEntry>& entries, Span roll, const RollRepeat& repeat,
               std::int64_t steps, const std::atomic<bool>* cancelled)
      : entries_(entries), roll_(roll), repeat_(repeat), steps_(steps), cancelled_(cancelled) {
    for (const PhasedEntry& e : entries) extents_.push_back(extent_of(e, repeat.repeat));
    for (std::size_t i = 0; i < entries.size(); ++i) note_density(i);
  }

  PhasedSeries run() {
    for (std::size_t i = 0; i < entries_.size(); ++i) note_alone(i);
    labels_[roll_.from] = {};
    Value best_so_far;
    bool first = true;
    for (auto at = labels_.begin(); at != labels_.end() && steps_ > 0; ++at) {
      const bool passed = !first && !at->second.value.beats(best_so_far);
      if (passed || !can_reach(at->second.value, at->first)) continue;
      first = false;
      best_so_far = at->second.value;
      for (std::size_t i = 0; i < entries_.size(); ++i) extend(at->first, at->second.value, i);
      steps_ -= std::ssize(entries_);
      if (is_set(cancelled_)) steps_ = 0;
    }
    return series();
  }

 private:
  void note_density(std::size_t i) {
    if (Wide(entries_[i].gain) * best_size_ > Wide(best_gain_) * extents_[i].units()) {
      best_gain_ = entries_[i].gain;
      best_size_ = extents_[i].units();
    }
  }

  std::int64_t most_from(Length at) const {
    if (at >= roll_.to) return 0;
    return static_cast<std::int64_t>(Wide((roll_.to - at).units()) * best_gain_ / best_size_);
  }

  bool can_reach(const Value& value, Length at) const {
    return value.gain + most_from(at) >= known_;
  }

  Length begin_of(const PhasedEntry& e, Length from) const {
    return e.phase ? from + phase_at(*e.phase, from - repeat_.start, repeat_.repeat) : from;
  }

  // What an entry gives that is cut over and over.
  void note_alone(std::size_t i) {
    const PhasedEntry& e = entries_[i];
    const Length step = step_of(e, repeat_.repeat) * e.lengths;
    const Length room = roll_.to - begin_of(e, roll_.from) - extents_[i];
    if (room >= Length()) known_ = std::max(known_, e.gain * (room / step + 1));
  }

  void extend(Length from, const Value& value, std::size_t i) {
    const PhasedEntry& e = entries_[i];
    const Length at = begin_of(e, from), end = at + extents_[i];
    if (end > roll_.to) return;
    const Value there{value.gain + e.gain, value.cost + e.cost};
    if (!can_reach(there, end)) return;
    const auto [label, is_new] = labels_.try_emplace(end);
    if (is_new || there.beats(label->second.value))
      label->second = {there, static_cast<int>(i), from, at};
    known_ = std::max(known_, there.gain);
  }

  PhasedSeries series() const {
    PhasedSeries result;
    Length at = roll_.from;
    for (const auto& [place, label] : labels_)
      if (label.value.beats({result.gain, result.cost})) {
        at = place;
        result.gain = label.value.gain;
        result.cost = label.value.cost;
      }
    while (at != roll_.from) {
      const Label& label = labels_.at(at);
      result.picks.push_back({label.entry, label.at});
      at = label.from;
    }
    std::reverse(result.picks.begin(), result.picks.end());
    result.proved = steps_ > 0;
    result.bound = result.proved ? result.gain : most_from(roll_.from);
    return result;
  }

  const std::vector<PhasedEntry>& entries_;
  Span roll_;
  RollRepeat repeat_;
  std::int64_t steps_;
  const std::atomic<bool>* cancelled_;
  std::vector<Length> extents_;
  std::int64_t best_gain_ = 0;
  std::int64_t best_size_ = 1;
  std::int64_t known_ = 0;  // the gain of some series
  std::map<Length, Label> labels_;
};

}  // namespace

std::vector<Length> places_along(const PhasedEntry& entry, const RollRepeat& repeat, Length from) {
  std::vector<Length> places;
  Length at = entry.phase ? from + phase_at(*entry.phase, from - repeat.start, repeat.repeat) : from;
  for (std::int64_t i = 0; i < entry.lengths; ++i, at += step_of(entry, repeat.repeat))
    places.push_back(at);
  return places;
}

PhasedSeries best_phased_series(const std::vector<PhasedEntry>& entries, Span roll,
                                const RollRepeat& repeat, std::int64_t steps,
                                const std::atomic<bool>* cancelled) {
  return PhasedSearch(entries, roll, repeat, steps, cancelled).run();
}

}  // namespace foldyard
