#include "cli/range_answer.h"

#include <QJsonArray>
#include <algorithm>

#include "cli/plain_text.h"
#include "cli/plan_json.h"
#include "cli/wrapped.h"
#include "drawing/range_words.h"
#include "file/exact_length.h"
#include "job/decimal.h"
#include "job/roll_of.h"
#include "language/tr.h"
#include "measure/index.h"

namespace foldyard {
namespace {

// The first two columns stand under each other; what follows goes on as it is.
QString table_of(const std::vector<RangeRow>& rows) {
  qsizetype from = 0, worth = 0;
  for (const RangeRow& row : rows) {
    from = std::max(from, row.from.size());
    worth = std::max(worth, row.worth.size());
  }
  QString text;
  for (const RangeRow& row : rows) {
    const QString head = tr("  from %1  %2", "a length, what it is worth more").arg(row.from.rightJustified(from), row.worth.rightJustified(worth));
    text += wrapped(row.what, QString(head.size() + 2, QLatin1Char(' ')), head + QLatin1Char(' '));
  }
  return text;
}

QString exact(Length length, const Job& job) {
  return QString::fromStdString(exact_length(length, job.unit));
}

QJsonObject bare_plan(const Job& job, const Plan& plan) {
  return plan_json(job, plan).value(QStringLiteral("plan")).toObject();
}

QJsonObject step_json(const Job& job, const LengthStep& step) {
  QJsonObject json{{"from", exact(step.from, job)}};
  if (!step.plan) return json;
  const QJsonObject plan = bare_plan(job, *step.plan);
  for (const char* field : {"yield", "worth", "net", "proof"}) json[field] = plan[field];
  return json;
}

QJsonObject further_json(const Job& job, const LengthStep& step) {
  QJsonObject json{{"from", exact(step.from, job)}};
  if (step.plan) json["plan"] = bare_plan(job, *step.plan);
  return json;
}

QJsonArray yields_json(const Job& job, const YieldRange& range) {
  QJsonArray yields;
  for (std::size_t i = 0; i < range.yield.size(); ++i) {
    yields.append(QJsonObject{{"panel", QString::fromStdString(job.panels[i].name)},
                              {"least", static_cast<qint64>(range.yield[i].least)},
                              {"likely", static_cast<qint64>(range.yield[i].likely)},
                              {"most", static_cast<qint64>(range.yield[i].most)}});
  }
  return yields;
}

QString key_of(const RollMeasure& measure) {
  const char* const keys[] = {"diameters", "turns", "weight"};
  return QLatin1String(keys[measure.index()]);
}

QString range_text(const Job& job, const YieldRange& range) {
  const QString indent = QStringLiteral("  ");
  QString text = tr("If the roll is longer than its least\n");
  text += wrapped(range_words(job, range), indent, indent);
  text += wrapped(steps_note(range), indent, indent) + table_of(step_rows(job, range));
  text += tr("\nWhat to do first\n") + wrapped(order_words(job, range), indent, indent);
  text += table_of(further_rows(job, range)) + wrapped(further_note(range), indent, indent);
  return plain_text(text);
}

QJsonObject estimate_json(const Job& job, const LengthEstimate& range, const RollMeasure& measure) {
  return {{"least", exact(range.least, job)},
          {"likely", exact(range.likely, job)},
          {"most", exact(range.most, job)},
          {"by", key_of(measure)}};
}

QJsonObject range_json(const Job& job, const YieldRange& range) {
  QJsonArray steps, further;
  for (const LengthStep& step : range.steps.steps) steps.append(step_json(job, step));
  for (const LengthStep& step : range.further.steps) further.append(further_json(job, step));
  QJsonObject json{{"yield", yields_json(job, range)},
                   {"steps", steps},
                   {"all_steps", range.steps.is_all},
                   {"further", further},
                   {"all_further", range.further.is_all},
                   {"proved", range.proved}};
  if (range.most_lost) {
    json["most_lost"] = QString::fromStdString(write_decimal(range.most_lost->parts(), 4));
  }
  return json;
}

}  // namespace

std::optional<YieldRange> range_of(const Job& job, const Plan& plan, const SearchBudget& budget) {
  if (!is_estimated(roll_of(job, plan))) return {};
  const Result<YieldRange> range = yield_range(job, plan.roll, plan.way, plan.aim, budget);
  return range ? std::optional<YieldRange>(*range) : std::nullopt;
}

QString range_words_of(const Job& job, const Plan& plan, const SearchBudget& budget) {
  const auto range = range_of(job, plan, budget);
  return range ? range_text(job, *range) + QLatin1Char('\n') : QString();
}

QJsonObject with_range(const Job& job, const Plan& plan, QJsonObject roll,
                       const SearchBudget& budget) {
  const auto range = range_of(job, plan, budget);
  if (!range) return roll;
  roll["estimate"] = estimate_json(job, range->estimate, *roll_of(job, plan).measured);
  roll["range"] = range_json(job, *range);
  return roll;
}

}  // namespace foldyard
