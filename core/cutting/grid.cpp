#include "cutting/grid.h"

#include <algorithm>
#include <numeric>

namespace foldyard {

namespace {

constexpr std::int64_t kMostSteps = 1 << 20;

void sort_unique(std::vector<Length>& places) {
  std::sort(places.begin(), places.end());
  places.erase(std::unique(places.begin(), places.end()), places.end());
}

// All places with any number of `size` added.
void add_multiples(std::vector<Length>& places, Length size, Length limit) {
  std::vector<Length> fresh = places;
  while (!fresh.empty()) {
    std::vector<Length> next;
    for (Length p : fresh)
      if (p + size <= limit) next.push_back(p + size);
    std::vector<Length> merged;
    std::set_union(places.begin(), places.end(), next.begin(), next.end(),
                   std::back_inserter(merged));
    fresh.clear();
    std::set_difference(next.begin(), next.end(), places.begin(), places.end(),
                        std::back_inserter(fresh));
    places = std::move(merged);
  }
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

int Grid::searched_floor_index(Length length) const {
  return static_cast<int>(std::upper_bound(places_.begin(), places_.end(), length) -
                          places_.begin()) - 1;
}

int Grid::index_of(Length length) const {
  const int i = floor_index(length);
  return i >= 0 && places_[i] == length ? i : -1;
}

Grid normal_places(const std::vector<Length>& sizes, Length limit) {
  std::vector<Length> distinct = sizes;
  sort_unique(distinct);
  std::vector<Length> places{Length()};
  for (Length size : distinct)
    if (size > Length()) add_multiples(places, size, limit);
  places.erase(places.begin());
  return Grid(std::move(places));
}

Grid places_after(const std::vector<Length>& firsts, const Grid& normal, Length limit) {
  std::vector<Length> places;
  for (Length first : firsts) {
    if (first > limit) continue;
    places.push_back(first);
    for (Length p : normal.places())
      if (first + p <= limit) places.push_back(first + p);
  }
  sort_unique(places);
  return Grid(std::move(places));
}

Grid thinned(const Grid& grid, int most, const std::vector<Length>& always) {
  if (grid.size() <= most) return grid;
  std::vector<Length> kept;
  for (int i = 0; i < most; ++i)
    kept.push_back(grid[static_cast<int>((static_cast<std::int64_t>(i) + 1) * grid.size() / most - 1)]);
  for (Length size : always)
    if (grid.index_of(size) >= 0) kept.push_back(size);
  sort_unique(kept);
  return Grid(std::move(kept));
}

}  // namespace foldyard
