#include "goods/sewn.h"

namespace foldyard {
namespace {

Words piece_of(GoodsKind kind, Piece piece) {
  if (kind == GoodsKind::cushion_cover) return piece == Piece::back ? say("back") : say("front");
  if (kind == GoodsKind::box_cover) return piece == Piece::strip ? say("strip") : say("top and bottom");
  return {};
}

bool is_bag(GoodsKind kind) {
  return kind == GoodsKind::one_piece_bag || kind == GoodsKind::two_panel_bag ||
         kind == GoodsKind::wrap_round_bag;
}

}  // namespace

bool has_piece(GoodsKind kind, Piece piece) {
  if (piece == Piece::back) return kind == GoodsKind::cushion_cover;
  if (piece == Piece::strip) return kind == GoodsKind::box_cover;
  return true;
}

bool has_depth(GoodsKind kind) { return is_bag(kind) || kind == GoodsKind::box_cover; }
bool has_seam(GoodsKind kind) { return kind != GoodsKind::strap; }
bool has_hem(GoodsKind kind) { return kind != GoodsKind::box_cover; }
bool has_handles(GoodsKind kind) { return is_bag(kind) || kind == GoodsKind::flat_pouch; }
bool has_lining(GoodsKind kind) { return kind != GoodsKind::strap; }

Words kind_name(GoodsKind kind) {
  switch (kind) {
    case GoodsKind::one_piece_bag: return say("one-piece bag");
    case GoodsKind::flat_pouch: return say("flat pouch");
    case GoodsKind::two_panel_bag: return say("two-panel bag");
    case GoodsKind::wrap_round_bag: return say("wrap-round bag");
    case GoodsKind::cushion_cover: return say("cushion cover");
    case GoodsKind::box_cover: return say("box cover");
    default: return say("strap");
  }
}

Words piece_name(GoodsKind kind, Piece piece, bool lining) {
  const Words name = piece_of(kind, piece);
  if (!lining) return name;
  return name.empty() ? say("lining") : say("lining of the %1", name);
}

int needed(const Sewn& sewn) {
  const GoodsKind kind = sewn.goods.kind;
  if (kind == GoodsKind::two_panel_bag || sewn.piece == Piece::back) return 2;
  return kind == GoodsKind::box_cover && sewn.piece == Piece::body ? 2 : 1;
}

}  // namespace foldyard
