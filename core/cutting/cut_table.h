#pragma once

// CutTable: the best way of cutting every rectangle of one kind, exactly.
//
// A kind says where the rectangle's rim is a fold edge: joint_across, its left
// rim (two plies joined there, two of everything beyond); joint_along, its
// lower rim. Cutting is edge to edge. With t the fold trim,
//
//   F(w,h) = best of  leave                                  0
//                     take     a shape of w × h, doubled in each joined axis
//                     across c  F(c,h) + n · R(w−c,h)         c a place
//                     along d   F(w,d) + m · U(w,h−d)         d a place
//
// where R is the table without the left joint (n = 2, or itself with n = 1)
// and U the one without the lower joint. The lower part of each cut is a place
// of the grid; an upper part that is no place is trimmed to one before it is
// cut further (by one cut, or by two where that is shorter). What that is
// enough for: docs/method.md, "One rectangle".
// Source of the recursion: Gilmore & Gomory 1966, Operations Research 14;
// joints, trims and cut cost are our own.
//
// A rectangle's best is kept as one number (cutting/packing.h); how it is cut is
// found again when it is asked for. Gains are for one copy, i.e. one ply (joint_across or joint_along: for one
// joined pair, both: for one joined four). Cost is for the cuts through all
// `copies` at once.
//
// Example: 1000 × 900, shape 450 × 900 of gain 1, no joint: gain 2, two cuts.

#include <atomic>
#include <cstdint>
#include <mutex>
#include <vector>

#include "cutting/grid.h"
#include "cutting/objective.h"
#include "cutting/packing.h"
#include "cutting/shape.h"
#include "cutting/table_fill.h"

namespace foldyard {

struct TableKind {
  bool joint_across = false;
  bool joint_along = false;
  std::int64_t copies = 1;
  auto operator<=>(const TableKind&) const = default;
};

enum class Move : std::uint8_t {
  leave,
  take,          // index: shape
  trim_across,   // index: place kept, the rest left
  trim_along,
  part_across,  // index: place of the lower part; the upper remains
  part_along,
};

struct Choice {
  Move move = Move::leave;
  std::int32_t index = -1;
};

// What to do with a remainder: keep the place (across, along), cutting off the
// rest. Exact remainders need no cut.
struct Remainder {
  Cell cell;
  int across = -1;  // −1: leave it all
  int along = -1;
  int cuts = 0;
  bool height_first = false;  // of two cuts, the first trims the height
};

class CutTable {
 public:
  // beyond: R, above: U; null where the table is its own (no joint that way).
  // REQUIRES both to live as long as this, with grids that agree, and one
  // packing for all of them. all_places: the grids hold every normal place;
  // else a remainder may be trimmed by one cut to a place that no even parting
  // reaches, and that is tried too. cancelled: once true, the higher rectangles
  // are left uncut.
  CutTable(TableKind kind, Grid across, Grid along, const std::vector<Shape>& shapes,
           const Packing& packing, const CutTable* beyond, const CutTable* above,
           bool all_places = true, const std::atomic<bool>* cancelled = nullptr);
  CutTable(const CutTable&) = delete;
  CutTable& operator=(const CutTable&) = delete;

  const TableKind& kind() const { return kind_; }
  const Grid& across() const { return across_; }
  const Grid& along() const { return along_; }
  const Packing& packing() const { return packing_; }
  const Objective& aim() const { return packing_.aim(); }
  bool has_beyond() const { return beyond_; }
  bool has_above() const { return above_; }
  bool has_all_places() const { return all_places_; }
  const CutTable& beyond() const { return beyond_ ? *beyond_ : *this; }
  const CutTable& above() const { return above_ ? *above_ : *this; }

  // Row by row; REQUIRES V to be Wide where the packing is, else int64.
  template <class V> const std::vector<V>& values() const {
    if constexpr (sizeof(V) == sizeof(Wide)) return wide_values_;
    else return values_;
  }
  Wide value(int x, int y) const {
    return packing_.is_wide() ? wide_values_[index(x, y)] : Wide(values_[index(x, y)]);
  }

  // These look for the answer each time.
  Cell at(int x, int y) const;
  Choice choice(int x, int y) const;
  // Of the places up to x (along: up to y), the first of those that are best.
  int best_place_across(int x, int y) const;
  int best_place_along(int x, int y) const;
  // A rectangle of any width and a height of the grid, and the other way round.
  Remainder remainder_across(Length width, int y) const;
  Remainder remainder_along(int x, Length height) const;

 private:
  std::size_t index(int x, int y) const { return static_cast<std::size_t>(y) * nx_ + x; }
  // The place of a shape that is taken in this table; x or y −1 where none.
  Leaf leaf_of(const Shape& shape) const;
  Wide cut_over(Length travel) const { return packing_.cut<Wide>(travel); }
  Wide upper_value(Wide value, bool is_joint) const { return packing_.times(value, is_joint ? 2 : 1); }
  bool is_odd_part_across(int x, int y, int low, Wide wanted) const;
  bool is_odd_part_along(int x, int y, int low, Wide wanted) const;
  int part_across(int x, int y, Wide wanted) const;
  int part_along(int x, int y, Wide wanted) const;
  // A rectangle with one side that is no place, cut down to a place.
  struct Trimmed {
    Wide value;
    int x;
    int y;
    bool two_cuts;
    void keep(const Trimmed& other) {
      if (other.value > value) *this = other;
    }
  };
  Trimmed trimmed_across(Length width, int y, int plies) const;
  Trimmed trimmed_along(int x, Length height, int plies) const;
  Remainder remainder_of(const Trimmed& trimmed, bool height_first) const;
  std::int64_t gain(int x, int y) const;
  std::int64_t followed_gain(int x, int y) const;
  std::int64_t gain_of(const Remainder& rest) const { return rest.across < 0 ? 0 : gain(rest.across, rest.along); }
  Cell cell(Wide value, std::int64_t gain) const;

  TableKind kind_;
  Grid across_, along_;
  std::vector<Shape> shapes_;
  Packing packing_;
  const CutTable* beyond_;
  const CutTable* above_;
  bool all_places_;
  int nx_, ny_;
  std::vector<std::int64_t> values_;  // empty where they need 128 bits
  std::vector<Wide> wide_values_;     // empty where not
  // Gains found so far where time is weighed; −1 where not yet.
  mutable std::once_flag gains_once_;
  mutable std::vector<std::atomic<std::int64_t>> gains_;
};

}  // namespace foldyard
