#pragma once

// FoldedAxis: the inspector's own folding of the cloth along one axis.
//
// The cloth is folded as hands do it: the leg on the table (level 0) stays
// where it is; every place beyond it is turned over about the fold line that
// is furthest from the table leg, then about the next one, until it lies
// there. The folded axis then starts at its lowest place.
//
// Properties: the legs cover [0, whole] once and keep their sizes; two legs
// meet at each crease; a span that no line parts folds to one of equal size.
//
// Example: whole 1500, lines {750}, levels {1, 0}: leg 0 folds onto [0, 750]
// reversed, leg 1 onto [0, 750]; the crease is at 0 with the cloth after it.

#include <vector>

#include "measure/rect.h"

namespace foldyard::inspection {

struct FoldedLeg {
  Span flat;
  Span folded;
  bool reversed = false;
  int level = 0;
};

// Joins legs `first_leg` and `first_leg` + 1 at the folded place `at`; they
// lie at places ≥ at (cloth_after) or ≤ at.
struct Crease {
  int first_leg = 0;
  Length line;
  Length at;
  bool cloth_after = false;
};

struct FoldedAxis {
  Length size;  // from the lowest to the highest folded place
  std::vector<FoldedLeg> legs;
  std::vector<Crease> creases;
};

// REQUIRES lines ascending strictly inside (0, whole), levels a permutation of
// 0 … lines.size().
FoldedAxis fold_axis(Length whole, const std::vector<Length>& lines,
                     const std::vector<int>& levels);

// The folded spans of the pieces into which the lines part a flat span, in
// flat order; an empty or outlying span has none.
std::vector<Span> fold_span(const FoldedAxis& axis, Span flat);

// The folded place of a flat one within [0, whole].
Length fold_place(const FoldedAxis& axis, Length flat);

// The most legs that lie over any one place.
int most_plies(const FoldedAxis& axis);

// Whether a fold line lies strictly inside a flat span; whether one lies on
// its rim, so that the cloth goes on around the crease there.
bool is_creased(const FoldedAxis& axis, Span flat);
bool ends_on_crease(const FoldedAxis& axis, Span flat);

}  // namespace foldyard::inspection
