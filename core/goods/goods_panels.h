#pragma once

// All panels of some goods, as a maker would write them down.
//
// Named after the goods: "Log carrier" where there is one panel, else with its
// piece: "Oak cushion, front", "Oak cushion, back". With a lining, its panels
// follow: "Log carrier, lining". count: how many go into one piece.
//
// say: the piece in the maker's language. Names are data, not words: they stay as they are
// when the language changes.
//
// Refused as in cut_size.h.
//
// Example: a cushion cover gives a front (1) and a back (2).

#include <functional>
#include <string>
#include <vector>

#include "goods/cut_size.h"

namespace foldyard {

struct GoodsPanel {
  std::string name;
  Sewn sewn;
  CutSize size;
  int count = 1;
  bool operator==(const GoodsPanel&) const = default;
};

using SayPiece = std::function<std::string(const Words&)>;
std::string say_in_english(const Words& piece);

Result<std::vector<GoodsPanel>> panels_of(const std::string& name, const Goods& goods, bool is_lined,
                                          const SayPiece& say = say_in_english);

// The name of goods by those of their panels: what they share before the last comma. The
// first, where they share nothing so, or where a panel bears the name of the goods alone.
// REQUIRES a name.
std::string goods_name(const std::vector<std::string>& panel_names);

}  // namespace foldyard
