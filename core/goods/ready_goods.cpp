#include "goods/ready_goods.h"

#include <algorithm>

#include "goods/goods_facts.h"
#include "measure/words.h"

namespace foldyard {
namespace {

constexpr Length kSeam = Length::mm(12);
constexpr Length kDoubleHem = Length::mm(40);

Goods sized(GoodsKind kind, int width_mm, int height_mm, int depth_mm, Length hem) {
  Goods goods;
  goods.kind = kind;
  goods.width = Length::mm(width_mm);
  goods.height = Length::mm(height_mm);
  goods.depth = Length::mm(depth_mm);
  goods.seam = has_seam(kind) ? kSeam : Length();
  goods.hem = hem;
  return goods;
}

Goods with_handles(Goods goods, Length handle) {
  goods.handles = 2;
  goods.handle = handle;
  return goods;
}

Goods with_overlap(Goods goods, Length overlap) {
  goods.overlap = overlap;
  return goods;
}

// From a panel of 18 × 36 in with hems of 1 in, corners boxed at 3 1/2 in.
Goods half_yard_carrier() {
  Goods goods = sized(GoodsKind::one_piece_bag, 0, 0, 0, Length::inches64(64));
  goods.width = Length::inches64(10 * 64);
  goods.height = Length::inches64(13 * 64 + 32);
  goods.depth = Length::inches64(7 * 64);
  goods.seam = Length::inches64(32);
  return with_handles(goods, Length::mm(550));
}

const std::vector<ReadyGoods>& all() {
  // A drop of 25 cm for the shoulder, 5 cm over it, 2.5 cm sewn in at each end.
  static const Length kShoulder = handle_for_drop(Length::mm(250), Length::mm(50), Length::mm(25));
  static const Goods kTote = with_handles(
      sized(GoodsKind::two_panel_bag, 360, 380, 100, kDoubleHem), kShoulder);
  static const std::vector<ReadyGoods> kGoods = {
      {"box-cushion", to_say("Box cushion"), sized(GoodsKind::box_cover, 450, 450, 80, {})},
      {"carrier", to_say("Carrier"),
       with_handles(sized(GoodsKind::one_piece_bag, 380, 400, 140, kDoubleHem), Length::mm(550))},
      {"cushion", to_say("Cushion cover"),
       with_overlap(sized(GoodsKind::cushion_cover, 450, 450, 0, kDoubleHem), Length::mm(100))},
      {"half-yard-carrier", to_say("Half-yard carrier"), half_yard_carrier()},
      {"lined-tote", to_say("Lined tote"), kTote, true},
      {"peg-bag", to_say("Peg bag"), sized(GoodsKind::wrap_round_bag, 180, 200, 80, Length::mm(25))},
      {"pouch", to_say("Pouch"), sized(GoodsKind::flat_pouch, 240, 170, 0, kSeam)},
      {"strap", to_say("Strap"), sized(GoodsKind::strap, 25, 1200, 0, Length::mm(10))},
      {"tote", to_say("Tote"), kTote},
  };
  return kGoods;
}

}  // namespace

const std::vector<ReadyGoods>& ready_goods() { return all(); }

const ReadyGoods* goods_by_key(std::string_view key) {
  const auto found =
      std::find_if(all().begin(), all().end(), [&](const ReadyGoods& each) { return each.key == key; });
  return found == all().end() ? nullptr : &*found;
}

}  // namespace foldyard
