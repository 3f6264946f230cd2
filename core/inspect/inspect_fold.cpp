#include <algorithm>
#include <cstdlib>

#include "inspect/checks.h"
#include "measure/index.h"

namespace foldyard::inspection {

namespace {

using Legs = std::vector<FoldedLeg>;

bool is_permutation(std::vector<int> levels) {
  std::sort(levels.begin(), levels.end());
  for (std::size_t i = 0; i < levels.size(); ++i) {
    if (levels[i] != static_cast<int>(i)) return false;
  }
  return true;
}

bool ascend_inside(const std::vector<Length>& lines, Length width) {
  Length before;
  for (const Length line : lines) {
    if (line <= before) return false;
    before = line;
  }
  return before < width;
}

int legs_of(const FoldWay& way) {
  switch (way.kind) {
    case FoldKind::open:
      return 1;
    case FoldKind::selvedge_to_selvedge:
    case FoldKind::off_centre:
      return 2;
    case FoldKind::both_edges_in:
      return 3;
    case FoldKind::fan:
      return std::max(way.legs, 3);
    case FoldKind::quarters:
      return 4;
  }
  return 0;
}

std::vector<int> levels_in_order(const Legs& legs) {
  std::vector<int> levels;
  for (const FoldedLeg& leg : legs) levels.push_back(leg.level);
  return levels;
}

// A leg longer or shorter than an equal share by as many units as there are
// legs still counts as the symmetric position.
bool is_about(Length size, Length whole, int shares, int tolerance) {
  return std::abs((size * shares - whole).units()) <= std::int64_t{shares} * tolerance;
}

void inspect_middle(const Subject& s, const FoldedCloth& cloth, Findings& findings) {
  const Length twice = cloth.across.creases.front().line * 2;
  const bool middle = std::abs((twice - s.fabric.width).units()) <= 1;
  findings.require(middle, s.name,
                   "the fold line of selvedge to selvedge is not at half the width");
}

void inspect_flaps(const Subject& s, const FoldedCloth& cloth, Findings& findings) {
  const Legs& legs = cloth.across.legs;
  findings.require(!legs[0].folded.overlaps(legs[2].folded), s.name,
                   "the flaps of both edges in overlap each other");
  findings.require(legs[1].level == 0, s.name, "the flaps of both edges in do not lie on top");
  const auto is_quarter = [&](const FoldedLeg& leg) {
    return is_about(leg.flat.size(), s.fabric.width, 4, 3);
  };
  findings.require(!s.pattern.fold.way.plain || (is_quarter(legs[0]) && is_quarter(legs[2])),
                   s.name,
                   "the folds of both edges in are plain but not at a quarter of the width");
}

void inspect_equal_legs(const Subject& s, const FoldedCloth& cloth, Findings& findings) {
  const Legs& legs = cloth.across.legs;
  const Length inner = legs[1].flat.size();
  const bool equal = std::all_of(legs.begin() + 1, legs.end() - 1,
                                 [&](const FoldedLeg& leg) { return leg.flat.size() == inner; });
  findings.require(equal, s.name, "the inner legs differ");
  findings.require(legs.front().flat.size() <= inner, s.name,
                   "the first leg is longer than the inner legs");
  findings.require(legs.back().flat.size() <= inner, s.name,
                   "the last leg is longer than the inner legs");
  const int shares = static_cast<int>(legs.size());
  const bool plain = std::all_of(legs.begin(), legs.end(), [&](const FoldedLeg& leg) {
    return is_about(leg.flat.size(), s.fabric.width, shares, shares);
  });
  findings.require(!s.pattern.fold.way.plain || plain, s.name,
                   "the fold is plain but its legs are not an equal share of the width");
}

// To and fro: each leg lies on the one before.
bool runs_to_and_fro(const std::vector<int>& levels) {
  return std::is_sorted(levels.begin(), levels.end()) ||
         std::is_sorted(levels.rbegin(), levels.rend());
}

// After the first fold the inner legs lie together and the outer legs do, each
// pair on its side of the second fold.
bool is_folded_double_twice(const std::vector<int>& levels) {
  return (levels[1] < 2) == (levels[2] < 2);
}

void inspect_kind(const Subject& s, const FoldedCloth& cloth, Findings& findings) {
  const std::vector<int> levels = levels_in_order(cloth.across.legs);
  switch (s.pattern.fold.way.kind) {
    case FoldKind::open:
    case FoldKind::off_centre:
      return;
    case FoldKind::selvedge_to_selvedge:
      return inspect_middle(s, cloth, findings);
    case FoldKind::both_edges_in:
      return inspect_flaps(s, cloth, findings);
    case FoldKind::fan:
      findings.require(runs_to_and_fro(levels), s.name,
                       "the legs of the fan do not run to and fro");
      return inspect_equal_legs(s, cloth, findings);
    case FoldKind::quarters:
      findings.require(is_folded_double_twice(levels), s.name,
                       "the legs in quarters cannot come from folding double twice");
      return inspect_equal_legs(s, cloth, findings);
  }
}

Span levels_of(const Crease& crease, const Legs& legs) {
  const int a = legs[ix(crease.first_leg)].level;
  const int b = legs[static_cast<std::size_t>(crease.first_leg) + 1].level;
  return {Length::units(std::min(a, b)), Length::units(std::max(a, b))};
}

bool lies_between(const FoldedLeg& leg, Span levels) {
  const Length level = Length::units(leg.level);
  return levels.from < level && level < levels.to;
}

bool interleave(Span a, Span b) {
  return (a.from < b.from && b.from < a.to && a.to < b.to) ||
         (b.from < a.from && a.from < b.to && b.to < a.to);
}

// A crease closes the space between its two legs: no leg may lie in between
// and reach across it, and two creases at one place must nest or stand clear.
bool passes_through(const Crease& crease, const Legs& legs) {
  const Span levels = levels_of(crease, legs);
  return std::any_of(legs.begin(), legs.end(), [&](const FoldedLeg& leg) {
    return lies_between(leg, levels) && leg.folded.from < crease.at && crease.at < leg.folded.to;
  });
}

bool tangled(const Crease& a, const Crease& b, const Legs& legs) {
  return a.at == b.at && a.cloth_after == b.cloth_after &&
         interleave(levels_of(a, legs), levels_of(b, legs));
}

void inspect_turning(const Subject& s, const FoldedAxis& axis, Findings& findings) {
  for (std::size_t i = 0; i < axis.creases.size(); ++i) {
    findings.require(!passes_through(axis.creases[i], axis.legs), s.name,
                     "a leg passes through fold ", i + 1);
    for (std::size_t j = i + 1; j < axis.creases.size(); ++j) {
      findings.require(!tangled(axis.creases[i], axis.creases[j], axis.legs), s.name, "folds ",
                       i + 1, " and ", j + 1, " pass through each other");
    }
  }
}

}  // namespace

bool can_be_folded(const Subject& s, Findings& findings) {
  const FoldPlan& fold = s.pattern.fold;
  const auto legs = static_cast<std::size_t>(legs_of(fold.way));
  findings.require(fold.way == s.way, s.name, "its way of folding is not that of the plan");
  findings.require(fold.way.legs == legs_of(fold.way), s.name,
                   "the number of legs does not belong to its way of folding");
  const bool sized = findings.require(fold.lines.size() + 1 == legs, s.name,
                                      "the number of fold lines does not belong to its way");
  const bool inside = findings.require(ascend_inside(fold.lines, s.fabric.width), s.name,
                                       "the fold lines do not ascend inside the width");
  const bool stacked =
      findings.require(fold.levels.size() == fold.lines.size() + 1 && is_permutation(fold.levels),
                       s.name, "the levels do not put each leg at one place of the stack");
  const bool whole =
      findings.require(Length() < s.pattern.length, s.name, "its length is not above zero");
  return sized && inside && stacked && whole &&
         findings.require(!fold.way.end_to_end || s.pattern.length.is_even(), s.name,
                          "its length cannot be halved end to end");
}

FoldedCloth fold_cloth(const Subject& s) {
  const FoldPlan& fold = s.pattern.fold;
  const Length length = s.pattern.length;
  const bool twice = fold.way.end_to_end;
  return {fold_axis(s.fabric.width, fold.lines, fold.levels),
          twice ? fold_axis(length, {length / 2}, {1, 0}) : fold_axis(length, {}, {0})};
}

namespace {

// A leg laid reversed turns the direction in which the nap runs.
bool lies_one_way(const FoldedAxis& axis) {
  return std::none_of(axis.legs.begin(), axis.legs.end(),
                      [](const FoldedLeg& leg) { return leg.reversed; });
}

void inspect_nap(const Subject& s, const FoldedCloth& cloth, Findings& findings) {
  if (s.fabric.nap == Nap::none) return;
  if (s.fabric.railroaded) {
    findings.require(lies_one_way(cloth.across), s.name,
                     "one-way cloth whose nap runs across is folded along the roll");
  } else {
    findings.require(lies_one_way(cloth.along), s.name, "one-way cloth is folded end to end");
  }
}

}  // namespace

void inspect_fold(const Subject& s, const FoldedCloth& cloth, Findings& findings) {
  inspect_nap(s, cloth, findings);
  inspect_kind(s, cloth, findings);
  inspect_turning(s, cloth.across, findings);
  findings.agree(s.pattern.folded_across, cloth.across.size, s.name, "the folded size across");
  findings.agree(s.pattern.folded_along, cloth.along.size, s.name, "the folded size along");
  findings.agree(s.pattern.plies, most_plies(cloth.across) * most_plies(cloth.along), s.name,
                 "the number of plies");
}

}  // namespace foldyard::inspection
