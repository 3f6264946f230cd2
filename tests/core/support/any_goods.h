#pragma once

// Goods to try things on: short ways to write them, and random ones.

#include "goods/sewn.h"
#include "core/support/dice.h"
#include "core/support/lengths.h"

namespace foldyard::test {

inline Goods goods_of(GoodsKind kind, Length width, Length height, Length depth, Length seam,
                      Length hem) {
  Goods goods;
  goods.kind = kind;
  goods.width = width;
  goods.height = height;
  goods.depth = depth;
  goods.seam = seam;
  goods.hem = hem;
  return goods;
}

// All sizes in whole tenths of a millimetre, so that every half is exact.
inline Goods any_goods(Dice& dice, GoodsKind kind) {
  Goods goods;
  goods.kind = kind;
  goods.width = tenths(dice.from_to(50, 9000));
  goods.height = tenths(dice.from_to(50, 9000));
  if (has_depth(kind)) goods.depth = tenths(dice.from_to(1, 3000));
  if (has_seam(kind)) goods.seam = tenths(dice.from_to(0, 200));
  if (has_hem(kind)) goods.hem = tenths(dice.from_to(0, 500));
  if (kind == GoodsKind::cushion_cover) goods.overlap = tenths(dice.from_to(0, 1500));
  if (has_handles(kind)) goods.handles = dice.from_to(0, 2);
  if (goods.handles > 0) goods.handle = tenths(dice.from_to(1, 9000));
  return goods;
}

}  // namespace foldyard::test
