#include "goods/sewn.h"

namespace foldyard {
namespace {

std::string piece_of(GoodsKind kind, Piece piece) {
  if (kind == GoodsKind::cushion_cover) return piece == Piece::back ? "back" : "front";
  if (kind == GoodsKind::box_cover) return piece == Piece::strip ? "strip" : "top and bottom";
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

std::string kind_name(GoodsKind kind) {
  switch (kind) {
    case GoodsKind::one_piece_bag: return "one-piece bag";
    case GoodsKind::flat_pouch: return "flat pouch";
    case GoodsKind::two_panel_bag: return "two-panel bag";
    case GoodsKind::wrap_round_bag: return "wrap-round bag";
    case GoodsKind::cushion_cover: return "cushion cover";
    case GoodsKind::box_cover: return "box cover";
    default: return "strap";
  }
}

std::string piece_name(GoodsKind kind, Piece piece, bool lining) {
  const std::string name = piece_of(kind, piece);
  if (!lining) return name;
  return name.empty() ? "lining" : "lining of the " + name;
}

int needed(const Sewn& sewn) {
  const GoodsKind kind = sewn.goods.kind;
  if (kind == GoodsKind::two_panel_bag || sewn.piece == Piece::back) return 2;
  return kind == GoodsKind::box_cover && sewn.piece == Piece::body ? 2 : 1;
}

}  // namespace foldyard
