#include "batch/job_table.h"

#include <QCoreApplication>

#include "batch/order_words.h"
#include "fields/duration_text.h"
#include "fields/field_text.h"
#include "language/heading_words.h"

namespace foldyard {
namespace {

template <class Value>
std::optional<QString> put_read(Value& value, const Result<Value>& read, const Job& job) {
  if (!read) return order_problem_text(read.problem(), job);
  value = *read;
  return std::nullopt;
}

}  // namespace

JobTable::JobTable(Document& document, JobList list, QObject* parent)
    : DraftTable(parent), document_(document), list_(std::move(list)) {
  connect(&document_, &Document::changed, this, [this] { follow(); });
  show_anew();
}

QString JobTable::help(int row, int column) const {
  const JobColumn& of = at(column);
  const QString more = row >= 0 && of.more ? of.more(document_.job(), row) : QString();
  return more.isEmpty() ? of.help : of.help + QLatin1Char('\n') + more;
}

QStringList JobTable::choices(int column) const {
  return at(column).choices ? at(column).choices(document_.job()) : QStringList();
}

std::optional<QString> JobTable::put(int row, int column, const QString& text) {
  Job next = document_.job();
  if (auto refused = at(column).put(next, row, text)) return refused;
  const QString words = tr("change “%1” of %2").arg(heading_words(at(column).head), list_.rows.called(document_.job(), row));
  const QString key = QString::fromStdString(at(column).key);
  return edit(next, words, list_.rows.where(row) + (key.isEmpty() ? key : QLatin1Char('.') + key));
}

std::optional<QString> JobTable::add() { return edit(list_.rows.add(document_.job()), list_.rows.add_words); }

std::optional<QString> JobTable::take(int row) {
  const QString words = list_.rows.take_words.arg(list_.rows.called(document_.job(), row));
  return edit(list_.rows.take(document_.job(), row), words);
}

std::optional<QString> JobTable::move(int row, int by) {
  const QString words = list_.rows.move_words.arg(list_.rows.called(document_.job(), row));
  return edit(list_.rows.move(document_.job(), row, by), words);
}

std::optional<QString> JobTable::edit(const Job& next, const QString& words, const QString& field) {
  const auto problem = document_.edit(next, words, field);
  return problem ? std::optional<QString>(order_problem_text(*problem, next)) : std::nullopt;
}

std::optional<QString> put_count(std::int64_t& count, const QString& text, const Job& job) {
  return put_read(count, typed_count(text), job);
}

std::optional<QString> put_length(Length& length, const QString& text, const Job& job) {
  return put_read(length, typed_length(text, job.unit), job);
}

std::optional<QString> put_worth(Worth& worth, const QString& text, const Job& job) {
  return put_read(worth, typed_worth(text), job);
}

std::optional<QString> put_time(Duration& time, const QString& text, const Job& job) {
  return put_read(time, typed_duration(text), job);
}

std::optional<QString> put_named(int& place, const QStringList& names, const QString& text) {
  const auto at = names.indexOf(text.trimmed());
  if (at < 0)
    return JobTable::tr("There is no “%1”; choose one of: %2.").arg(text.trimmed(), names.join(QLatin1String("; ")));
  place = static_cast<int>(at);
  return std::nullopt;
}

}  // namespace foldyard
