#include "cli/batch_json.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include "cli/plan_json.h"
#include "file/exact_length.h"
#include "job/roll_of.h"
#include "language/utf8.h"
#include "measure/index.h"

namespace foldyard {
namespace {

class BatchWriter {
 public:
  explicit BatchWriter(const BatchAnswer& answer) : a_(answer) {}

  QJsonObject json() const {
    const BatchPlan& plan = a_.plan;
    return {{"foldyard_answer", kAnswerVersion}, {"verb", "batch"},
            {"filled", exact_worth(plan.filled)}, {"filled_bound", exact_worth(plan.filled_bound)},
            {"cost", exact_worth(plan.cost)}, {"cost_bound", exact_worth(plan.cost_bound)},
            {"proved", plan.proved}, {"note", text(plan.note)}, {"seconds", seconds(plan.time)},
            {"made", list(plan.made, &BatchWriter::made)}, {"lacking", list(plan.shortfalls, &BatchWriter::lacking)},
            {"lays", list(plan.lays, &BatchWriter::lay)}, {"rolls", list(plan.rolls, &BatchWriter::roll)},
            {"webbing", list(a_.webbing, &BatchWriter::webbing)}, {"money", money()},
            {"sittings", list(a_.sittings, &BatchWriter::sitting)}};
  }

 private:
  template <class List, class Entry>
  QJsonArray list(const List& entries, QJsonObject (BatchWriter::*write)(const Entry&) const) const {
    QJsonArray array;
    for (const Entry& entry : entries) array.append((this->*write)(entry));
    return array;
  }

  QString product(int line) const {
    const OrderLine& order = a_.job.order.lines[ix(line)];
    return text(a_.job.products[ix(order.product)].name);
  }
  QString length(Length value) const { return text(exact_length(value, a_.job.unit)); }
  QString name(const Plan& plan) const { return text(roll_of(a_.job, plan).name); }

  QJsonObject made(const Made& made) const {
    return {{"line", made.line}, {"product", product(made.line)}, {"cloth", text(made.cloth)},
            {"pieces", static_cast<qint64>(made.pieces)}};
  }
  QJsonObject lacking(const Shortfall& lack) const {
    return {{"line", lack.line}, {"product", product(lack.line)}, {"pieces", static_cast<qint64>(lack.pieces)},
            {"cloth", text(lack.cloth)}, {"needed", length(lack.needed)}};
  }
  QJsonObject stacked(const StackedLength& stacked) const {
    const Plan& plan = a_.plan.rolls[ix(stacked.roll)];
    return {{"roll", name(plan)}, {"length", stacked.length}};
  }
  QJsonObject lay(const BatchLay& lay) const {
    return {{"lengths", list(lay.lengths, &BatchWriter::stacked)}, {"each", length(pattern_of(a_.plan, lay).length)}};
  }
  QJsonObject roll(const Plan& plan) const {
    QJsonObject json = plan_json(a_.job, plan);
    json["roll"] = name(plan);
    return json;
  }
  QJsonObject cuts(const WebbingPlan& plan, const LengthCuts& cuts) const {
    const Webbing& webbing = a_.job.webbings[ix(plan.webbing)];
    QJsonArray lengths;
    for (std::size_t i = 0; i < plan.wanted.size(); ++i)
      lengths.append(QJsonObject{{"length", length(plan.wanted[i].length)}, {"count", static_cast<qint64>(cuts.counts[i])}});
    QJsonObject json{{"rolls", static_cast<qint64>(cuts.rolls)}, {"lengths", lengths}};
    if (cuts.end >= 0) json["end"] = length(webbing.ends[ix(cuts.end)]);
    return json;
  }
  QJsonObject webbing(const WebbingPlan& plan) const {
    QJsonArray all;
    for (const LengthCuts& each : plan.cuts.cuts) all.append(cuts(plan, each));
    return {{"webbing", text(a_.job.webbings[ix(plan.webbing)].name)},
            {"rolls_to_buy", static_cast<qint64>(plan.cuts.rolls)}, {"bound", static_cast<qint64>(plan.cuts.bound)},
            {"proved", plan.cuts.proved}, {"price", exact_worth(plan.price)}, {"cuts", all}};
  }
  QJsonObject money() const {
    const BatchMoney& money = a_.money;
    QJsonObject json{{"income", exact_worth(money.income)}, {"cloth", exact_worth(money.cloth)},
                     {"webbing", exact_worth(money.webbing)}, {"thread", exact_worth(money.thread)},
                     {"reels", static_cast<qint64>(money.reels)}, {"labels", exact_worth(money.labels)},
                     {"earned", exact_worth(money.earned())}, {"cutting_seconds", seconds(money.cutting)},
                     {"sewing_seconds", seconds(money.sewing)}, {"times_are_assumed", money.is_assumed}};
    if (money.an_hour()) json["an_hour"] = exact_worth(*money.an_hour());
    return json;
  }
  QJsonObject sitting(const Sitting& sitting) const {
    QJsonArray sewn;
    for (const SewnPieces& each : sitting.sewn)
      sewn.append(QJsonObject{{"product", product(each.line)}, {"pieces", static_cast<qint64>(each.pieces)}});
    return {{"sewn", sewn}, {"seconds", seconds(sitting.time)}};
  }

  const BatchAnswer& a_;
};

}  // namespace

QString batch_json_text(const BatchAnswer& answer) {
  return QString::fromUtf8(QJsonDocument(BatchWriter(answer).json()).toJson());
}

}  // namespace foldyard
