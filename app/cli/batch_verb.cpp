#include "cli/batch_verb.h"

#include <QFile>

#include "cli/batch_json.h"
#include "cli/interrupt.h"
#include "cli/plain_text.h"
#include "cli/plan_words.h"
#include "cli/text_table.h"
#include "cli/wrapped.h"
#include "drawing/batch_sheet.h"
#include "drawing/batch_tables.h"
#include "file/csv.h"
#include "file/safe_write.h"
#include "file/shelf_csv.h"
#include "file/write_job.h"
#include "job/mark_cut.h"
#include "job/plan_batch.h"
#include "language/in_english.h"
#include "language/tr.h"

namespace foldyard {
namespace {

Result<BatchPlan> planned(const Job& job, const Interruptible& interruptible) {
  BatchBudget budget;
  budget.cancelled = interruptible.budget().cancelled;
  return plan_batch(job, budget);
}

QString table_text(const BatchTable& table) {
  std::vector<QStringList> rows{table.head};
  rows.insert(rows.end(), table.rows.begin(), table.rows.end());
  QString text = table.heading + QLatin1Char('\n') + text_table(rows);
  if (!table.note.isEmpty()) text += wrapped(table.note, QString());
  return text + QLatin1Char('\n');
}

QString words_of(const BatchAnswer& answer) {
  QString text = wrapped(batch_words(answer), QString()) + QLatin1Char('\n');
  for (const BatchTable& table : batch_tables(answer)) text += table_text(table);
  return plain_text(text) + caution_words(answer.job);
}

// For programs: in English, with decimal points.
QByteArray csv_of(const BatchAnswer& answer) {
  const InEnglish english;
  std::vector<QStringList> rows;
  for (const BatchTable& table : batch_tables(answer)) {
    if (!rows.empty()) rows.push_back({QString()});
    rows.push_back({table.heading});
    rows.push_back(table.head);
    rows.insert(rows.end(), table.rows.begin(), table.rows.end());
  }
  return csv_text(rows);
}

QByteArray file_of(const BatchAnswer& answer, const Call& call) {
  if (call.to.endsWith(QLatin1String(".csv"), Qt::CaseInsensitive)) return csv_of(answer);
  return batch_pdf(BatchSheet(answer, call.paper));
}

Outcome write_out(const BatchAnswer& answer, const Call& call, const QString& complaint) {
  const QByteArray bytes = file_of(answer, call);
  if (bytes.isEmpty()) {
    return {Exit::cannot_plan, {}, tr("The tickets could not be drawn; try another kind of file.")};
  }
  if (const auto problem = safe_write(call.to, bytes)) return refusal(Exit::wrong_call, *problem);
  return {Exit::done, wrapped(batch_words(answer), QString()) + tr("Written to %1.\n").arg(call.to), complaint};
}

Outcome write_job_to(const Job& job, const Call& call, const QString& words, const QString& complaint = {}) {
  if (const auto problem = safe_write(call.to, write_job(job))) return refusal(Exit::wrong_call, *problem);
  return {Exit::done, words, complaint};
}

}  // namespace

Outcome batch_verb(const Job& job, const Call& call) {
  const Interruptible interruptible;
  const Result<BatchPlan> plan = planned(job, interruptible);
  if (!plan) return refusal(Exit::cannot_plan, plan.problem());
  const BatchAnswer answer = batch_answer(job, *plan);
  if (!call.to.isEmpty()) return write_out(answer, call, interruptible.complaint());
  const QString text = call.json ? batch_json_text(answer) : words_of(answer);
  return {Exit::done, text, interruptible.complaint()};
}

Outcome cut_verb(const Job& job, const Call& call) {
  const Interruptible interruptible;
  const Result<BatchPlan> plan = planned(job, interruptible);
  if (!plan) return refusal(Exit::cannot_plan, plan.problem());
  CutReport report{call.when.toStdString(), call.lays};
  if (call.lays.empty()) report = all_cut(*plan, report.when);
  const Result<Job> next = mark_cut(job, *plan, report);
  if (!next) return refusal(Exit::wrong_call, next.problem());
  const QString words = tr("Marked %1 of %2 lays as cut; the job with what is left is in %3.\n")
                            .arg(report.lays.size()).arg(plan->lays.size()).arg(call.to);
  return write_job_to(*next, call, words, interruptible.complaint());
}

Outcome shelf_verb(const Job& job, const Call& call) {
  if (call.from.isEmpty()) {
    if (call.to.isEmpty()) return {Exit::done, QString::fromUtf8(shelf_csv(job)), {}};
    if (const auto problem = safe_write(call.to, shelf_csv(job))) return refusal(Exit::wrong_call, *problem);
    return {Exit::done, tr("The shelf is in %1.\n").arg(call.to), {}};
  }
  QFile file(call.from);
  if (!file.open(QIODevice::ReadOnly)) {
    return {Exit::wrong_call, {}, tr("%1: the file cannot be read; check its name and folder.").arg(call.from)};
  }
  const Result<Job> next = with_shelf(job, file.readAll());
  if (!next) return refusal(Exit::wrong_call, next.problem());
  return write_job_to(*next, call, tr("The job with %1 rolls is in %2.\n").arg(next->rolls.size()).arg(call.to));
}

}  // namespace foldyard
