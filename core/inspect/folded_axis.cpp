#include "inspect/folded_axis.h"

#include <algorithm>

#include "measure/index.h"

namespace foldyard::inspection {

namespace {

int table_leg(const std::vector<int>& levels) {
  return static_cast<int>(std::find(levels.begin(), levels.end(), 0) - levels.begin());
}

Length turned_over(Length place, Length line) {
  return line * 2 - place;
}

// Where a place of `leg` lies once all cloth is folded onto `table`, in flat
// coordinates of the table leg.
Length laid_on(int table, int leg, Length place, const std::vector<Length>& lines) {
  for (int line = leg - 1; line >= table; --line) {
    place = turned_over(place, lines[ix(line)]);
  }
  for (int line = leg; line < table; ++line) {
    place = turned_over(place, lines[ix(line)]);
  }
  return place;
}

std::vector<FoldedLeg> lay_legs(Length whole, const std::vector<Length>& lines,
                                const std::vector<int>& levels) {
  const int table = table_leg(levels);
  std::vector<FoldedLeg> legs;
  for (std::size_t i = 0; i < levels.size(); ++i) {
    const Span flat{i == 0 ? Length() : lines[i - 1], i == lines.size() ? whole : lines[i]};
    const Length a = laid_on(table, static_cast<int>(i), flat.from, lines);
    const Length b = laid_on(table, static_cast<int>(i), flat.to, lines);
    legs.push_back({flat, {std::min(a, b), std::max(a, b)}, b < a, levels[i]});
  }
  return legs;
}

// Moves the lowest folded place to 0; gives the highest.
Length start_at_zero(std::vector<FoldedLeg>& legs) {
  Length lowest = legs.front().folded.from;
  Length highest = legs.front().folded.to;
  for (const FoldedLeg& leg : legs) {
    lowest = std::min(lowest, leg.folded.from);
    highest = std::max(highest, leg.folded.to);
  }
  for (FoldedLeg& leg : legs) leg.folded = {leg.folded.from - lowest, leg.folded.to - lowest};
  return highest - lowest;
}

Span fold_within(const FoldedLeg& leg, Span flat) {
  const Length from = flat.from - leg.flat.from;
  const Length to = flat.to - leg.flat.from;
  if (leg.reversed) return {leg.folded.to - to, leg.folded.to - from};
  return {leg.folded.from + from, leg.folded.from + to};
}

std::vector<Length> rims(const FoldedAxis& axis) {
  std::vector<Length> places;
  for (const FoldedLeg& leg : axis.legs) {
    places.push_back(leg.folded.from);
    places.push_back(leg.folded.to);
  }
  std::sort(places.begin(), places.end());
  return places;
}

int plies_over(const FoldedAxis& axis, Span folded) {
  return static_cast<int>(
      std::count_if(axis.legs.begin(), axis.legs.end(),
                    [&](const FoldedLeg& leg) { return leg.folded.covers(folded); }));
}

}  // namespace

FoldedAxis fold_axis(Length whole, const std::vector<Length>& lines,
                     const std::vector<int>& levels) {
  FoldedAxis axis;
  axis.legs = lay_legs(whole, lines, levels);
  axis.size = start_at_zero(axis.legs);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const FoldedLeg& leg = axis.legs[i];  // it ends at the line
    axis.creases.push_back({static_cast<int>(i), lines[i],
                            leg.reversed ? leg.folded.from : leg.folded.to, leg.reversed});
  }
  return axis;
}

std::vector<Span> fold_span(const FoldedAxis& axis, Span flat) {
  std::vector<Span> pieces;
  for (const FoldedLeg& leg : axis.legs) {
    const Span piece = intersection(leg.flat, flat);
    if (!piece.is_empty()) pieces.push_back(fold_within(leg, piece));
  }
  return pieces;
}

Length fold_place(const FoldedAxis& axis, Length flat) {
  const auto leg = std::find_if(axis.legs.begin(), axis.legs.end() - 1,
                                [&](const FoldedLeg& l) { return flat <= l.flat.to; });
  return fold_within(*leg, {flat, flat}).from;
}

int most_plies(const FoldedAxis& axis) {
  const std::vector<Length> places = rims(axis);
  int most = 0;
  for (std::size_t i = 1; i < places.size(); ++i) {
    const Span between{places[i - 1], places[i]};
    if (!between.is_empty()) most = std::max(most, plies_over(axis, between));
  }
  return most;
}

bool is_creased(const FoldedAxis& axis, Span flat) {
  return std::any_of(axis.creases.begin(), axis.creases.end(),
                     [&](const Crease& c) { return flat.from < c.line && c.line < flat.to; });
}

bool ends_on_crease(const FoldedAxis& axis, Span flat) {
  return std::any_of(axis.creases.begin(), axis.creases.end(),
                     [&](const Crease& c) { return flat.from == c.line || c.line == flat.to; });
}

}  // namespace foldyard::inspection
