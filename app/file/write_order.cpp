#include "file/write_order.h"

#include "file/json_line.h"
#include "file/order_words.h"
#include "file/write_kept.h"
#include "job/decimal.h"
#include "job/defaults.h"
#include "measure/index.h"

namespace foldyard {
namespace {

// {…}, {…} on the line of its owner.
template <class List, class Writer>
std::string in_line(const List& list, Writer write) {
  std::string out;
  for (const auto& entry : list) out += (out.empty() ? "" : ", ") + write(entry);
  return '[' + out + ']';
}

template <class List>
const std::string& name_in(const List& list, int index) {
  return list[ix(index)].name;
}

std::string webbing_text(const Webbing& webbing, Unit unit) {
  JsonLine line(unit);
  line.text("name", webbing.name).length("roll", webbing.roll).worth("price", webbing.price);
  if (!webbing.ends.empty()) line.lengths("ends", webbing.ends);
  if (webbing.loss != Length()) line.length("loss", webbing.loss);
  return line.object();
}

std::string panel_count_text(const PanelCount& count, const Job& job) {
  JsonLine line(job.unit);
  line.text("panel", name_in(job.panels, count.panel)).whole("count", count.count);
  if (!count.from.empty()) line.texts("from", count.from);
  return line.object();
}

std::string webbing_cut_text(const WebbingCut& cut, const Job& job) {
  return JsonLine(job.unit)
      .text("webbing", name_in(job.webbings, cut.webbing))
      .length("length", cut.length)
      .whole("count", cut.count)
      .object();
}

std::string seconds_text(Duration time) { return write_decimal(time.ticks() / Duration::kTicksPerMs, 3); }

std::string sewing_step_text(const SewingStep& step) {
  JsonLine line(Unit::mm);
  line.text("name", step.name).seconds("seconds", step.usual);
  if (!step.timed.empty()) line.raw("timed", in_line(step.timed, seconds_text));
  return line.object();
}

std::string sewing_text(const SewingOrder& order) {
  return JsonLine(Unit::mm).text("name", order.name).raw("steps", in_line(order.steps, sewing_step_text)).object();
}

std::string cut_panels_text(const CutPanels& cut, const Job& job) {
  JsonLine line(job.unit);
  line.text("panel", name_in(job.panels, cut.panel)).text("cloth", cut.cloth);
  if (!cut.marks.empty()) line.texts("marks", cut.marks);
  return line.whole("count", cut.count).object();
}

std::string record_text(const CutRecord& record, const Job& job) {
  const auto panels = [&](const CutPanels& each) { return cut_panels_text(each, job); };
  const auto rolls = [&](const CutFromRoll& each) {
    return JsonLine(job.unit).text("roll", each.roll).length("cut", each.cut).length("left", each.left).object();
  };
  JsonLine line(job.unit);
  line.text("when", record.when).whole("lays", record.lays).raw("panels", in_line(record.panels, panels));
  if (!record.spoilt.empty()) line.raw("spoilt", in_line(record.spoilt, panels));
  if (!record.rolls.empty()) line.raw("rolls", in_line(record.rolls, rolls));
  return line.object();
}

std::string notions_text(const Notions& notions, Unit unit) {
  return JsonLine(unit)
      .decimal("thread_factor", notions.thread_tenths, 1)
      .length("reel", notions.reel)
      .worth("reel_price", notions.reel_price)
      .worth("label_price", notions.label_price)
      .object();
}

std::string product_text(const Product& product, const Job& job) {
  JsonLine line(job.unit);
  line.text("name", product.name).worth("worth", product.worth);
  line.raw("panels", in_line(product.panels, [&](const PanelCount& count) { return panel_count_text(count, job); }));
  if (!product.webbing.empty())
    line.raw("webbing", in_line(product.webbing, [&](const WebbingCut& cut) { return webbing_cut_text(cut, job); }));
  if (product.price) line.worth("price", *product.price);
  if (!product.prices.empty()) line.raw("prices", in_line(product.prices, [&](const SalePrice& price) {
    return JsonLine(job.unit).text("of", price.of).worth("price", price.price).object();
  }));
  if (product.seam != Length()) line.length("seam", product.seam);
  if (product.labels > 0) line.whole("labels", product.labels);
  if (!product.sewing.empty()) line.raw("sewing", in_line(product.sewing, sewing_text));
  return line.object();
}

std::string rule_text(const ClothRule& rule, Unit unit) {
  JsonLine line(unit);
  line.text("of", rule.of);
  if (rule.at_least > 0) line.whole("at_least", rule.at_least);
  if (rule.at_most) line.whole("at_most", *rule.at_most);
  return line.object();
}

std::string order_line_text(const OrderLine& order, const Job& job) {
  JsonLine line(job.unit);
  line.text("product", name_in(job.products, order.product)).whole("must", order.must);
  if (order.may > 0) line.whole("may", order.may);
  if (!order.from.empty()) line.texts("from", order.from);
  if (order.each_at_least > 0) line.whole("each_at_least", order.each_at_least);
  if (!order.rules.empty())
    line.raw("rules", in_line(order.rules, [&](const ClothRule& rule) { return rule_text(rule, job.unit); }));
  if (!order.roll.empty()) line.text("roll", order.roll);
  return line.object();
}

std::string order_text(const Job& job) {
  const auto line = [&](const OrderLine& each, Unit) { return order_line_text(each, job); };
  std::vector<std::string> aims;
  for (const BatchAim aim : job.order.aims) aims.push_back(aim_words()[static_cast<int>(aim)].toStdString());
  JsonLine text(job.unit);
  text.raw("lines", list_text(job.order.lines, job.unit, line)).texts("aims", aims);
  const auto kept = [&](const KeptLength& each, Unit) { return kept_text(each, job); };
  if (!job.order.kept.empty()) text.raw("kept", list_text(job.order.kept, job.unit, kept));
  return text.object();
}

}  // namespace

std::string order_fields(const Job& job) {
  std::string out;
  const auto field = [&out](const char* key, const std::string& value) {
    ((((out += "  \"") += key) += "\": ") += value) += ",\n";
  };
  const auto product = [&](const Product& each, Unit) { return product_text(each, job); };
  if (!job.webbings.empty()) field("webbing", list_text(job.webbings, job.unit, webbing_text));
  if (!job.products.empty()) field("products", list_text(job.products, job.unit, product));
  if (job.order != Order()) field("order", order_text(job));
  const auto panels = [&](const CutPanels& each, Unit) { return cut_panels_text(each, job); };
  const auto record = [&](const CutRecord& each, Unit) { return record_text(each, job); };
  if (!job.on_hand.empty()) field("on_hand", list_text(job.on_hand, job.unit, panels));
  if (!job.history.empty()) field("history", list_text(job.history, job.unit, record));
  const Job usual = default_job();
  if (job.notions != usual.notions) field("notions", notions_text(job.notions, job.unit));
  if (job.sitting != usual.sitting) field("sitting", seconds_text(job.sitting));
  if (job.cloth_price != usual.cloth_price)
    field("cloth_price_per_square_metre", quoted(write_decimal(job.cloth_price.parts(), 4)));
  return out;
}

}  // namespace foldyard
