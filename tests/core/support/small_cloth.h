#pragma once

// Small random cloth with goods, and where each fold way may fold it: what the
// searches by enumeration are tried on. Sizes are units; `scale` makes the same
// case larger for the search, so that what does not divide evenly is small.

#include <string>
#include <vector>

#include "core/support/slow_folding.h"
#include "core/support/small_goods.h"
#include "cutting/strip_search.h"

namespace foldyard::test {

// A fold trim and a flap of a unit, and a table on which any cloth lies.
inline constexpr FoldLimits kDeepTable{Length::units(1), Length::units(1), Length::units(2000)};

struct SmallCase {
  std::vector<Panel> panels;
  SlowCloth cloth;
  SlowAim aim;
  int tallest = 0;
  int trim = 1;
  int copies = 1;
};

// deep: the table takes any folded cloth.
inline SmallCase throw_small_case(unsigned seed, bool deep, SlowAim aim) {
  Dice dice(seed);
  SmallCase c;
  c.panels = small_panels(dice, 2, 9, 6);
  c.cloth = {dice.from_to(12, 24), dice.from_to(0, 2), 100};
  if (!deep) c.cloth.depth = dice.from_to(4, c.cloth.width);
  c.tallest = dice.from_to(4, 8);
  c.trim = dice.from_to(1, 2);
  c.aim = aim;
  return c;
}

inline Fabric fabric_of(const SmallCase& c, int scale) {
  return {Length::units(c.cloth.width * scale), Length::units(c.cloth.selvedge * scale),
          Length::units(scale), Nap::none, ""};
}

inline TableSet tables_of(const SmallCase& c, int scale) {
  std::vector<Panel> panels = c.panels;
  for (Panel& p : panels) {
    p.across = p.across * scale;
    p.along = p.along * scale;
  }
  return TableSet(shapes_with_worth(panels, Nap::none),
                  {c.aim.worth_first, c.aim.per_cut, c.aim.per_unit},
                  {fabric_of(c, scale).usable_width(), Length::units(c.tallest * scale),
                   Length::units(c.trim * scale)});
}

inline Layouts layouts_for(const SmallCase& c, const FoldWay& way, int scale,
                           const TableSet& tables) {
  const Length depth = Length::units(c.cloth.depth * scale);
  Layouts layouts =
      layouts_of(way, fabric_of(c, scale), {tables.fold_trim(), tables.least_flap(), depth});
  std::erase_if(layouts, [&](const auto& l) { return l->is_fixed() && l->folded({}, {}) > depth; });
  return layouts;
}

inline std::vector<Lines> plain_lines(const SlowCloth& cloth, const FoldWay& way) {
  const int w = cloth.width;
  switch (way.kind) {
    case FoldKind::open: return {{}};
    case FoldKind::both_edges_in: return {{w / 4, w - w / 4}};
    default: break;
  }
  Lines lines;
  for (int i = 1; i < way.legs; ++i) lines.push_back(i * (w / way.legs));
  return {lines};
}

// Whether the plain way folds this cloth evenly, its outer legs at least the
// trim and a selvedge wide. No plain cloth is folded otherwise here.
inline bool folds_evenly(const SmallCase& c, const FoldWay& way) {
  const int shares = way.kind == FoldKind::both_edges_in ? 4 : way.legs;
  return c.cloth.width % shares == 0 &&
         c.cloth.width / shares >= (shares > 1 ? c.cloth.selvedge + c.trim : 0);
}

// The least flap that can hold a panel: half of one, or the trim and a whole one.
inline int least_flap(const SmallCase& c) {
  int least = c.cloth.width;
  for (const SlowShape& s : slow_shapes(c.panels, false)) {
    least = std::min(least, c.trim + s.across);
    if (s.on_fold && s.across >= 2 * c.trim) least = std::min(least, (s.across + 1) / 2);
  }
  return least;
}

// Every place the lines may have, `flap` of usable cloth in each outer leg.
inline std::vector<Lines> all_lines(const SmallCase& c, const FoldWay& way, int flap) {
  std::vector<Lines> all;
  if (way.plain) all = plain_lines(c.cloth, way);
  else if (way.kind == FoldKind::off_centre) all = off_centre_lines(c.cloth, flap);
  else if (way.kind == FoldKind::both_edges_in) all = both_edges_in_lines(c.cloth, flap);
  else all = fan_lines(c.cloth, way.legs, c.cloth.selvedge + flap);
  std::erase_if(all, [&](const Lines& l) { return SlowFold(c.cloth, l).size() > c.cloth.depth; });
  return all;
}

// The best over all of them for one height.
inline SlowCell slow_best(const SmallCase& c, const FoldWay& way, SlowRectangle& rectangles,
                          int height, int flap) {
  SlowStrips strips(rectangles, way.end_to_end, c.copies);
  SlowCell best;
  for (const Lines& lines : all_lines(c, way, flap)) {
    const SlowCell cell = strips.best(SlowFold(c.cloth, lines), height);
    if (beats(c.aim, cell, best, c.copies)) best = cell;
  }
  return best;
}

inline std::string text(const SmallCase& c) {
  std::string s = "width " + std::to_string(c.cloth.width) + ", selvedge " +
                  std::to_string(c.cloth.selvedge) + ", depth " + std::to_string(c.cloth.depth) +
                  ", trim " + std::to_string(c.trim);
  for (const Panel& p : c.panels)
    s += "; " + std::to_string(p.across.units()) + " x " + std::to_string(p.along.units()) +
         (p.may_turn ? " may turn" : "") + (p.on_fold ? " on the fold" : "") + " worth " +
         std::to_string(p.worth.parts());
  return s;
}

}  // namespace foldyard::test
