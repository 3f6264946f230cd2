#pragma once

// What panels are sewn into: the finished goods, and a panel's place in them.
//
// Goods measures what is finished: width and height lie flat in front of you,
// depth is that of the base. seam is the allowance beyond each line of
// stitching. hem is all that is turned in at an open edge, every turning of it.
// What a kind does not have stays 0.
//
//   one_piece_bag    one panel, folded at the bottom, seams at both sides
//   flat_pouch       the same without depth
//   two_panel_bag    two panels, a seam at the bottom
//   wrap_round_bag   one panel around, one seam at a side and one at the bottom
//   cushion_cover    a front and two backs that overlap (or meet at a zip: 0)
//   box_cover        a top and a bottom and a strip around them; height is
//                    their other side, depth that of the strip
//   strap            a strip folded four times; height is the strap's length
//
// Boxed corners of the bags: each bottom corner is flattened and stitched
// across at half the depth from its tip.
//
// handles: how many, each cut `handle` long from webbing.
//
// Example: a one-piece bag 10 × 13 1/2 in on a base 7 in deep, seams of 1/2 in,
// hems of 1 in, is sewn from a panel of 18 × 36 in, twice as long as wide.

#include <array>
#include <string>

#include "measure/length.h"
#include "measure/words.h"

namespace foldyard {

enum class GoodsKind {
  one_piece_bag, flat_pouch, two_panel_bag, wrap_round_bag, cushion_cover, box_cover, strap
};

struct Goods {
  GoodsKind kind = GoodsKind::one_piece_bag;
  Length width = {};
  Length height = {};
  Length depth = {};
  Length seam = {};
  Length hem = {};
  Length overlap = {};
  int handles = 0;
  Length handle = {};
  bool operator==(const Goods&) const = default;
};

// body: the panel that all goods have; of a cushion cover the front, of a box
// cover the top and the bottom. back: of a cushion cover. strip: of a box cover.
enum class Piece { body, back, strip };

// lining: cut as its piece is, with a seam where that one has a hem.
struct Sewn {
  Goods goods;
  Piece piece = Piece::body;
  bool lining = false;
  bool operator==(const Sewn&) const = default;
};

inline constexpr std::array<GoodsKind, 7> kGoodsKinds = {
    GoodsKind::one_piece_bag,  GoodsKind::flat_pouch,    GoodsKind::two_panel_bag,
    GoodsKind::wrap_round_bag, GoodsKind::cushion_cover, GoodsKind::box_cover,
    GoodsKind::strap};

bool has_piece(GoodsKind kind, Piece piece);
bool has_depth(GoodsKind kind);    // a box cover must have some, a bag may
bool has_seam(GoodsKind kind);     // all but the strap
bool has_hem(GoodsKind kind);      // all but the box cover
bool has_handles(GoodsKind kind);  // the bags and the pouch
bool has_lining(GoodsKind kind);   // all but the strap

// In words: "one-piece bag".
Words kind_name(GoodsKind kind);
// In words: "front", "strip", "lining of the back"; empty for the only panel
// of its goods.
Words piece_name(GoodsKind kind, Piece piece, bool lining);
// How many panels like this one go into one piece of the goods.
int needed(const Sewn& sewn);

}  // namespace foldyard
