#include "cli/goods_json.h"

#include <QJsonObject>

#include "file/exact_length.h"
#include "goods/goods_facts.h"
#include "job/decimal.h"
#include "job/goods_made.h"
#include "language/utf8.h"
#include "measure/index.h"

namespace foldyard {
namespace {

QJsonArray panels_json(const Job& job, const GoodsMade& made) {
  QJsonArray json;
  for (int index : made.panels) {
    const Panel& panel = job.panels[ix(index)];
    json.append(QJsonObject{{"panel", text(panel.name)}, {"count", needed(*panel.sewn)}});
  }
  return json;
}

QJsonArray lengths_json(const std::vector<Length>& lengths, Unit unit) {
  QJsonArray json;
  for (Length length : lengths) json.append(text(exact_length(length, unit)));
  return json;
}

QJsonObject made_json(const Job& job, const GoodsMade& made) {
  const Goods& goods = made.goods;
  const auto length = [&](Length each) { return text(exact_length(each, job.unit)); };
  return {{"name", text(made.name)},
          {"kind", text(kind_name(goods.kind))},
          {"pieces", static_cast<qint64>(made.pieces)},
          {"panels", panels_json(job, made)},
          {"width", length(goods.width)},
          {"height", length(goods.height)},
          {"depth", length(goods.depth)},
          {"litres", text(write_decimal(centilitres(goods), 2))},
          {"corner", length(corner_line(goods))},
          {"handle_marks", lengths_json(handle_marks(goods), job.unit)},
          {"webbing", length(webbing(goods))}};
}

}  // namespace

QJsonArray goods_json(const Job& job, const Plan& plan) {
  QJsonArray json;
  for (const GoodsMade& made : goods_made(job, plan.yield)) json.append(made_json(job, made));
  return json;
}

}  // namespace foldyard
