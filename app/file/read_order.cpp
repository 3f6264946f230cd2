#include "file/read_order.h"

#include <algorithm>

#include "file/order_words.h"
#include "file/read_kept.h"

namespace foldyard {
namespace {

std::string short_name(const std::string& name) { return name.size() <= 80 ? name : name.substr(0, 77) + "…"; }

// What is said of a field that names nothing: patterns.
struct NoneNamed {
  const char* need;
  const char* what;
  const char* next;
};
constexpr NoneNamed kPanel{to_say("name a panel"), to_say("there is no panel \"%1\""),
                           to_say("write the name of a panel of this job")};
constexpr NoneNamed kProduct{to_say("name a product"), to_say("there is no product \"%1\""),
                             to_say("write the name of a product of this job")};
constexpr NoneNamed kWebbing{to_say("name a webbing"), to_say("there is no webbing \"%1\""),
                             to_say("write the name of a webbing of this job")};

// The place in the list of what has the name that the field gives; 0 where a
// fault was met.
template <class List>
int named(FieldReader& fields, const char* key, const List& list, const NoneNamed& none) {
  fields.need(key, none.need);
  const std::string name = fields.text(key);
  const auto at = std::find_if(list.begin(), list.end(), [&](const auto& each) { return each.name == name; });
  if (at != list.end()) return static_cast<int>(at - list.begin());
  fields.refuse(key, say(none.what, short_name(name)), say(none.next));
  return 0;
}

std::int64_t count(FieldReader& fields, const char* key, std::int64_t usual) { return fields.decimal(key, 0, usual); }

PanelCount read_panel_count(FieldReader& fields, const Job& job) {
  fields.only({"panel", "count", "from"});
  return {named(fields, "panel", job.panels, kPanel), count(fields, "count", 1), fields.texts("from")};
}

WebbingCut read_webbing_cut(FieldReader& fields, const Job& job) {
  fields.only({"webbing", "length", "count"});
  fields.need("length", to_say("say how long each is cut, like \"55 cm\""));
  return {named(fields, "webbing", job.webbings, kWebbing), fields.length("length", {}), count(fields, "count", 1)};
}

Webbing read_webbing(FieldReader& fields) {
  fields.only({"name", "roll", "price", "ends", "loss"});
  fields.need("name", to_say("give the webbing a name"));
  fields.need("roll", to_say("say how long a full roll of it is, like \"50 m\""));
  Webbing webbing;
  webbing.name = fields.text("name");
  webbing.roll = fields.length("roll", {});
  webbing.price = fields.worth("price", {});
  webbing.ends = fields.lengths("ends");
  webbing.loss = fields.length("loss", {});
  return webbing;
}

SalePrice read_price(FieldReader& fields) {
  fields.only({"of", "price"});
  fields.need("of", to_say("name a cloth or a mark of your rolls"));
  fields.need("price", to_say("say what a piece of it is sold for"));
  return {fields.text("of"), fields.worth("price", {})};
}

SewingStep read_sewing_step(FieldReader& fields) {
  fields.only({"name", "seconds", "timed"});
  fields.need("name", to_say("say what is done"));
  return {fields.text("name"), fields.seconds("seconds", {}), fields.times("timed")};
}

SewingOrder read_sewing(FieldReader& fields) {
  fields.only({"name", "steps"});
  fields.need("name", to_say("give this order of operations a name, like \"edges first\""));
  SewingOrder order{fields.text("name"), {}};
  for (FieldReader& entry : fields.list("steps")) order.steps.push_back(read_sewing_step(entry));
  return order;
}

CutPanels read_cut_panels(FieldReader& fields, const Job& job) {
  fields.only({"panel", "cloth", "marks", "count"});
  fields.need("cloth", to_say("name the cloth that the panels are cut from"));
  return {named(fields, "panel", job.panels, kPanel), fields.text("cloth"), fields.texts("marks"),
          count(fields, "count", 1)};
}

CutFromRoll read_cut_roll(FieldReader& fields) {
  fields.only({"roll", "cut", "left"});
  fields.need("roll", to_say("name the roll that was cut"));
  return {fields.text("roll"), fields.length("cut", {}), fields.length("left", {})};
}

CutRecord read_record(FieldReader& fields, const Job& job) {
  fields.only({"when", "lays", "panels", "spoilt", "rolls"});
  CutRecord record{fields.text("when"), count(fields, "lays", 0), {}};
  for (FieldReader& entry : fields.list_or_none("panels")) record.panels.push_back(read_cut_panels(entry, job));
  for (FieldReader& entry : fields.list_or_none("spoilt")) record.spoilt.push_back(read_cut_panels(entry, job));
  for (FieldReader& entry : fields.list_or_none("rolls")) record.rolls.push_back(read_cut_roll(entry));
  return record;
}

void read_notions(FieldReader fields, Notions& notions) {
  fields.only({"thread_factor", "reel", "reel_price", "label_price"});
  notions.thread_tenths = fields.decimal("thread_factor", 1, notions.thread_tenths);
  notions.reel = fields.length("reel", notions.reel);
  notions.reel_price = fields.worth("reel_price", notions.reel_price);
  notions.label_price = fields.worth("label_price", notions.label_price);
}

Product read_product(FieldReader& fields, const Job& job) {
  fields.only({"name", "panels", "webbing", "worth", "price", "prices", "seam", "labels", "sewing"});
  fields.need("name", to_say("give the product a name"));
  fields.need("worth", to_say("say what a piece is worth to you, like \"24\""));
  Product product;
  product.name = fields.text("name");
  for (FieldReader& entry : fields.list("panels")) product.panels.push_back(read_panel_count(entry, job));
  for (FieldReader& entry : fields.list_or_none("webbing")) product.webbing.push_back(read_webbing_cut(entry, job));
  product.worth = fields.worth("worth", {});
  if (fields.has("price")) product.price = fields.worth("price", {});
  for (FieldReader& entry : fields.list_or_none("prices")) product.prices.push_back(read_price(entry));
  product.seam = fields.length("seam", {});
  product.labels = count(fields, "labels", 0);
  for (FieldReader& entry : fields.list_or_none("sewing")) product.sewing.push_back(read_sewing(entry));
  return product;
}

ClothRule read_rule(FieldReader& fields) {
  fields.only({"of", "at_least", "at_most"});
  fields.need("of", to_say("name a cloth or a mark of your rolls"));
  ClothRule rule;
  rule.of = fields.text("of");
  rule.at_least = count(fields, "at_least", 0);
  if (fields.has("at_most")) rule.at_most = count(fields, "at_most", 0);
  return rule;
}

OrderLine read_line(FieldReader& fields, const Job& job) {
  fields.only({"product", "must", "may", "from", "each_at_least", "rules", "roll"});
  OrderLine line;
  line.product = named(fields, "product", job.products, kProduct);
  line.must = count(fields, "must", 0);
  line.may = count(fields, "may", 0);
  line.from = fields.texts("from");
  line.each_at_least = count(fields, "each_at_least", 0);
  for (FieldReader& entry : fields.list_or_none("rules")) line.rules.push_back(read_rule(entry));
  line.roll = fields.text("roll");
  return line;
}

std::vector<BatchAim> read_aims(FieldReader& fields) {
  const QStringList words = aim_words();
  std::vector<BatchAim> aims;
  const std::vector<std::string> given = fields.texts("aims");
  for (std::size_t i = 0; i < given.size(); ++i) {
    const qsizetype at = words.indexOf(QString::fromStdString(given[i]));
    if (at >= 0) aims.push_back(static_cast<BatchAim>(at));
    else fields.refuse(("aims[" + std::to_string(i) + "]").c_str(), say("this is no aim that is known here"),
                       say("write one of %1", words.join(QStringLiteral(", ")).toStdString()));
  }
  return aims;
}

}  // namespace

QStringList aim_words() { return {"cloth", "lifts", "minutes", "remnants"}; }

void read_order(FieldReader& file, Job& job) {
  for (FieldReader& entry : file.list_or_none("webbing")) job.webbings.push_back(read_webbing(entry));
  for (FieldReader& entry : file.list_or_none("products")) job.products.push_back(read_product(entry, job));
  read_notions(file.group("notions"), job.notions);
  job.sitting = file.seconds("sitting", job.sitting);
  for (FieldReader& entry : file.list_or_none("on_hand")) job.on_hand.push_back(read_cut_panels(entry, job));
  for (FieldReader& entry : file.list_or_none("history")) job.history.push_back(read_record(entry, job));
  if (!file.has("order")) return;
  FieldReader order = file.group("order");
  order.only({"lines", "aims", "kept"});
  for (FieldReader& entry : order.list("lines")) job.order.lines.push_back(read_line(entry, job));
  if (order.has("aims")) job.order.aims = read_aims(order);
  for (FieldReader& entry : order.list_or_none("kept")) job.order.kept.push_back(read_kept(entry, job));
}

}  // namespace foldyard
