#include "fold/fold_map.h"

#include <algorithm>
#include <cassert>

namespace foldyard {
namespace {

// Legs one after another, each starting where the one before ended; the
// folded places still count from wherever leg 0 happens to begin.
std::vector<Leg> lay_legs(Length whole, const std::vector<Length>& lines,
                          const std::vector<int>& levels) {
  const auto base = std::find(levels.begin(), levels.end(), 0) - levels.begin();
  std::vector<Leg> legs;
  Length start, place;
  for (std::size_t i = 0; i < levels.size(); ++i) {
    const Length end = i < lines.size() ? lines[i] : whole;
    const bool mirrored = (static_cast<std::ptrdiff_t>(i) - base) % 2 != 0;
    const Length next = mirrored ? place - (end - start) : place + (end - start);
    legs.push_back({{start, end}, {std::min(place, next), std::max(place, next)}, mirrored,
                    levels[i]});
    start = end;
    place = next;
  }
  return legs;
}

void move_to_zero(std::vector<Leg>& legs) {
  Length lowest = legs.front().folded.from;
  for (const Leg& leg : legs) lowest = std::min(lowest, leg.folded.from);
  for (Leg& leg : legs) leg.folded = {leg.folded.from - lowest, leg.folded.to - lowest};
}

std::vector<FoldEdge> edges_between(const std::vector<Leg>& legs) {
  std::vector<FoldEdge> edges;
  for (std::size_t i = 0; i + 1 < legs.size(); ++i) {
    const Leg& leg = legs[i];
    const Length at = leg.mirrored ? leg.folded.from : leg.folded.to;
    edges.push_back({leg.flat.to, at, static_cast<int>(i), leg.mirrored});
  }
  return edges;
}

Length folded_place(const Leg& leg, Length flat) {
  return leg.mirrored ? leg.folded.to - (flat - leg.flat.from)
                      : leg.folded.from + (flat - leg.flat.from);
}

// The flat places of one leg under `folded`; empty where it does not lie there.
Span flat_under(const Leg& leg, Span folded) {
  const Span both = intersection(leg.folded, folded);
  const Length from = leg.mirrored ? leg.folded.to - both.to : both.from - leg.folded.from;
  return {leg.flat.from + from, leg.flat.from + from + both.size()};
}

}  // namespace

AxisMap::AxisMap(Length whole, const std::vector<Length>& lines, const std::vector<int>& levels)
    : whole_(whole), legs_(lay_legs(whole, lines, levels)) {
  assert(levels.size() == lines.size() + 1);
  assert(std::is_sorted(lines.begin(), lines.end()));
  move_to_zero(legs_);
  edges_ = edges_between(legs_);
  for (const Leg& leg : legs_) folded_size_ = std::max(folded_size_, leg.folded.to);
}

std::vector<Span> AxisMap::places_of(Span folded) const {
  std::vector<Span> places;
  for (const Leg& leg : legs_) {
    const Span place = flat_under(leg, folded);
    if (place.is_empty()) continue;
    // Neighbours meet only at their fold line, so only if its edge is in the span.
    if (!places.empty() && places.back().to == place.from) places.back().to = place.to;
    else places.push_back(place);
  }
  return places;
}

Length AxisMap::fold(Length flat) const {
  const auto leg = std::find_if(legs_.begin(), legs_.end() - 1,
                                [flat](const Leg& each) { return flat <= each.flat.to; });
  return folded_place(*leg, flat);
}

bool AxisMap::is_creased(Span flat) const {
  return std::any_of(edges_.begin(), edges_.end(), [flat](const FoldEdge& edge) {
    return flat.from < edge.line && edge.line < flat.to;
  });
}

FoldMap fold_map(const FoldPlan& plan, Length width, Length length) {
  AxisMap across(width, plan.lines, plan.levels);
  if (!plan.way.end_to_end) return {across, AxisMap(length, {}, {0})};
  return {across, AxisMap(length, {length / 2}, {1, 0})};
}

}  // namespace foldyard
