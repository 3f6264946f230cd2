#include "goods/turnings.h"

namespace foldyard {
namespace {

Turnings of_cushion(const Sewn& sewn, Turning seam, Turning hem) {
  return {seam, sewn.piece == Piece::back ? hem : seam, seam, seam};
}

}  // namespace

Turnings turnings_of(const Sewn& sewn) {
  const Turning seam{sewn.goods.seam, true};
  const Turning hem = sewn.lining ? seam : Turning{sewn.goods.hem, false};
  switch (sewn.goods.kind) {
    case GoodsKind::one_piece_bag:
    case GoodsKind::flat_pouch: return {seam, seam, hem, hem};
    case GoodsKind::two_panel_bag:
    case GoodsKind::wrap_round_bag: return {seam, seam, seam, hem};
    case GoodsKind::cushion_cover: return of_cushion(sewn, seam, hem);
    case GoodsKind::box_cover: return {seam, seam, seam, seam};
    case GoodsKind::strap: return {hem, hem, {}, {}};
  }
  return {};
}

Turnings turned(const Turnings& turnings) {
  return {turnings.near, turnings.far, turnings.left, turnings.right};
}

}  // namespace foldyard
