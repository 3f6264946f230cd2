#include "batch/flaw_places.h"

#include <algorithm>
#include <tuple>

namespace foldyard {

FlawPlaces::FlawPlaces(const std::vector<FlawedEntry>& entries, const FlawedCloth& cloth)
    : entries_(entries), cloth_(cloth) {
  Length furthest = cloth.usable.from;
  for (const Rect& flaw : cloth.flaws)
    furthest_.push_back(furthest = std::max(furthest, flaw.along.to));
  for (int e = 0; e < static_cast<int>(entries.size()); ++e)
    for (int l = 0; l < static_cast<int>(entries[e].layouts.size()); ++l)
      for (const FlawedPanel& panel : entries[e].layouts[l]) add_starts(e, l, panel, entries[e].size);
  const auto key = [](const Start& s) { return std::tuple(s.from, s.entry, s.layout); };
  std::sort(starts_.begin(), starts_.end(),
            [&](const Start& a, const Start& b) { return key(a) < key(b); });
  starts_.erase(std::unique(starts_.begin(), starts_.end(),
                            [&](const Start& a, const Start& b) { return key(a) == key(b); }),
                starts_.end());
}

void FlawPlaces::add_starts(int entry, int layout, const FlawedPanel& panel, Length size) {
  for (const Rect& flaw : cloth_.flaws) {
    if (!flaw.across.overlaps(panel.flat.across)) continue;
    const Length from = flaw.along.to - panel.flat.along.from - cloth_.lead;
    if (cloth_.usable.from < from && from + size <= cloth_.usable.to)
      starts_.push_back({from, entry, layout});
  }
}

FlawPlaces::Range FlawPlaces::under(Span on_roll) const {
  const auto first = std::upper_bound(furthest_.begin(), furthest_.end(), on_roll.from);
  const auto last = std::lower_bound(
      cloth_.flaws.begin(), cloth_.flaws.end(), on_roll.to,
      [](const Rect& flaw, Length place) { return flaw.along.from < place; });
  const Range range{static_cast<int>(first - furthest_.begin()),
                    static_cast<int>(last - cloth_.flaws.begin())};
  return range.first < range.last ? range : Range{};
}

std::int64_t FlawPlaces::loss(Range under, const std::vector<FlawedPanel>& layout, Length from) const {
  const Length start = from + cloth_.lead;
  std::int64_t loss = 0;
  for (const FlawedPanel& panel : layout) {
    const Rect on_roll{panel.flat.across,
                       {start + panel.flat.along.from, start + panel.flat.along.to}};
    for (int f = under.first; f < under.last; ++f)
      if (on_roll.overlaps(cloth_.flaws[f])) {
        loss += panel.worth;
        break;
      }
  }
  return loss;
}

}  // namespace foldyard
