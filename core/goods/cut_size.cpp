#include "goods/cut_size.h"

#include "measure/words.h"

namespace foldyard {
namespace {

bool has_halved_depth(GoodsKind kind) { return has_depth(kind) && kind != GoodsKind::box_cover; }

// A field that must be above zero, may be, or must be zero.
enum class Wanted { some, any, none };

std::optional<Problem> size_problem(const char* field, Length size, Wanted wanted,
                                    const Words& kind) {
  if (size < Length() || (wanted == Wanted::some && size.is_zero())) {
    return Problem{field, say("a %1 needs more than zero here", kind), say("correct it")};
  }
  if (wanted == Wanted::none && !size.is_zero()) {
    return Problem{field, say("a %1 has no such size", kind), say("leave it out")};
  }
  return {};
}

Wanted any_if(bool has) { return has ? Wanted::any : Wanted::none; }

std::optional<Problem> sizes_problem(const Goods& goods) {
  const GoodsKind kind = goods.kind;
  const Wanted depth = kind == GoodsKind::box_cover ? Wanted::some : any_if(has_depth(kind));
  const struct {
    const char* field;
    Length size;
    Wanted wanted;
  } fields[] = {
      {"width", goods.width, Wanted::some},
      {"height", goods.height, Wanted::some},
      {"depth", goods.depth, depth},
      {"seam", goods.seam, any_if(has_seam(kind))},
      {"hem", goods.hem, any_if(has_hem(kind))},
      {"overlap", goods.overlap, any_if(kind == GoodsKind::cushion_cover)},
      {"handle", goods.handle, goods.handles > 0 ? Wanted::some : Wanted::none},
  };
  for (const auto& each : fields) {
    if (auto problem = size_problem(each.field, each.size, each.wanted, kind_name(kind))) {
      return problem;
    }
  }
  return {};
}

std::optional<Problem> handles_problem(const Goods& goods) {
  if (goods.handles == 0 || (goods.handles > 0 && has_handles(goods.kind))) return {};
  if (goods.handles < 0) return Problem{"handles", say("there are less than none"), say("give 0 or more")};
  return Problem{"handles", say("a %1 has no handles", kind_name(goods.kind)), say("leave them out")};
}

std::optional<Problem> half_problem(const Goods& goods) {
  if (has_halved_depth(goods.kind) && !goods.depth.is_even()) {
    return Problem{"depth", say("half of it is no whole number of 1/320 mm"),
                   say("give a depth that can be halved, such as one in whole millimetres")};
  }
  if (goods.kind == GoodsKind::cushion_cover && !(goods.width + goods.overlap).is_even()) {
    return Problem{"overlap", say("half of width and overlap is no whole number of 1/320 mm"),
                   say("give both in whole millimetres or in eighths of an inch")};
  }
  return {};
}

std::optional<Problem> piece_problem(const Sewn& sewn) {
  const Words kind = kind_name(sewn.goods.kind);
  if (!has_piece(sewn.goods.kind, sewn.piece)) {
    return Problem{"piece", say("a %1 has no such piece", kind), say("leave it out")};
  }
  if (sewn.lining && !has_lining(sewn.goods.kind)) {
    return Problem{"lining", say("a %1 has no lining", kind), say("leave it out")};
  }
  return {};
}

CutSize size_of(const Sewn& sewn) {
  const auto& [kind, w, h, d, s, hem, o, handles, handle] = sewn.goods;
  const Length t = sewn.lining ? s : hem;
  switch (kind) {
    case GoodsKind::one_piece_bag:
    case GoodsKind::flat_pouch: return {w + d + s * 2, (h + t) * 2 + d};
    case GoodsKind::two_panel_bag: return {w + d + s * 2, h + d / 2 + s + t};
    case GoodsKind::wrap_round_bag: return {(w + d) * 2 + s * 2, h + d / 2 + s + t};
    case GoodsKind::cushion_cover:
      return {sewn.piece == Piece::back ? (w + o) / 2 + s + t : w + s * 2, h + s * 2};
    case GoodsKind::box_cover:
      if (sewn.piece == Piece::strip) return {d + s * 2, (w + h) * 2 + s * 2};
      return {w + s * 2, h + s * 2};
    default: return {h + t * 2, w * 4};
  }
}

Problem no_whole(const char* field, const Words& what) {
  return {field, what, say("give a size in whole millimetres or in eighths of an inch")};
}

Problem no_half(const char* field) {
  return no_whole(field, say("the half of it that the goods need is no whole number of 1/320 mm"));
}

// Width and height of a bag or pouch by its body.
Result<Goods> finished_bag(Goods goods, const CutSize& body) {
  const Length flat = body.across - goods.seam * 2;
  const bool is_round = goods.kind == GoodsKind::wrap_round_bag;
  if (is_round && !flat.is_even()) return no_half("across");
  goods.width = (is_round ? flat / 2 : flat) - goods.depth;
  if (is_round || goods.kind == GoodsKind::two_panel_bag) {
    goods.height = body.along - goods.depth / 2 - goods.seam - goods.hem;
    return goods;
  }
  const Length both_sides = body.along - goods.depth;
  if (!both_sides.is_even()) return no_half("along");
  goods.height = both_sides / 2 - goods.hem;
  return goods;
}

Result<Goods> finished_strap(Goods goods, const CutSize& body) {
  if (body.along.units() % 4 != 0) return no_whole("along", say("the quarter of it that the goods need is no whole number of 1/320 mm"));
  goods.width = body.along / 4;
  goods.height = body.across - goods.hem * 2;
  return goods;
}

Result<Goods> finished(Goods goods, const CutSize& body) {
  if (goods.kind == GoodsKind::strap) return finished_strap(goods, body);
  if (has_handles(goods.kind)) return finished_bag(goods, body);
  goods.width = body.across - goods.seam * 2;
  goods.height = body.along - goods.seam * 2;
  return goods;
}

}  // namespace

std::optional<Problem> goods_problem(const Sewn& sewn) {
  if (auto problem = handles_problem(sewn.goods)) return problem;
  if (auto problem = sizes_problem(sewn.goods)) return problem;
  if (auto problem = piece_problem(sewn)) return problem;
  return half_problem(sewn.goods);
}

Result<CutSize> cut_size(const Sewn& sewn) {
  if (auto problem = goods_problem(sewn)) return *problem;
  return size_of(sewn);
}

Result<Goods> finished_of(Goods known, const CutSize& body) {
  const Result<Goods> goods = finished(known, body);
  if (!goods) return goods;
  if (goods->width <= Length() || goods->height <= Length()) {
    return Problem{goods->width <= Length() ? "across" : "along",
                   say("seams, hems and depth take all of the panel"),
                   say("give a larger panel or smaller turnings")};
  }
  if (auto problem = goods_problem({*goods})) return *problem;
  return goods;
}

}  // namespace foldyard
