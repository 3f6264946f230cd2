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
// Gains are for one copy, i.e. one ply (joint_across or joint_along: for one
// joined pair, both: for one joined four). Cost is for the cuts through all
// `copies` at once.
//
// Example: 1000 × 900, shape 450 × 900 of gain 1, no joint: gain 2, two cuts.

#include <atomic>
#include <cstdint>
#include <vector>

#include "cutting/grid.h"
#include "cutting/objective.h"
#include "cutting/shape.h"

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
  // REQUIRES both to live as long as this, with grids that agree. all_places:
  // the grids hold every normal place; else a remainder may be trimmed by one
  // cut to a place that no even parting reaches, and that is tried too.
  // cancelled: once true, the higher rectangles are left uncut.
  CutTable(TableKind kind, Grid across, Grid along, const std::vector<Shape>& shapes,
           const Objective& aim, const CutTable* beyond, const CutTable* above,
           bool all_places = true, const std::atomic<bool>* cancelled = nullptr);
  CutTable(const CutTable&) = delete;
  CutTable& operator=(const CutTable&) = delete;

  const TableKind& kind() const { return kind_; }
  const Grid& across() const { return across_; }
  const Grid& along() const { return along_; }
  const Objective& aim() const { return aim_; }
  const CutTable& beyond() const { return beyond_ ? *beyond_ : *this; }
  const CutTable& above() const { return above_ ? *above_ : *this; }

  const Cell& at(int x, int y) const { return cells_[index(x, y)]; }
  const Choice& choice(int x, int y) const { return choices_[index(x, y)]; }
  // The best at (x, y) or any narrower place, without the cut to get there.
  const Cell& best_up_to(int x, int y) const { return best_across_[index(x, y)]; }
  // The same for any lower place.
  const Cell& best_low(int x, int y) const { return best_along_[index(x, y)]; }
  // A rectangle of any width and a height of the grid, and the other way round.
  Remainder remainder_across(Length width, int y) const;
  Remainder remainder_along(int x, Length height) const;

 private:
  // A way to part a place: the lower part a place, the remainder no place.
  struct OddPart {
    std::int32_t low;
    std::int32_t floor;  // of the remainder, in the other table
    std::int64_t remainder;
  };
  // For every place of an axis, how it may be parted. exact[i * n + l] is the
  // other table's place that remains beyond place l of place i, or −1.
  struct Parts {
    std::vector<std::int32_t> exact;
    std::vector<OddPart> odd;
    std::vector<std::int32_t> odd_start;
  };

  static Parts parts_of(const Grid& own, const Grid& other);
  std::size_t index(int x, int y) const { return static_cast<std::size_t>(y) * nx_ + x; }
  std::size_t column_index(int x, int y) const { return static_cast<std::size_t>(x) * ny_ + y; }
  void set_leaves(const std::vector<Shape>& shapes);
  template <bool kWorthFirst> void fill();
  template <bool kWorthFirst> void fill_cell(int x, int y);
  template <bool kWorthFirst> void try_trims(int x, int y, Cell& best, Choice& choice) const;
  template <bool kWorthFirst> void try_parts_across(int x, int y, Cell& best, Choice& choice) const;
  template <bool kWorthFirst> void try_parts_along(int x, int y, Cell& best, Choice& choice) const;
  template <bool kWorthFirst> bool could_gain(Cell smaller, const Cell& best) const;
  template <bool kWorthFirst>
  void try_odd_across(const OddPart& part, int y, Cell& best, Choice& choice) const;
  template <bool kWorthFirst>
  void try_odd_along(const OddPart& part, int x, Cell& best, Choice& choice) const;
  template <bool kWorthFirst> void note_prefixes(int x, int y);
  void note_whole(int x, int y);
  template <bool kWorthFirst>
  Cell better_trim(const Cell& two, Cell one, std::int64_t cut) const;
  Cell odd_across(int place, int y, std::int64_t width) const;
  Cell odd_along(int x, int place, std::int64_t height) const;

  TableKind kind_;
  Grid across_, along_;
  Objective aim_;
  const CutTable* beyond_;
  const CutTable* above_;
  bool all_places_;
  const std::atomic<bool>* cancelled_;
  int nx_, ny_;
  Parts parts_across_, parts_along_;
  // Places not parted, or trimmed, in that direction: a row of parts side by
  // side may begin with any of its parts, so only these need come first.
  std::vector<std::int32_t> whole_across_;                // of the row being filled
  std::vector<std::vector<std::int32_t>> whole_along_;    // of each column
  std::vector<Cell> cells_;
  std::vector<Cell> columns_;  // cells_ again, column by column
  std::vector<Choice> choices_;
  std::vector<Cell> best_across_, best_along_;  // best of places up to here
  std::vector<Cell> corner_across_;  // for trims by two cuts, row by row
  std::vector<Cell> corner_along_;   // the same, column by column
};

}  // namespace foldyard
