#include "cutting/grid.h"

#include <algorithm>
#include <numeric>

#include "measure/index.h"
#include "measure/sort_unique.h"

namespace foldyard {

namespace {

constexpr std::int64_t kMostSteps = 1 << 20;

constexpr std::uint8_t kUnreached = 255;

// One more size: any number of it on top of what is there counts as one kind.
void add_size(std::vector<std::uint8_t>& kinds, std::int64_t size) {
  std::vector<std::uint8_t> ending = kinds;  // kinds when the last one added is `size`
  std::fill(ending.begin(), ending.end(), kUnreached);
  for (std::int64_t i = size; i < std::ssize(kinds); ++i) {
    const std::uint8_t fresh = kinds[i - size] == kUnreached ? kUnreached : kinds[i - size] + 1;
    ending[i] = std::min(ending[i - size], fresh);
  }
  for (std::int64_t i = size; i < std::ssize(kinds); ++i) kinds[i] = std::min(kinds[i], ending[i]);
}

// Of places in ascending order, `most` at even distances.
std::vector<Length> evenly(const std::vector<Length>& places, std::int64_t most) {
  std::vector<Length> kept;
  for (std::int64_t i = 0; i < most; ++i)
    kept.push_back(places[ix((i + 1) * std::ssize(places) / most - 1)]);
  return kept;
}

// At most `most` places: single sizes, on which panels lie, unless they take more than half
// of the room; then those of fewest kinds.
std::vector<Length> simplest(const std::vector<std::vector<Length>>& by_kinds, const std::vector<Length>& single,
                             std::int64_t most) {
  std::vector<Length> kept;
  if (std::ssize(single) <= most / 2) kept = single;
  for (const std::vector<Length>& places : by_kinds) {
    const std::int64_t room = most - std::ssize(kept);
    const auto fit = std::ssize(places) <= room ? places : evenly(places, room);
    kept.insert(kept.end(), fit.begin(), fit.end());
  }
  sort_unique(kept);
  return kept;
}

// All sums of a start and any number of sizes up to the limit, starts included;
// counted in the largest unit that all share.
Grid sums(const std::vector<Length>& starts, std::vector<Length> sizes, Length limit, int most) {
  sort_unique(sizes);
  std::int64_t unit = 0;
  for (Length l : starts) unit = std::gcd(unit, l.units());
  for (Length l : sizes) unit = std::gcd(unit, l.units());
  if (unit == 0 || limit < Length()) return {};
  std::vector<std::uint8_t> kinds(limit.units() / unit + 1, kUnreached);
  for (Length l : starts)
    if (l <= limit) kinds[l.units() / unit] = 0;
  for (Length l : sizes) add_size(kinds, l.units() / unit);
  const auto is_place = [&](Length l) { return l <= limit && kinds[l.units() / unit] != kUnreached; };
  std::vector<Length> single;
  for (Length l : sizes)
    if (is_place(l)) single.push_back(l);
  std::vector<std::vector<Length>> by_kinds(sizes.size() + 1);
  for (std::int64_t i = 1; i < std::ssize(kinds); ++i) {
    const Length place = Length::units(i * unit);
    const bool is_kept = std::binary_search(single.begin(), single.end(), place) && std::ssize(single) <= most / 2;
    if (kinds[i] != kUnreached && !is_kept) by_kinds[kinds[i]].push_back(place);
  }
  return Grid(simplest(by_kinds, single, most));
}

}  // namespace

Grid::Grid(std::vector<Length> places) : places_(std::move(places)) {
  std::int64_t unit = 0;
  for (Length p : places_) unit = std::gcd(unit, p.units());
  if (places_.empty() || places_.back().units() / unit >= kMostSteps) return;
  unit_ = unit;
  steps_.assign(places_.back().units() / unit + 1, -1);
  for (int i = 0; i < size(); ++i) {
    const std::int64_t next = i + 1 < size() ? places_[i + 1].units() / unit : std::ssize(steps_);
    for (std::int64_t s = places_[i].units() / unit; s < next; ++s) steps_[s] = i;
  }
}

Grid Grid::with(std::vector<Length> more) const {
  more.insert(more.end(), places_.begin(), places_.end());
  sort_unique(more);
  Grid grid(std::move(more));
  for (Length p : grid.places_) {
    const int i = index_of(p);
    grid.sums_.push_back(i >= 0 && is_sum(i));
  }
  return grid;
}

int Grid::searched_floor_index(Length length) const {
  return static_cast<int>(std::upper_bound(places_.begin(), places_.end(), length) -
                          places_.begin()) - 1;
}

int Grid::index_of(Length length) const {
  const int i = floor_index(length);
  return i >= 0 && places_[i] == length ? i : -1;
}

Grid normal_places(const std::vector<Length>& sizes, Length limit, int most) {
  return sums({Length()}, sizes, limit, most);
}

Grid places_after(const std::vector<Length>& firsts, const std::vector<Length>& sizes, Length limit,
                  int most) {
  return sums(firsts, sizes, limit, most);
}

}  // namespace foldyard
