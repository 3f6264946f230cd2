#pragma once

// Which pieces are made of the panels that are cut.
//
// counted one by one: a piece takes its panels from its own cloth, or, where they
// name cloths, from the one of these with the most left. What is counted is
// covered by panels, keeps within `must` and `may`, and breaks no rule's at_most.
//
// Example: 5 bodies and 8 pockets of a cloth, two pockets a piece: 4 pieces.

#include "batch/order_state.h"
#include "measure/index.h"

namespace foldyard {

class PieceCounter {
 public:
  PieceCounter(const OrderCase& order, const ByClothAndPanel& yield);

  // Makes one more; false where panels, the line or a rule do not let it.
  bool add(int line, int cloth);
  const PiecesMade& pieces() const { return pieces_; }
  // Of a line, over all cloths.
  std::int64_t made(int line) const { return made_[ix(line)]; }
  // Panels that no piece takes.
  const ByClothAndPanel& spare() const { return spare_; }

 private:
  bool may_add(int line, int cloth) const;
  int source_of(const PieceNeed& need, int cloth) const;

  const OrderCase& order_;
  ByClothAndPanel spare_;
  PiecesMade pieces_;
  std::vector<std::int64_t> made_;  // by line, over all cloths
};

// As many of the wanted pieces as the yield covers, lines of most worth first; then
// more, first where rules ask for them, then what must be made, then what may be.
PiecesMade pieces_from(const OrderCase& order, const ByClothAndPanel& yield, const PiecesMade& wanted);
// What these pieces take of the yield, by cloth and panel.
ByClothAndPanel panels_taken(const OrderCase& order, const PiecesMade& pieces, const ByClothAndPanel& yield);

}  // namespace foldyard
