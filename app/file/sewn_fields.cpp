#include "file/sewn_fields.h"

#include "file/json_line.h"
#include "goods/cut_size.h"
#include "measure/index.h"

namespace foldyard {
namespace {

const QStringList kPieces = {"body", "back", "strip"};  // in the order of Piece

std::string key_of(GoodsKind kind) {
  std::string key = kind_name(kind);
  for (char& c : key) {
    if (c == ' ') c = '-';
  }
  return key;
}

QStringList kind_keys() {
  QStringList keys;
  for (GoodsKind kind : kGoodsKinds) keys << QString::fromStdString(key_of(kind));
  return keys;
}

Sewn read_sewn_fields(FieldReader& fields) {
  fields.only({"kind", "width", "height", "depth", "seam", "hem", "overlap", "handles", "handle",
               "piece", "lining"});
  fields.need("kind", say("write one of %1", kind_keys().join(QStringLiteral(", ")).toStdString()));
  Sewn sewn;
  Goods& goods = sewn.goods;
  goods.kind = kGoodsKinds[ix(fields.choice("kind", kind_keys(), 0))];
  if (has_seam(goods.kind)) fields.need("seam", to_say("give the allowance at a seam, like \"12 mm\""));
  if (has_hem(goods.kind)) fields.need("hem", to_say("give all that is turned in, like \"4 cm\""));
  goods.width = fields.length("width", {});
  goods.height = fields.length("height", {});
  goods.depth = fields.length("depth", {});
  goods.seam = fields.length("seam", {});
  goods.hem = fields.length("hem", {});
  goods.overlap = fields.length("overlap", {});
  goods.handles = fields.whole("handles", 0);
  goods.handle = fields.length("handle", {});
  sewn.piece = static_cast<Piece>(fields.choice("piece", kPieces, 0));
  sewn.lining = fields.flag("lining", false);
  return sewn;
}

void take_cut_size(FieldReader& fields, Panel& panel) {
  const Result<CutSize> size = cut_size(*panel.sewn);
  if (!size) return fields.refuse(size.problem().where.english().c_str(), size.problem().what, size.problem().next);
  panel.across = size->across;
  panel.along = size->along;
}

void take_finished_size(FieldReader& panel_fields, FieldReader& fields, Panel& panel) {
  if (panel.sewn->piece != Piece::body || panel.sewn->lining) {
    return fields.refuse("width", say("the field is missing"),
                         say("give the finished width and height; they do not follow from this piece"));
  }
  const Result<Goods> goods = finished_of(panel.sewn->goods, {panel.across, panel.along});
  if (goods) {
    panel.sewn->goods = *goods;
    return;
  }
  const Problem& problem = goods.problem();
  const bool is_own = problem.where == "across" || problem.where == "along";
  (is_own ? panel_fields : fields).refuse(problem.where.english().c_str(), problem.what, problem.next);
}

}  // namespace

void read_sewn(FieldReader& panel_fields, bool has_size, Panel& panel) {
  FieldReader fields = panel_fields.group("sewn");
  panel.sewn = read_sewn_fields(fields);
  const bool is_finished = fields.has("width") || fields.has("height") || !has_size;
  if (is_finished) {
    fields.need("width", to_say("give the finished width, like \"38 cm\""));
    fields.need("height", to_say("give the finished height, like \"40 cm\""));
  }
  if (fields.is_faulty()) return;
  if (!has_size) take_cut_size(fields, panel);
  else if (!is_finished) take_finished_size(panel_fields, fields, panel);
}

std::string sewn_text(const Sewn& sewn, Unit unit) {
  const Goods& goods = sewn.goods;
  JsonLine line(unit);
  line.text("kind", key_of(goods.kind)).length("width", goods.width).length("height", goods.height);
  if (!goods.depth.is_zero()) line.length("depth", goods.depth);
  if (has_seam(goods.kind)) line.length("seam", goods.seam);
  if (has_hem(goods.kind)) line.length("hem", goods.hem);
  if (!goods.overlap.is_zero()) line.length("overlap", goods.overlap);
  if (goods.handles > 0) line.whole("handles", goods.handles).length("handle", goods.handle);
  if (sewn.piece != Piece::body) {
    line.text("piece", kPieces[static_cast<int>(sewn.piece)].toStdString());
  }
  if (sewn.lining) line.flag("lining", true);
  return line.object();
}

}  // namespace foldyard
