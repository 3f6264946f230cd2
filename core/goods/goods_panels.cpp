#include "goods/goods_panels.h"

#include <algorithm>

namespace foldyard {
namespace {

std::string suffix_of(const Sewn& sewn, const SayPiece& say) {
  const Words piece = piece_name(sewn.goods.kind, sewn.piece, sewn.lining);
  return piece.empty() ? "" : ", " + say(piece);
}

std::string head_of(const std::string& name) { return name.substr(0, name.rfind(", ")); }

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

std::string say_in_english(const Words& piece) { return piece; }

Result<std::vector<GoodsPanel>> panels_of(const std::string& name, const Goods& goods, bool is_lined,
                                          const SayPiece& say) {
  std::vector<GoodsPanel> panels;
  for (const Sewn& sewn : pieces_of(goods, is_lined)) {
    const Result<CutSize> size = cut_size(sewn);
    if (!size) return size.problem();
    panels.push_back({name + suffix_of(sewn, say), sewn, *size, needed(sewn)});
  }
  return panels;
}

std::string goods_name(const std::vector<std::string>& panel_names) {
  const std::string& first = panel_names.front();
  const std::string head = head_of(first);
  const bool is_shared = std::all_of(panel_names.begin(), panel_names.end(),
                                     [&](const std::string& name) { return name != head && head_of(name) == head; });
  return is_shared && !head.empty() ? head : first;
}

}  // namespace foldyard
