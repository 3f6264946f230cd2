#include "file/shelf_csv.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include "file/csv.h"
#include "file/exact_length.h"
#include "file/field_reader.h"
#include "file/file_words.h"
#include "file/read_job.h"
#include "file/read_roll.h"
#include "file/write_job.h"
#include "job/check_job.h"
#include "job/decimal.h"
#include "language/utf8.h"

namespace foldyard {
namespace {

const QStringList kColumns = {"name",   "cloth", "marks",  "width",           "selvedge", "thickness",
                              "length", "nap",   "colour", "price_per_metre", "squared"};

QStringList row_of(const Roll& roll, Unit unit) {
  QStringList marks;
  for (const std::string& mark : roll.marks) marks << text(mark);
  const auto length = [&](Length value) { return text(exact_length(value, unit)); };
  return {text(roll.name), text(roll.cloth), marks.join(QStringLiteral("; ")), length(roll.fabric.width),
          length(roll.fabric.selvedge), length(roll.fabric.thickness), length(roll.length),
          word_of(kNapWords, roll.fabric.nap),
          text(roll.fabric.colour), roll.price ? text(write_decimal(roll.price->parts(), 4)) : QString(),
          word_of(kSquaredWords, roll.squared)};
}

// The rolls of the job as a job file has them, by name.
QMap<QString, QJsonObject> known_rolls(const Job& job) {
  QMap<QString, QJsonObject> known;
  const QJsonArray rolls = QJsonDocument::fromJson(write_job(job)).object().value(QLatin1String("rolls")).toArray();
  for (const QJsonValue& roll : rolls) known[roll.toObject().value(QLatin1String("name")).toString()] = roll.toObject();
  return known;
}

QJsonValue value_of(const QString& column, const QString& field) {
  if (column != QLatin1String("marks")) return field;
  QJsonArray marks;
  for (const QString& mark : field.split(u';', Qt::SkipEmptyParts)) marks.append(mark.trimmed());
  return marks;
}

std::optional<Problem> wrong_columns(const QStringList& head) {
  for (const QString& column : head) {
    if (!kColumns.contains(column))
      return Problem{say("line %1", 1), say("no column \"%1\" is known", column.simplified().left(40).toStdString()),
                     say("use %1", kColumns.join(QStringLiteral(", ")).toStdString())};
  }
  if (head.contains(QStringLiteral("name"))) return {};
  return Problem{say("line %1", 1), say("no column holds the names of the rolls"), say("call it name")};
}

// A field that is empty says nothing, but for a text that may be empty.
QJsonObject roll_fields(const QStringList& head, const QStringList& row, const QMap<QString, QJsonObject>& known) {
  QJsonObject fields = known.value(row.value(head.indexOf(QStringLiteral("name"))).trimmed());
  for (qsizetype i = 0; i < head.size(); ++i) {
    const QString field = row.value(i).trimmed();
    if (head[i] == QLatin1String("length") && !field.isEmpty() && fields.value(head[i]) != QJsonValue(field)) {
      fields.remove(QStringLiteral("measured"));
      fields.remove(QStringLiteral("cut_since"));
    }
    if (!field.isEmpty()) fields.insert(head[i], value_of(head[i], field));
    else if (head[i] == QLatin1String("price_per_metre") || head[i] == QLatin1String("cloth") || head[i] == QLatin1String("marks"))
      fields.remove(head[i]);
  }
  return fields;
}

}  // namespace

QByteArray shelf_csv(const Job& job) {
  std::vector<QStringList> rows{kColumns};
  for (const Roll& roll : job.rolls) rows.push_back(row_of(roll, job.unit));
  return csv_text(rows);
}

Result<Job> with_shelf(Job job, const QByteArray& csv) {
  const auto rows = read_csv(csv);
  if (!rows) return rows.problem();
  if (rows->size() < 2) return Problem{"", say("the table holds no roll"), say("give a row for each roll below the columns")};
  QStringList head;
  for (const QString& column : rows->front()) head << column.trimmed().toLower();
  while (!head.isEmpty() && head.back().isEmpty()) head.removeLast();
  if (auto problem = wrong_columns(head)) return *problem;
  const auto known = known_rolls(job);
  job.rolls.clear();
  for (std::size_t i = 1; i < rows->size(); ++i) {
    const QStringList& row = (*rows)[i];
    if (row.join(QString()).trimmed().isEmpty()) continue;
    std::optional<Problem> fault;
    FieldReader fields(roll_fields(head, row, known), "line " + std::to_string(i + 1) + ": ", fault);
    job.rolls.push_back(read_roll(fields));
    if (fault) return *fault;
  }
  if (auto problem = check_job(job)) return *problem;
  return job;
}

}  // namespace foldyard
