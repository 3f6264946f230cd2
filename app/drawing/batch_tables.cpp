#include "drawing/batch_tables.h"

#include <algorithm>

#include "cloth/cloth_of.h"
#include "drawing/batch_rows.h"
#include "drawing/words.h"
#include "language/local_numbers.h"
#include "language/tr.h"
#include "language/utf8.h"
#include "measure/index.h"

namespace foldyard {
namespace {

const Product& product_of(const Job& job, int line) {
  return job.products[ix(job.order.lines[ix(line)].product)];
}

BatchTable made_table(const BatchAnswer& a) {
  BatchTable table{BatchTableKind::made, tr("What is made"), {tr("product"), tr("cloth"), tr("pieces")}, {}, {}};
  for (const Made& made : a.plan.made)
    table.rows.push_back({text(product_of(a.job, made.line).name), text(made.cloth), QString::number(made.pieces)});
  return table;
}

BatchTable lacking_table(const BatchAnswer& a) {
  BatchTable table{BatchTableKind::lacking, tr("What lacks"),
                   {tr("product"), tr("pieces"), tr("cloth to get"), tr("about")}, {},
                   tr("About: by the best yield of one length, a guide and no plan.")};
  for (const Shortfall& lack : a.plan.shortfalls)
    table.rows.push_back({text(product_of(a.job, lack.line).name), QString::number(lack.pieces), text(lack.cloth),
                          lack.needed.is_zero() ? QStringLiteral("–") : length_words(lack.needed, a.job.unit)});
  return table;
}

BatchTable webbing_table(const BatchAnswer& a) {
  BatchTable table{BatchTableKind::webbing, tr("Webbing"),
                   {tr("webbing"), tr("from"), tr("cut", "lengths of webbing"), tr("left")}, {}, {}};
  for (const WebbingPlan& plan : a.webbing) {
    for (const LengthCuts& cuts : plan.cuts.cuts) table.rows.push_back(webbing_row(a.job, plan, cuts));
  }
  return table;
}

// A row for each length: the board it is wound round, and how often.
BatchTable winding_table(const BatchAnswer& a) {
  BatchTable table{BatchTableKind::winding, tr("Boards to wind it round"),
                   {tr("webbing"), tr("lengths"), tr("girth of the board"), tr("turns")}, {},
                   tr("Turns lie side by side and are cut through at one edge; the girth is the length with its loss.")};
  for (const WebbingPlan& plan : a.webbing) {
    const Webbing& webbing = a.job.webbings[ix(plan.webbing)];
    for (const WantedLength& wanted : plan.wanted) {
      const Winding wound = winding(webbing, wanted.length, wanted.count);
      table.rows.push_back({text(webbing.name), tr("%1 of %2").arg(wanted.count).arg(length_words(wanted.length, a.job.unit)),
                            length_words(wound.girth, a.job.unit), QString::number(wound.turns)});
    }
  }
  return table;
}

BatchTable to_buy_table(const BatchAnswer& a) {
  BatchTable table{BatchTableKind::to_buy, tr("To buy"), {tr("what"), tr("how many"), tr("price")}, {}, {}};
  for (const WebbingPlan& plan : a.webbing) {
    const Webbing& webbing = a.job.webbings[ix(plan.webbing)];
    if (plan.cuts.rolls == 0) continue;
    const QString what = tr("%1, rolls of %2").arg(text(webbing.name), length_words(webbing.roll, a.job.unit));
    table.rows.push_back({plan.cuts.proved ? what : tr("%1 (%2 may do)").arg(what, QString::number(plan.cuts.bound)),
                          QString::number(plan.cuts.rolls), worth_words(plan.price)});
  }
  if (a.money.reels > 0)
    table.rows.push_back({tr("thread, reels of %1").arg(length_words(a.job.notions.reel, a.job.unit)),
                          QString::number(a.money.reels), worth_words(a.money.thread)});
  if (a.money.label_count > 0)
    table.rows.push_back({tr("labels"), QString::number(a.money.label_count), worth_words(a.money.labels)});
  return table;
}

BatchTable money_table(const BatchAnswer& a) {
  const BatchMoney& money = a.money;
  BatchTable table{BatchTableKind::money, tr("Time and money"), {tr("what"), tr("how much")}, {}, {}};
  const auto row = [&](const QString& what, const QString& value) { table.rows.push_back({what, value}); };
  row(tr("cutting"), minutes_words(money.cutting));
  row(tr("sewing"), minutes_words(money.sewing));
  row(tr("sold for"), worth_words(money.income));
  row(tr("cloth cut off"), worth_words(money.cloth));
  row(tr("webbing, thread, labels"), worth_words(money.webbing + money.thread + money.labels));
  row(tr("left for the work"), worth_words(money.earned()));
  if (money.an_hour()) row(tr("for an hour of it"), worth_words(*money.an_hour()));
  if (money.is_assumed) table.note = tr("Steps that have never been timed count with their assumed times.");
  return table;
}

BatchTable sittings_table(const BatchAnswer& a) {
  BatchTable table{BatchTableKind::sittings, tr("Sittings"), {tr("no", "column"), tr("what"), tr("takes")}, {}, {}};
  for (const Sitting& sitting : a.sittings) {
    QStringList sewn;
    for (const SewnPieces& each : sitting.sewn)
      sewn << QStringLiteral("%1 × %2").arg(each.pieces).arg(text(product_of(a.job, each.line).name));
    table.rows.push_back({QString::number(table.rows.size() + 1),
                          sitting.is_cutting() ? tr("cut", "what is done in a sitting") : tr("sew %1").arg(sewn.join(QStringLiteral(", "))),
                          minutes_words(sitting.time)});
  }
  return table;
}

std::int64_t lengths_in(const BatchPlan& plan) {
  std::int64_t lengths = 0;
  for (const Plan& roll : plan.rolls) lengths += std::ssize(roll.lengths);
  return lengths;
}

// By product, in the order of the job.
QString pieces_words(const BatchAnswer& a) {
  const std::vector<std::int64_t> pieces = pieces_of(a.job, a.plan);
  QStringList words;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    if (pieces[i] > 0) words << QStringLiteral("%1 × %2").arg(pieces[i]).arg(text(a.job.products[i].name));
  }
  return words.join(QStringLiteral(", "));
}

// In per cent, rounded up, so that it never sounds nearer than it is.
QString gap_share(const BatchAnswer& a) {
  const Worth gap = a.plan.cost - a.plan.cost_bound;
  const auto tenths = (gap.parts() * 1000 + a.money.cloth.parts() - 1) / a.money.cloth.parts();
  return local_numbers(QStringLiteral("%1.%2").arg(tenths / 10).arg(tenths % 10));
}

}  // namespace

BatchAnswer batch_answer(Job job, BatchPlan plan) {
  std::vector<WebbingPlan> webbing = plan_webbing(job, pieces_of(job, plan));
  const BatchMoney money = batch_money(job, plan, webbing);
  std::vector<Sitting> sittings = batch_schedule(job, plan);
  return {std::move(job), std::move(plan), std::move(webbing), money, std::move(sittings)};
}

std::vector<BatchTable> batch_tables(const BatchAnswer& answer) {
  std::vector<BatchTable> tables;
  for (BatchTable table :
       {made_table(answer), lacking_table(answer), lays_table(answer), rolls_table(answer), webbing_table(answer), winding_table(answer),
        to_buy_table(answer), remnants_table(answer), money_table(answer), sittings_table(answer)}) {
    if (!table.rows.empty()) tables.push_back(std::move(table));
  }
  return tables;
}

QString batch_proof_words(const BatchAnswer& a) {
  const BatchPlan& plan = a.plan;
  const QString gap = worth_words(plan.cost - plan.cost_bound);
  if (plan.filled < plan.filled_bound) {
    const QString made = tr("Pieces worth %1 of what must be made are there; no plan makes more than %2.")
                             .arg(worth_words(plan.filled), worth_words(plan.filled_bound));
    if (a.money.cloth <= Worth() || plan.cost_bound <= Worth()) return made;
    return made + QLatin1Char(' ') + tr("None that makes as much is better by more than %1, %2 % of that cloth.").arg(gap, gap_share(a));
  }
  if (plan.proved) return tr("No plan does better (proved).");
  if (a.money.cloth <= Worth()) return tr("No plan can be better by more than %1.").arg(gap);
  return tr("No plan can be better by more than %1, %2 % of that cloth.").arg(gap, gap_share(a));
}

QString batch_words(const BatchAnswer& a) {
  QStringList words;
  words << tr("%1 from %2: %3 in %4, %5 at the table.")
               .arg(pieces_words(a), tr("%n roll(s)", nullptr, static_cast<int>(a.plan.rolls.size())),
                    tr("%n length(s)", nullptr, static_cast<int>(lengths_in(a.plan))),
                    tr("%n lay(s)", "in so many lays", static_cast<int>(a.plan.lifts)), minutes_words(a.plan.time));
  words << tr("Cloth worth %1 is cut off.").arg(worth_words(a.money.cloth));
  words << batch_proof_words(a);
  if (!a.plan.shortfalls.empty()) words << tr("The order cannot be filled; see what lacks.");
  return words.join(QLatin1Char(' '));
}

}  // namespace foldyard
