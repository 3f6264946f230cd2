#pragma once

// What the strips of a folded length can be, over every position of the folds
// and of the slits. The cloth is folded here by walking along it; no layout and
// no fold map of the project is used.
//
// The rules (docs/decisions/strips-first.md): two slits at most; a strip at a
// rim where legs are joined counts its pairs if all of them cover it with
// usable cloth and nothing holds them at the far rim; the strip between the
// slits counts the loose plies that cover it. A slit keeps the trim from a fold
// edge. A leg folded over by itself holds at least the least flap; a fan's
// inner legs are equal and its outer legs no longer.
//
// Folds lie at fractions of a quantum: with slits at whole quanta from the rims
// a leg of a fan is a whole number of quanta through up to n legs.

#include <compare>
#include <vector>

#include "fold/fold_plan.h"
#include "oracle/small_job.h"

namespace foldyard::test {

struct Strips {
  int left_pairs = 0, left = 0;  // sizes in quanta; 0: no such strip
  int plies = 0, middle = 0;     // even, as loose cloth needs whole panels only
  int right_pairs = 0, right = 0;
  auto operator<=>(const Strips&) const = default;
};

// All, but for those that another holds: with as many plies, at least as large,
// strip by strip.
std::vector<Strips> all_strips_of(const QuantaJob& job, const FoldWay& way);
// Those of which no other is at least as large in everything.
std::vector<Strips> strips_of(const QuantaJob& job, const FoldWay& way);

}  // namespace foldyard::test
