#pragma once

// From finished goods to the size a panel is cut, and back, both exact.
//
// With width w, height h, depth d, seam s, hem t and overlap o:
//
//   one_piece_bag, flat_pouch   w + d + 2s       ×  2(h + t) + d
//   two_panel_bag               w + d + 2s       ×  h + d/2 + s + t
//   wrap_round_bag              2(w + d) + 2s    ×  h + d/2 + s + t
//   cushion_cover   front       w + 2s           ×  h + 2s
//                   back        (w + o)/2 + s + t ×  h + 2s
//   box_cover       top         w + 2s           ×  h + 2s
//                   strip       d + 2s           ×  2(w + h) + 2s
//   strap                       h + 2t           ×  4w
//
// The first size lies from selvedge to selvedge unless the panel is turned. In
// a lining t is s.
//
// Refused: a size that is not above zero, or one a kind does not have; a depth,
// or width and overlap together, whose half is no whole unit of Length (nothing
// is rounded: a seam would take it up unseen). Problem::where is the field of
// Goods, or empty.
//
// Properties: finished_of undoes cut_size of the body. The bag's cloth within
// seams and hems is its box (base and four walls) and d² in its boxed corners.
//
// Example: a cushion cover 40 × 40 cm, seams 1 cm, edges at the zip 2.5 cm:
// front 42 × 42 cm, two backs 23.5 × 42 cm.
// Source: common practice, no source; check values in the tests.

#include "goods/sewn.h"
#include "measure/result.h"

namespace foldyard {

struct CutSize {
  Length across;
  Length along;
  bool operator==(const CutSize&) const = default;
};

// What is wrong with goods as they stand, if anything.
std::optional<Problem> goods_problem(const Sewn& sewn);

Result<CutSize> cut_size(const Sewn& sewn);

// The goods that a body of this size is sewn into; of `known` all but width and
// height counts. Refused besides: turnings or depth that take the whole panel.
Result<Goods> finished_of(Goods known, const CutSize& body);

}  // namespace foldyard
