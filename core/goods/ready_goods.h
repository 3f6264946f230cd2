#pragma once

// Goods to start from, with sizes of our own; change what does not fit.
//
// key: for command lines, "tote". is_lined: with panels for a lining.
//
// Example: "tote": a two-panel bag 36 × 38 cm on a base 10 cm deep, handles of
// 60 cm.
// Source of the turnings: seams of 12 mm (interiorgame.info, soft furnishing),
// a double hem turned 2 cm twice (common practice, no source).

#include <string_view>
#include <vector>

#include "goods/sewn.h"

namespace foldyard {

struct ReadyGoods {
  std::string_view key;
  std::string_view name;
  Goods goods;
  bool is_lined = false;
};

// In alphabetical order of their keys. Each has its panels (goods_panels.h).
const std::vector<ReadyGoods>& ready_goods();
// Null where there are no such goods.
const ReadyGoods* goods_by_key(std::string_view key);

}  // namespace foldyard
