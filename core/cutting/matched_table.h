#pragma once

// MatchedTable: the best way of cutting every stretch of cloth with a repeat,
// where matched panels begin at their phase.
//
// The same recursion as CutTable (leave, take, trim, part) over the states of two
// phase axes: a panel is taken from a rectangle of its size whose phases are those
// it needs, and a cut parts a state as PhaseAxis says. A remainder that is no place
// is trimmed by one cut. Gains, copies and joints are as in CutTable: gain of one
// ply (of one joined pair or four beside fold edges), cost of the cuts through all
// copies.
//
// Exact for this rule: no guillotine cutting in which every matched panel lies in a
// rectangle of a kept phase gains more, and none of equal gain has fewer cuts. What
// the rule gives up: docs/decisions/phases.md.
//
// Example: repeat 64 along, cloth 100 × 178 from phase 0, a matched panel 100 × 50
// of gain 1: gain 3, cut across at 50, 64, 114 and 128.

#include <atomic>
#include <optional>
#include <vector>

#include "cutting/cut_table.h"
#include "cutting/phase_axis.h"
#include "cutting/tree_builder.h"

namespace foldyard {

struct PhasedShape {
  Shape shape;
  std::optional<Length> across;  // the phases it needs
  std::optional<Length> along;
};

class MatchedTable {
 public:
  // beyond, above: the tables without the joint across and along; null where
  // there is none.
  MatchedTable(TableKind kind, const PhaseAxis& across, const PhaseAxis& along,
               const std::vector<PhasedShape>& shapes, const Objective& aim,
               const MatchedTable* beyond, const MatchedTable* above,
               const std::atomic<bool>* cancelled);

  const PhaseAxis& across() const { return across_; }
  const PhaseAxis& along() const { return along_; }
  const Cell& at(int x, int y) const { return cells_[index(x, y)]; }
  // The best at x or any smaller state of its family.
  const Cell& best_up_to(int x, int y) const { return best_across_[index(x, y)]; }
  // The state whose cell that is.
  int best_state_up_to(int x, int y) const;
  // Writes the cutting of (x, y) below `node`, whose rectangle is of just that
  // size; flip: its beginning is the right rim.
  void fill(TreeBuilder& builder, int node, int x, int y, bool flip) const;

 private:
  struct Step {
    Move move = Move::leave;
    std::int32_t index = -1;  // of the shape, or of the part
  };

  std::size_t index(int x, int y) const {
    return static_cast<std::size_t>(y) * static_cast<std::size_t>(across_.size()) +
           static_cast<std::size_t>(x);
  }
  bool is_better(const Cell& a, const Cell& b) const {
    return foldyard::is_better(aim_, a, b, kind_.copies);
  }
  const MatchedTable& beyond() const { return beyond_ ? *beyond_ : *this; }
  const MatchedTable& above() const { return above_ ? *above_ : *this; }
  std::int64_t cut_upright(int y) const { return aim_.cut(along_[y].size.units()); }
  std::int64_t cut_level(int x) const { return aim_.cut(across_[x].size.units()); }

  void offer_shapes();
  void leave_from(int y);
  void offer_shape(int shape);
  bool is_in_phase(const PhasedShape& shape, int x, int y) const;
  void fill_cell(int x, int y);
  void consider(const Cell& cell, Move move, int index, std::size_t here);
  void try_trims(int x, int y);
  void try_parts_across(int x, int y);
  void try_parts_along(int x, int y);
  Cell trimmed(Cell cell, std::int64_t cut) const;
  Cell low_across(const PhaseAxis::Part& part, int y) const;
  Cell high_across(const PhaseAxis::Part& part, int y) const;
  Cell low_along(int x, const PhaseAxis::Part& part) const;
  Cell high_along(int x, const PhaseAxis::Part& part) const;
  void note_best(int x, int y);
  int best_state_low(int x, int y) const;

  void fill_upright(TreeBuilder& builder, int node, int x, int y, bool exact, bool flip) const;
  void fill_level(TreeBuilder& builder, int node, int x, int y, bool exact, bool flip) const;

  TableKind kind_;
  const PhaseAxis& across_;
  const PhaseAxis& along_;
  const std::vector<PhasedShape>& shapes_;
  const Objective& aim_;
  const MatchedTable* beyond_;
  const MatchedTable* above_;
  std::vector<Cell> cells_;
  std::vector<Step> steps_;
  std::vector<Cell> best_across_;
  std::vector<Cell> best_along_;
};

}  // namespace foldyard
