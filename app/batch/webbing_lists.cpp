#include "batch/webbing_lists.h"

#include <algorithm>

#include "batch/order_edits.h"
#include "batch/order_words.h"
#include "fields/duration_text.h"
#include "fields/field_text.h"
#include "job/decimal.h"
#include "language/local_numbers.h"
#include "language/tr.h"
#include "language/utf8.h"
#include "measure/index.h"

namespace foldyard {
namespace {

Webbing& webbing_at(Job& job, int at) { return job.webbings[ix(at)]; }
const Webbing& webbing_at(const Job& job, int at) { return job.webbings[ix(at)]; }

JobColumn webbing_name_column() {
  JobColumn column{tr("Webbing"), tr("Webbing, tape, cord or zip: anything that is cut to length"), "name",
                   [](const Job& job, int row) { return text(webbing_at(job, row).name); }};
  column.put = [](Job& job, int row, const QString& typed) -> std::optional<QString> {
    webbing_at(job, row).name = typed.trimmed().toStdString();
    return std::nullopt;
  };
  column.is_word = true;
  return column;
}

JobColumn length_column(const QString& head, const QString& help, const char* key, Length Webbing::*length) {
  JobColumn column{head, help, key, [length](const Job& job, int row) { return length_text(webbing_at(job, row).*length, job.unit); }};
  column.put = [length](Job& job, int row, const QString& typed) { return put_length(webbing_at(job, row).*length, typed, job); };
  return column;
}

JobColumn webbing_price_column() {
  JobColumn column{tr("Price"), tr("Of a full roll"), "price",
                   [](const Job& job, int row) { return worth_text(webbing_at(job, row).price); }};
  column.put = [](Job& job, int row, const QString& typed) { return put_worth(webbing_at(job, row).price, typed, job); };
  return column;
}

QString ends_text(const std::vector<Length>& ends, Unit unit) {
  QStringList list;
  for (const Length end : ends) list << length_text(end, unit);
  return list.join(QLatin1String("; "));
}

std::optional<QString> put_ends(std::vector<Length>& ends, const QString& typed, const Job& job) {
  std::vector<Length> read;
  for (const QString& each : typed.split(QLatin1Char(';'))) {
    if (each.trimmed().isEmpty()) continue;
    if (const auto refused = put_length(read.emplace_back(), each, job)) return refused;
  }
  ends = read;
  return std::nullopt;
}

JobColumn ends_column() {
  JobColumn column{tr("On hand"), tr("Ends on hand, set apart by semicolons; they are cut first"), "ends",
                   [](const Job& job, int row) { return ends_text(webbing_at(job, row).ends, job.unit); }};
  column.put = [](Job& job, int row, const QString& typed) { return put_ends(webbing_at(job, row).ends, typed, job); };
  column.is_word = true;
  column.empty = tr("none");
  return column;
}

// A figure of the job that stands alone.
struct Figure {
  QString what;
  std::string where;
  std::function<QString(const Job&)> text;
  std::function<std::optional<QString>(Job&, const QString&)> put;
};

Figure worth_figure(const QString& what, const char* where, std::function<Worth&(Job&)> of) {
  return {what, where, [of](const Job& job) { return worth_text(of(const_cast<Job&>(job))); },
          [of](Job& job, const QString& typed) { return put_worth(of(job), typed, job); }};
}

std::optional<QString> put_thread(Job& job, const QString& typed) {
  const auto tenths = read_decimal(typed.trimmed().replace(QLatin1Char(','), QLatin1Char('.')).toStdString(), 1);
  if (!tenths) return tr("“%1” is not a factor; write a number such as 2.8.").arg(typed.trimmed());
  job.notions.thread_tenths = *tenths;
  return std::nullopt;
}

std::vector<Figure> figures() {
  return {{tr("Thread: so many times the length of the seams"), "notions.thread_factor",
           [](const Job& job) { return local_numbers(text(write_decimal(job.notions.thread_tenths, 1))); }, put_thread},
          {tr("Thread on a reel"), "notions.reel", [](const Job& job) { return length_text(job.notions.reel, job.unit); },
           [](Job& job, const QString& typed) { return put_length(job.notions.reel, typed, job); }},
          worth_figure(tr("Price of a reel"), "notions.reel_price", [](Job& job) -> Worth& { return job.notions.reel_price; }),
          worth_figure(tr("Price of a label"), "notions.label_price", [](Job& job) -> Worth& { return job.notions.label_price; }),
          worth_figure(tr("Price of a square metre of cloth, where a roll has none"), "cloth_price_per_square_metre",
                       [](Job& job) -> Worth& { return job.cloth_price; }),
          {tr("A sitting, minutes"), "sitting", [](const Job& job) { return duration_text(job.sitting); },
           [](Job& job, const QString& typed) { return put_time(job.sitting, typed, job); }}};
}

}  // namespace

JobList webbing_list() {
  JobRows rows;
  rows.count = [](const Job& job) { return static_cast<int>(job.webbings.size()); };
  rows.where = [](int row) { return QStringLiteral("webbing[%1]").arg(row); };
  rows.called = [](const Job& job, int row) { return tr("“%1”").arg(text(webbing_at(job, row).name)); };
  rows.add = with_webbing;
  rows.take = without_webbing;
  rows.add_words = tr("add a webbing");
  rows.take_words = tr("take the webbing %1 away");
  return {rows,
          {webbing_name_column(), length_column(tr("Full roll"), tr("How long a roll is as it is bought"), "roll", &Webbing::roll), webbing_price_column(),
           ends_column(), length_column(tr("Loss"), tr("What each cut takes besides, such as a sealed end"), "loss", &Webbing::loss)}};
}

JobList notion_list() {
  const auto all = figures();
  const auto at = [all](int row) { return all[ix(row)]; };
  JobRows rows;
  rows.count = [count = static_cast<int>(all.size())](const Job&) { return count; };
  rows.where = [at](int row) { return QString::fromStdString(at(row).where); };
  rows.called = [at](const Job&, int row) { return tr("“%1”").arg(at(row).what); };
  JobColumn what{tr("Figure"), tr("What goes into goods besides, and what it costs"), "", [at](const Job&, int row) { return at(row).what; }};
  what.is_word = true;
  JobColumn value{tr("Value"), tr("As you measure and buy it"), "", [at](const Job& job, int row) { return at(row).text(job); }};
  value.put = [at](Job& job, int row, const QString& typed) { return at(row).put(job, typed); };
  return {rows, {what, value}};
}

}  // namespace foldyard
