#pragma once

// All panels of some goods, as a maker would write them down.
//
// Named after the goods: "Log carrier" where there is one panel, else with its
// piece: "Oak cushion, front", "Oak cushion, back". With a lining, its panels
// follow: "Log carrier, lining". count: how many go into one piece.
//
// Refused as in cut_size.h.
//
// Example: a cushion cover gives a front (1) and a back (2).

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

Result<std::vector<GoodsPanel>> panels_of(const std::string& name, const Goods& goods,
                                          bool is_lined);

// The name of the goods that a panel of this name is sewn into: without its
// piece, if it ends in it.
std::string goods_name(const std::string& panel_name, const Sewn& sewn);

}  // namespace foldyard
