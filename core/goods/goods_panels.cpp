#include "goods/goods_panels.h"

namespace foldyard {
namespace {

std::string suffix_of(const Sewn& sewn) {
  const std::string piece = piece_name(sewn.goods.kind, sewn.piece, sewn.lining);
  return piece.empty() ? "" : ", " + piece;
}

std::vector<Sewn> pieces_of(const Goods& goods, bool is_lined) {
  std::vector<Sewn> pieces;
  for (bool lining : {false, true}) {
    if (lining && !is_lined) continue;
    for (Piece piece : {Piece::body, Piece::back, Piece::strip}) {
      if (has_piece(goods.kind, piece)) pieces.push_back({goods, piece, lining});
    }
  }
  return pieces;
}

}  // namespace

Result<std::vector<GoodsPanel>> panels_of(const std::string& name, const Goods& goods,
                                          bool is_lined) {
  std::vector<GoodsPanel> panels;
  for (const Sewn& sewn : pieces_of(goods, is_lined)) {
    const Result<CutSize> size = cut_size(sewn);
    if (!size) return size.problem();
    panels.push_back({name + suffix_of(sewn), sewn, *size, needed(sewn)});
  }
  return panels;
}

std::string goods_name(const std::string& panel_name, const Sewn& sewn) {
  const std::string suffix = suffix_of(sewn);
  if (panel_name.size() <= suffix.size() || !panel_name.ends_with(suffix)) return panel_name;
  return panel_name.substr(0, panel_name.size() - suffix.size());
}

}  // namespace foldyard
