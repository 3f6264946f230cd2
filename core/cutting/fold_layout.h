#pragma once

// FoldLayout: how a fold way parts the folded cloth into strips.
//
// From u = 0: a left strip of size x, in which `left_pairs` pairs of plies are
// joined by fold edges at u = 0; a middle strip of `plies` loose plies; a right
// strip of size y with `right_pairs` pairs joined at the far fold edge. A
// folded length is slit into these strips first; in a strip only the plies
// that cover it from side to side are cut for panels (docs/decisions/strips-first.md).
//
//                 left  x     middle m      right  y
//   open            –            1              –
//   off-centre    1 pair         1              –
//   both edges in 1 pair         1            1 pair
//   fan of 3      1 pair     3, 2 or 1        1 pair
//   fan of 4      1 pair       3 or –         2 pairs
//
// A layout knows, for sizes x and y, the middle that is left and the fold
// lines. Found positions: the middle shrinks as x or y grows, and what a strip
// yields changes only at places of the joint grid, so the best positions are
// among those places and the least allowed (proof: docs/method.md).
//
// Example: off-centre on 1500 with selvedges of 10, x = 225: fold line at 235,
// middle 1480 − 450 = 1030.

#include <memory>
#include <vector>

#include "cloth/roll.h"
#include "cutting/grid.h"
#include "fold/fold_plan.h"

namespace foldyard {

struct SizeRange {
  Length least;
  Length most;
};

class FoldLayout {
 public:
  struct Shares {
    int left_pairs = 0;
    int plies = 0;
    int right_pairs = 0;
  };

  virtual ~FoldLayout() = default;

  const Shares& shares() const { return shares_; }
  // The folded cloth lies mirrored: the strips as named here run from its far
  // edge (quarters, whose last leg lies on the table).
  bool lies_mirrored() const { return mirrored_; }
  // The folds have one place, whatever the strips.
  virtual bool is_fixed() const { return false; }
  virtual SizeRange left() const { return {}; }
  // Given the left strip; `least` already keeps the folded cloth within depth.
  virtual SizeRange right(Length) const { return {}; }
  // Negative where the strips overlap; kNoRoom where the folds cannot lie so.
  static constexpr Length kNoRoom = Length::units(-(std::int64_t{1} << 40));
  virtual Length middle(Length x, Length y) const = 0;
  // Where the middle begins, from the left rim.
  virtual Length middle_start(Length x, Length /*y*/) const { return x; }
  // The plies of the middle go on under the strip: where a strip is slit at
  // less than its size, the middle may begin there.
  virtual bool goes_under_left() const { return false; }
  virtual bool goes_under_right() const { return false; }
  virtual Length folded(Length x, Length y) const = 0;
  virtual std::vector<Length> lines(Length x, Length y) const = 0;

 protected:
  FoldLayout(const Fabric& fabric, Shares shares, bool mirrored = false)
      : width_(fabric.width), selvedge_(fabric.selvedge), shares_(shares), mirrored_(mirrored) {}
  Length usable() const { return width_ - selvedge_ * 2; }

  Length width_;
  Length selvedge_;
  Shares shares_;
  bool mirrored_;
};

// What a layout is held to. fold_trim: the least strip cut off at a fold edge.
// flap: the least usable cloth in a leg that is folded over by itself (a fold
// that could hold no panel is none). depth: the deepest the folded cloth may be.
struct FoldLimits {
  Length fold_trim;
  Length flap;
  Length depth;
};

// The layouts of a way, one or two; together they hold its best position.
std::vector<std::unique_ptr<FoldLayout>> layouts_of(const FoldWay& way, const Fabric& fabric,
                                                    const FoldLimits& limits);

// levels of FoldPlan for a way, bottom to top by leg.
std::vector<int> levels_of(const FoldWay& way);

}  // namespace foldyard
