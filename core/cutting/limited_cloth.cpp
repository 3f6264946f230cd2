#include "cutting/limited_cloth.h"

#include <algorithm>
#include <numeric>

#include "measure/wide.h"

namespace foldyard::limited {

namespace {

constexpr std::int64_t kMostUnits = 16'000;
constexpr std::int64_t kMostGain = std::int64_t{1} << 26;

std::int64_t shared_unit(const LimitedProblem& p) {
  std::int64_t unit = p.joint ? p.fold_trim.units() : 0;
  for (const LimitedShape& s : p.shapes)
    unit = std::gcd(std::gcd(unit, s.across.units()), s.along.units());
  return unit;
}

// Adds, to the sizes reached, each with up to `copies` more of `sizes`.
void add_copies(std::vector<char>& reached, const std::vector<int>& sizes, std::int64_t copies) {
  constexpr std::int64_t kNever = std::int64_t{1} << 40;
  std::vector<std::int64_t> used(reached.size(), kNever);
  for (std::size_t i = 0; i < reached.size(); ++i) {
    if (reached[i]) used[i] = 0;
    if (used[i] >= copies) continue;
    for (int s : sizes)
      if (i + s < used.size()) used[i + s] = std::min(used[i + s], used[i] + 1);
  }
  for (std::size_t i = 0; i < reached.size(); ++i)
    if (used[i] <= copies) reached[i] = 1;
}

Places places_from(const std::vector<char>& reached) {
  Places places;
  places.index.assign(reached.size(), -1);
  places.floor.assign(reached.size(), -1);
  for (int i = 1; i < static_cast<int>(reached.size()); ++i) {
    if (reached[i]) {
      places.index[i] = places.count();
      places.list.push_back(i);
    }
    places.floor[i] = places.count() - 1;
  }
  return places;
}

std::vector<int> sizes_of(const Cloth& cloth, int panel, Rim rim, int UnitShape::*size) {
  std::vector<int> sizes;
  for (const UnitShape& s : cloth.shapes)
    if (s.panel == panel && s.rim == rim) sizes.push_back(s.*size);
  return sizes;
}

int fewest_uses(const Cloth& cloth, int panel) {
  int uses = 1 << 30;
  for (const UnitShape& s : cloth.shapes)
    if (s.panel == panel) uses = std::min(uses, s.uses);
  return uses;
}

std::vector<char> sums(const Cloth& cloth, std::vector<char> starts, int UnitShape::*size, bool any_rim) {
  for (int panel = 0; panel < static_cast<int>(cloth.limits.size()); ++panel) {
    std::vector<int> sizes = sizes_of(cloth, panel, kLoose, size);
    if (any_rim)
      for (int s : sizes_of(cloth, panel, kJoint, size)) sizes.push_back(s);
    if (!sizes.empty()) add_copies(starts, sizes, cloth.limits[panel] / fewest_uses(cloth, panel));
  }
  return starts;
}

}  // namespace

Cloth::Cloth(const LimitedProblem& p) : limits(p.limits) {
  unit = shared_unit(p);
  root = p.joint ? kJoint : kLoose;
  if (unit == 0) return;
  in_range = p.width.units() / unit <= kMostUnits && p.height.units() / unit <= kMostUnits;
  if (!in_range) return;
  width = static_cast<int>(p.width.units() / unit);
  height = static_cast<int>(p.height.units() / unit);
  fold_trim = static_cast<int>(p.fold_trim.units() / unit);
  for (int i = 0; i < static_cast<int>(p.shapes.size()); ++i) {
    const LimitedShape& s = p.shapes[i];
    if (s.across > p.width || s.along > p.height || s.gain <= 0 || limits[s.panel] < s.uses) continue;
    if (s.at_joint && s.across < p.fold_trim) continue;  // its cut would lie too near the fold
    shapes.push_back({static_cast<int>(s.across.units() / unit), static_cast<int>(s.along.units() / unit),
                      s.panel, s.uses, s.at_joint ? kJoint : kLoose, s.gain});
    source.push_back(i);
  }
  in_range = total_gain() < kMostGain && free_gain() < kMostGain;
  std::vector<char> start(width + 1, 0), low(height + 1, 0);
  start[0] = low[0] = 1;
  across[kLoose] = places_from(sums(*this, start, &UnitShape::across, false));
  along = places_from(sums(*this, low, &UnitShape::along, true));
  if (root == kLoose) return;
  start[0] = 0;
  if (fold_trim <= width) start[fold_trim] = 1;
  for (const UnitShape& s : shapes)
    if (s.rim == kJoint) start[s.across] = 1;
  across[kJoint] = places_from(sums(*this, start, &UnitShape::across, false));
}

// The densest shape over all cloth.
std::int64_t Cloth::free_gain() const {
  Wide most = 0;
  for (const UnitShape& s : shapes)
    most = std::max(most, Wide(s.gain) * width * height / (static_cast<std::int64_t>(s.across) * s.along));
  return static_cast<std::int64_t>(std::min<Wide>(most, std::int64_t{1} << 62));
}

bool Cloth::has_even_gains() const {
  std::vector<const UnitShape*> first(limits.size(), nullptr);
  for (const UnitShape& s : shapes) {
    const UnitShape*& f = first[s.panel];
    if (!f) f = &s;
    if (Wide(s.gain) * f->uses != Wide(f->gain) * s.uses) return false;
  }
  return true;
}

bool Cloth::may_clip(int panel) const {
  int uses = 0;
  for (const UnitShape& s : shapes) {
    if (s.panel != panel) continue;
    if (uses != 0 && s.uses != uses) return false;
    uses = s.uses;
  }
  return true;
}

namespace {

// What all copies of a panel gain at most. Where its takes are alike in copies
// and area, so many whole takes; else by the best gain of a copy, and of an area.
std::int64_t panel_gain(const Cloth& cloth, int panel) {
  const Wide area = Wide(cloth.width) * cloth.height;
  const UnitShape* first = nullptr;
  bool alike = true;
  std::int64_t gain = 0;
  Wide by_copy = 0, by_area = 0;
  for (const UnitShape& s : cloth.shapes) {
    if (s.panel != panel) continue;
    if (!first) first = &s;
    const Wide own = Wide(s.across) * s.along;
    alike = alike && s.uses == first->uses && own == Wide(first->across) * first->along;
    gain = std::max(gain, s.gain);
    by_copy = std::max(by_copy, Wide(cloth.limits[panel]) * s.gain / s.uses);
    by_area = std::max(by_area, area * s.gain / own);
  }
  if (!first) return 0;
  if (!alike) return static_cast<std::int64_t>(std::min(by_copy, by_area));
  const Wide fit = area / (Wide(first->across) * first->along);
  return static_cast<std::int64_t>(std::min<Wide>(cloth.limits[panel] / first->uses, fit) * gain);
}

}  // namespace

std::int64_t Cloth::total_gain() const {
  std::int64_t sum = 0;
  for (int panel = 0; panel < static_cast<int>(limits.size()); ++panel) sum += panel_gain(*this, panel);
  return sum;
}

}  // namespace foldyard::limited
