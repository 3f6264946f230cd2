#include "oracle/fold_positions.h"

#include <algorithm>
#include <set>

namespace foldyard::test {

namespace {

using Lines = std::vector<int>;  // in grains

// Grains in a quantum, enough for every leg that slits at whole quanta ask for.
int grains_for(const FoldWay& way) {
  if (way.kind == FoldKind::both_edges_in) return way.plain ? 4 : 2;
  if (way.legs < 3) return 2;
  if (way.plain) return way.legs;
  return way.legs % 2 ? way.legs * (way.legs - 2) : way.legs - 1;
}

struct Leg {
  int from, to;                // on the folded cloth
  int usable_from, usable_to;
  bool covers(int a, int b) const { return usable_from <= a && b <= usable_to; }
};

Leg leg_of(int a, int b, int usable_a, int usable_b) {
  return {std::min(a, b), std::max(a, b), std::min(usable_a, usable_b), std::max(usable_a, usable_b)};
}

// The folded cloth, from 0; edges[i] joins legs i and i + 1.
struct Folded {
  std::vector<Leg> legs;
  std::vector<int> edges;
  int size = 0;

  bool is_joined_at(int rim) const { return std::count(edges.begin(), edges.end(), rim) > 0; }
  int loose(int a, int b) const {
    return static_cast<int>(
        std::count_if(legs.begin(), legs.end(), [&](const Leg& leg) { return leg.covers(a, b); }));
  }
  int pairs(int rim, int a, int b) const {
    const int far = rim == a ? b : a;
    if (a >= b || is_joined_at(far)) return 0;
    int count = 0;
    for (std::size_t i = 0; i < edges.size(); ++i) {
      if (edges[i] != rim) continue;
      if (!legs[i].covers(a, b) || !legs[i + 1].covers(a, b)) return 0;
      ++count;
    }
    return count;
  }
};

Folded fold(int width, int selvedge, Lines ends) {
  Folded f;
  ends.push_back(width);
  int place = 0, at = 0, step = 1;
  for (const int end : ends) {
    const auto lies_at = [&](int x) { return place + step * (std::clamp(x, at, end) - at); };
    f.legs.push_back(leg_of(place, lies_at(end), lies_at(selvedge), lies_at(width - selvedge)));
    place = lies_at(end);
    f.edges.push_back(place);
    at = end;
    step = -step;
  }
  f.edges.pop_back();
  int least = 0, most = 0;
  for (const Leg& leg : f.legs) {
    least = std::min(least, leg.from);
    most = std::max(most, leg.to);
  }
  for (Leg& leg : f.legs)
    leg = {leg.from - least, leg.to - least, leg.usable_from - least, leg.usable_to - least};
  for (int& edge : f.edges) edge -= least;
  f.size = most - least;
  return f;
}

// The least strip at a fold edge that can hold a panel.
int least_flap(const QuantaJob& job) {
  int least = job.width;
  const auto panel = [&](int across, bool on_fold) {
    least = std::min(least, job.trim + across);
    if (on_fold && across / 2 >= job.trim) least = std::min(least, across / 2);
  };
  for (const QuantaPanel& p : job.panels) {
    panel(p.across, p.on_fold);
    if (p.may_turn && !job.one_way) panel(p.along, p.on_fold);
  }
  return least;
}

Lines equal_legs(int first, int leg, int legs) {
  Lines lines;
  for (int i = 0; i < legs - 1; ++i) lines.push_back(first + i * leg);
  return lines;
}

// All positions of a way, its width in grains; flap: with its selvedge.
std::vector<Lines> positions(const FoldWay& way, int width, int flap) {
  std::vector<Lines> all;
  if (way.kind == FoldKind::open) return {{}};
  if (way.kind == FoldKind::both_edges_in && way.plain) return {{width / 4, width - width / 4}};
  if (way.plain) return {equal_legs(width / way.legs, width / way.legs, way.legs)};
  if (way.kind == FoldKind::off_centre) {
    for (int a = flap; 2 * a <= width; ++a) all.push_back({a});
  } else if (way.kind == FoldKind::both_edges_in) {
    for (int a = flap; a < width; ++a)
      for (int b = flap; 2 * (a + b) <= width; ++b) all.push_back({a, width - b});
  } else {
    for (int leg = 1; leg < width; ++leg)
      for (int first = flap; first <= leg; ++first) {
        const int last = width - first - leg * (way.legs - 2);
        if (flap <= last && last <= leg) all.push_back(equal_legs(first, leg, way.legs));
      }
  }
  return all;
}

bool may_slit(const Folded& f, int at, int trim) {
  const bool near_left = at > 0 && at < trim && f.is_joined_at(0);
  const bool near_right = at < f.size && f.size - at < trim && f.is_joined_at(f.size);
  return !near_left && !near_right;
}

Strips strips_between(const Folded& f, int p, int q, int grains) {
  Strips s;
  s.left_pairs = f.pairs(0, 0, p);
  s.right_pairs = f.pairs(f.size, q, f.size);
  const bool is_loose = !(p == 0 && f.is_joined_at(0)) && !(q == f.size && f.is_joined_at(f.size));
  s.plies = is_loose && p < q ? f.loose(p, q) : 0;
  if (s.left_pairs) s.left = p / grains;
  if (s.right_pairs) s.right = (f.size - q) / grains;
  if (s.plies) s.middle = (q - p) / grains / 2 * 2;
  return s;
}

bool holds(int plies, int size, int own_plies, int own_size) {
  return own_size == 0 || own_plies == 0 || (plies == own_plies && size >= own_size);
}

// Whatever is cut from a can be cut from b, through as many plies.
bool is_held(const Strips& a, const Strips& b) {
  return holds(b.left_pairs, b.left, a.left_pairs, a.left) && holds(b.plies, b.middle, a.plies, a.middle) &&
         holds(b.right_pairs, b.right, a.right_pairs, a.right);
}

bool is_within(const Strips& a, const Strips& b) {
  return a.left_pairs <= b.left_pairs && a.left <= b.left && a.plies <= b.plies &&
         a.middle <= b.middle && a.right_pairs <= b.right_pairs && a.right <= b.right;
}

std::set<Strips> found_strips(const QuantaJob& job, const FoldWay& way) {
  const int grains = grains_for(way);
  std::set<Strips> found;
  for (const Lines& lines :
       positions(way, job.width * grains, (job.selvedge + least_flap(job)) * grains)) {
    const Folded f = fold(job.width * grains, job.selvedge * grains, lines);
    if (f.size > job.depth * grains) continue;
    for (int p = 0; p <= f.size; p += grains)
      for (int q = f.size; q >= p; q -= grains)
        if (may_slit(f, p, job.trim * grains) && may_slit(f, q, job.trim * grains))
          found.insert(strips_between(f, p, q, grains));
  }
  return found;
}

template <class IsLess>
std::vector<Strips> greatest(const std::set<Strips>& found, IsLess is_less) {
  std::vector<Strips> best;
  for (const Strips& s : found)
    if (std::none_of(found.begin(), found.end(), [&](const Strips& o) {
          return o != s && is_less(s, o) && (!is_less(o, s) || o < s);
        }))
      best.push_back(s);
  return best;
}

}  // namespace

std::vector<Strips> strips_of(const QuantaJob& job, const FoldWay& way) {
  return greatest(found_strips(job, way), is_within);
}

std::vector<Strips> all_strips_of(const QuantaJob& job, const FoldWay& way) {
  return greatest(found_strips(job, way), is_held);
}

}  // namespace foldyard::test
