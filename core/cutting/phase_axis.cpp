#include "cutting/phase_axis.h"

#include <algorithm>
#include <numeric>

#include "measure/index.h"
#include "measure/sort_unique.h"

namespace foldyard {

namespace {

// The next place at or after `from` that has `phase`, where 0 has `first`.
Length next_in_phase(Length from, Length first, Length phase, Length repeat) {
  const Length ahead = phase_at(phase, first + from, repeat);
  return from + ahead;
}

std::int64_t common_unit(std::int64_t unit, const std::vector<PhasedSize>& sizes) {
  for (const PhasedSize& s : sizes) unit = std::gcd(unit, s.size.units());
  return unit;
}

// Single panels first, then the others evenly.
std::vector<Length> thinned(const std::vector<Length>& places, std::vector<Length> kept, int most) {
  const std::int64_t room = std::max<std::int64_t>(1, most - std::ssize(kept));
  const std::int64_t step = (std::ssize(places) + room - 1) / room;
  for (std::int64_t i = std::ssize(places) - 1; i >= 0; i -= step)
    kept.push_back(places[ix(i)]);
  sort_unique(kept);
  return kept;
}

// Where panels end that lie one after another from a place of phase `first`.
class PhaseEnds {
 public:
  PhaseEnds(Length repeat, std::optional<Length> first, const std::vector<PhasedSize>& sizes)
      : repeat_(repeat), first_(first) {
    for (const PhasedSize& s : sizes)
      if (!s.phase || first) sizes_.push_back(s);
    unit_ = common_unit(0, sizes_);
    if (first)
      for (const PhasedSize& s : sizes_)
        if (s.phase) unit_ = std::gcd(std::gcd(unit_, repeat.units()), (*s.phase - *first).units());
  }

  std::vector<Length> up_to(Length limit) const {
    std::vector<Length> ends;
    if (unit_ == 0 || limit <= Length()) return ends;
    std::vector<char> reached(static_cast<std::size_t>(limit.units() / unit_) + 1, 0);
    reached[0] = 1;
    for (std::size_t i = 0; i < reached.size(); ++i) {
      if (!reached[i]) continue;
      const Length from = Length::units(static_cast<std::int64_t>(i) * unit_);
      if (i > 0) ends.push_back(from);
      for (const PhasedSize& s : sizes_) {
        const Length end = end_of(s, from);
        if (end <= limit) reached[ix(end.units() / unit_)] = 1;
      }
    }
    return ends;
  }

  // Of each panel alone.
  std::vector<Length> single(Length limit) const {
    std::vector<Length> ends;
    for (const PhasedSize& s : sizes_)
      for (const Length end : {end_of(s, Length()), s.size})
        if (end <= limit) ends.push_back(end);
    sort_unique(ends);
    return ends;
  }

 private:
  Length end_of(const PhasedSize& s, Length from) const {
    return (s.phase ? next_in_phase(from, *first_, *s.phase, repeat_) : from) + s.size;
  }

  Length repeat_;
  std::optional<Length> first_;
  std::vector<PhasedSize> sizes_;
  std::int64_t unit_ = 0;
};

Grid places_of(const PhaseEnds& ends, Length limit, int most, bool& is_thinned) {
  std::vector<Length> places = ends.up_to(limit);
  if (std::ssize(places) <= most) return Grid(std::move(places));
  is_thinned = true;
  std::vector<Length> single = ends.single(limit);
  std::erase_if(single, [&](Length l) { return !std::binary_search(places.begin(), places.end(), l); });
  return Grid(thinned(places, std::move(single), most));
}

}  // namespace

std::optional<Length> matched_phase(Match match, Length size, Length repeat) {
  if (match == Match::none || repeat <= Length()) return std::nullopt;
  if (match == Match::start) return Length();
  const std::int64_t twice = (repeat - size).units();  // of where it begins
  const std::int64_t begins = twice >= 0 ? twice / 2 : -((1 - twice) / 2);
  return phase_at(Length::units(begins), Length(), repeat);
}

Length phase_at(Length place, Length start, Length repeat) {
  const std::int64_t r = repeat.units();
  return Length::units((((place - start).units() % r) + r) % r);
}

PhaseAxis::PhaseAxis(Length repeat, std::optional<Length> first,
                     const std::vector<PhasedSize>& sizes, Length limit, int most)
    : repeat_(repeat) {
  for (const PhasedSize& s : sizes)
    if (s.phase && s.size <= limit) phases_.push_back(*s.phase);
  if (first && !phases_.empty()) phases_.push_back(*first);
  sort_unique(phases_);
  std::vector<Grid> places;
  for (const Length phase : phases_)
    places.push_back(places_of(PhaseEnds(repeat, phase, sizes), limit, most, thinned_));
  places.push_back(places_of(PhaseEnds(repeat, std::nullopt, sizes), limit, most, thinned_));
  add_states(places);
  part_states(places);
}

PhaseAxis::PhaseAxis(const PhaseAxis& plain, const std::vector<Length>& firsts,
                     const std::vector<Length>& sizes, Length limit, int most)
    : beyond_(&plain) {
  std::vector<Length> places = places_after(firsts, sizes, limit).places();
  thinned_ = plain.thinned_ || std::ssize(places) > most;
  std::vector<Length> first = firsts;
  std::erase_if(first, [&](Length l) { return l > limit; });
  if (std::ssize(places) > most) places = thinned(places, first, most);
  const std::vector<Grid> grids{Grid(std::move(places))};
  add_states(grids);
  part_states(grids);
}

void PhaseAxis::add_states(const std::vector<Grid>& places) {
  for (int f = 0; f < std::ssize(places); ++f)
    for (const Length size : places[ix(f)].places())
      states_.push_back({size, f, -1});
  std::sort(states_.begin(), states_.end(), [](const State& a, const State& b) {
    return a.size != b.size ? a.size < b.size : a.family < b.family;
  });
  of_family_.resize(places.size());
  for (int i = 0; i < size(); ++i) {
    std::vector<int>& family = of_family_[ix(states_[ix(i)].family)];
    if (!family.empty()) states_[ix(i)].below = family.back();
    family.push_back(i);
  }
}

int PhaseAxis::family_of(Length phase) const {
  const auto found = std::lower_bound(phases_.begin(), phases_.end(), phase);
  return found != phases_.end() && *found == phase ? static_cast<int>(found - phases_.begin())
                                                   : lost();
}

int PhaseAxis::floor(int f, Length length) const {
  const std::vector<int>& states = family(f);
  const auto above = std::upper_bound(states.begin(), states.end(), length,
                                      [&](Length l, int s) { return l < (*this)[s].size; });
  return above == states.begin() ? -1 : *std::prev(above);
}

PhaseAxis::Part PhaseAxis::part_at(const State& state, Length at) const {
  const PhaseAxis& further = beyond_ ? *beyond_ : *this;
  const bool in_phase = !beyond_ && state.family < lost();
  const int family =
      in_phase ? family_of(phase_at(phases_[ix(state.family)] + at, {}, repeat_)) : further.lost();
  Part part{at, floor(state.family, at), further.floor(family, state.size - at), false, false};
  part.low_exact = part.low >= 0 && (*this)[part.low].size == at;
  part.high_exact = part.high >= 0 && further[part.high].size == state.size - at;
  return part;
}

// At each place of its family, and where a kept phase begins.
void PhaseAxis::part_states(const std::vector<Grid>& places) {
  std::vector<std::vector<Length>> cuts;
  for (int f = 0; f < std::ssize(places); ++f) {
    cuts.push_back(places[ix(f)].places());
    if (beyond_ || f == lost() || cuts.back().empty()) continue;
    const Length longest = cuts.back().back(), first = phases_[ix(f)];
    for (const Length phase : phases_)
      for (Length at = phase_at(phase, first, repeat_); at < longest; at += repeat_)
        if (at > Length()) cuts.back().push_back(at);
    sort_unique(cuts.back());
  }
  for (const State& state : states_) {
    parts_.emplace_back();
    for (const Length at : cuts[ix(state.family)]) {
      if (at >= state.size) break;
      const Part part = part_at(state, at);
      if (part.high >= 0) parts_.back().push_back(part);
    }
  }
}

}  // namespace foldyard
