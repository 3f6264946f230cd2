#pragma once

// AroundCuts: how a rectangle of folded cloth is cut so that no panel lies on
// a flaw of it (a hole).
//
// The four sides of a hole are cut off, each where a panel can end that lies
// beside it, and cut for panels as the cut tables know best; what is left
// around the hole is left. Two orders are tried, each with every pair of places
// (thinned to the pairs of sixteen; of five if there are more holes):
//   strips left and right of the hole over the whole height, then what lies
//   before and behind it, then what is left beside it;
//   strips before and behind it over the whole width, then what lies beside it,
//   then what is left before and behind it.
// A strip that holds another hole is cut the same way, two deep at most.
//
// joint: the rectangle's left rim is a fold edge that joins two plies. Holes are
// then those of both plies, and everything beyond the joint counts twice.
//
// Example: 1000 × 900 with a hole on 500 … 520 × 400 … 410 and shapes of 250 ×
// 900: two strips left of it, one right of it (230 remain).

#include <array>
#include <vector>

#include "cutting/cut_table.h"
#include "cutting/tree_builder.h"

namespace foldyard {

class AroundCuts {
 public:
  // open: for what no joint bounds, for twice the copies where there is a joint.
  // REQUIRES both tables to live as long as this.
  AroundCuts(const CutTable& open, const CutTable* joint, Length fold_trim)
      : open_(open), joint_(joint), trim_(fold_trim) {}

  // Gain of the rectangle in one length, cost of its cuts.
  Cell best(const Rect& whole, const std::vector<Rect>& holes) const;
  // Fills the node with that cutting.
  void fill(TreeBuilder& builder, int node, const std::vector<Rect>& holes) const;

 private:
  enum class Side { left, right, before, behind };
  // Cuts a strip off a side of what is left: so wide, or as wide as fits up to
  // the hole (size 0), or nothing (negative).
  struct Peel {
    Side side;
    Length size;
  };
  using Peels = std::array<Peel, 6>;  // in order; those that do not fit are left out
  struct Piece {
    Rect piece;
    Rect rest;
    Direction direction;
    Length at;
    bool is_first;  // of the two parts
  };

  bool is_joined(const Rect& rect, const Rect& whole) const {
    return joint_ && rect.across.from == whole.across.from;
  }
  const Grid& across(bool joined) const { return joined ? joint_->across() : open_.across(); }
  std::vector<Length> places_up_to(const Grid& grid, Length limit, std::size_t most) const;
  Length widest(const Grid& grid, Length limit) const;
  bool part(const Rect& rest, const Rect& whole, const Rect& hole, const Peel& peel, Piece& piece) const;
  Cell clean(const Rect& rect, bool joined) const;
  void fill_clean(TreeBuilder& builder, int node, bool joined) const;
  Cell piece_cell(const Piece& p, const Rect& whole, const std::vector<Rect>& holes, int depth) const;
  Cell gain_of(const Peels& peels, const Rect& rect, const Rect& whole, const Rect& hole,
               const std::vector<Rect>& holes, int depth) const;
  // The places at which strips may end on two opposite sides of a hole.
  struct Ends {
    std::vector<Length> low, high;
  };
  Ends ends(const Grid& low, const Grid& high, Span rect, Span hole, std::size_t most) const;
  Cell best_of(const Rect& rect, const Rect& whole, const std::vector<Rect>& holes, int depth,
               Peels* chosen) const;
  void fill_part(TreeBuilder& builder, int node, const Rect& whole, const std::vector<Rect>& holes,
                 int depth) const;
  bool pays(const Cell& cell, Length travel) const;

  const CutTable& open_;
  const CutTable* joint_;
  Length trim_;
};

}  // namespace foldyard
