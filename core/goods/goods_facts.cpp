#include "goods/goods_facts.h"

#include "goods/cut_size.h"

namespace foldyard {
namespace {

constexpr std::int64_t kUnitsPerDecimetre = 100 * Length::kUnitsPerMm;
constexpr Wide kUnitsPerLitre = Wide{kUnitsPerDecimetre} * kUnitsPerDecimetre * kUnitsPerDecimetre;

}  // namespace

Wide box_units(const Goods& goods) {
  return Wide{goods.width.units()} * goods.depth.units() * goods.height.units();
}

std::int64_t centilitres(const Goods& goods) {
  return static_cast<std::int64_t>((box_units(goods) * 100 + kUnitsPerLitre / 2) / kUnitsPerLitre);
}

Length corner_line(const Goods& goods) {
  return has_handles(goods.kind) ? goods.depth / 2 : Length();
}

Length corner_square(const Goods& goods) {
  const Length line = corner_line(goods);
  return line.is_zero() ? line : line + goods.seam;
}

std::vector<Length> handle_marks(const Goods& goods) {
  if (goods.handles == 0) return {};
  const Length face = goods.width + goods.depth;
  std::vector<Length> marks = {goods.seam + face / 4, goods.seam + face * 3 / 4};
  if (goods.kind != GoodsKind::wrap_round_bag) {
    const Length panel = face + goods.seam * 2;
    return {panel / 4, panel * 3 / 4};
  }
  marks.push_back(marks[0] + face);
  marks.push_back(marks[1] + face);
  return marks;
}

Length webbing(const Goods& goods) { return goods.handle * goods.handles; }

Length handle_for_drop(Length drop, Length over, Length fixed) {
  return drop * 2 + over + fixed * 2;
}

}  // namespace foldyard
