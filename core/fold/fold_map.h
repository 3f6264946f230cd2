#pragma once

// FoldMap: where each place of the flat cloth lies once it is folded, and back.
//
// Along one axis the map is continuous and piecewise linear with slopes +1 and
// −1: each leg is moved or mirrored onto the folded axis, which starts at 0.
// The folded cloth is the product of the map across (x → u) and the map along
// (y → v). Every leg end is a selvedge or cut end, or a fold edge joining it
// to its neighbour. The leg at level 0 has slope +1; slopes alternate.
//
// Properties (tested): unfold(fold(x)) covers the cloth once; the flat sizes
// of places_of(span) over a partition of the folded axis add up to the cloth.
//
// Example: width 1500, lines {750}, levels {1,0}: leg 0 lies on [0,750]
// mirrored at level 1, leg 1 on [0,750] at level 0, fold edge at u = 0;
// places_of([0,225]) is one span, [525,975]; places_of([225,675]) is two,
// [75,525] and [975,1425].

#include <vector>

#include "fold/fold_plan.h"
#include "measure/rect.h"

namespace foldyard {

struct Leg {
  Span flat;
  Span folded;
  bool mirrored = false;  // slope −1: lies with its other face up
  int level = 0;
};

struct FoldEdge {
  Length line;    // on the flat cloth
  Length at;      // on the folded cloth
  int first_leg;  // joins first_leg and first_leg + 1
  bool cloth_after;  // the joined legs lie at places ≥ at; else at places ≤ at
};

class AxisMap {
 public:
  // REQUIRES lines ascending and inside (0, whole); levels a permutation of
  // 0 … lines.size().
  AxisMap(Length whole, const std::vector<Length>& lines, const std::vector<int>& levels);

  Length whole() const { return whole_; }
  Length folded_size() const { return folded_size_; }
  const std::vector<Leg>& legs() const { return legs_; }
  const std::vector<FoldEdge>& edges() const { return edges_; }

  // The flat places under a folded span, ascending, joined where a fold edge
  // lies in or on the span; empty ones left out.
  std::vector<Span> places_of(Span folded) const;
  // The folded place of a flat place.
  Length fold(Length flat) const;
  // Whether a fold line lies strictly inside a flat span.
  bool is_creased(Span flat) const;

 private:
  Length whole_;
  Length folded_size_;
  std::vector<Leg> legs_;
  std::vector<FoldEdge> edges_;
};

struct FoldMap {
  AxisMap across;
  AxisMap along;
};

// Along, end to end puts one fold line at half the length (rounded down to a
// unit). REQUIRES length of at least 2 units where the plan is end to end.
FoldMap fold_map(const FoldPlan& plan, Length width, Length length);

}  // namespace foldyard
