#include "fields/field_text.h"

#include <QRegularExpression>

#include "fields/field_names.h"
#include "file/exact_length.h"
#include "job/decimal.h"
#include "language/local_numbers.h"
#include "language/spoken.h"
#include "language/tr.h"
#include "measure/read_length.h"

namespace foldyard {
namespace {

// A number alone, as 45, 45.5, 45,5 or 17 3/4.
bool is_bare_number(const QString& text) {
  static const QRegularExpression kBare(QStringLiteral("^[0-9]+([.,][0-9]+)?( +[0-9]+/[0-9]+)?$|^[0-9]+/[0-9]+$"));
  return kBare.match(text).hasMatch();
}

// yd is written in yards and inches, so that a bare number means yards.
QString unit_of_bare(Unit unit) { return QString::fromStdString(unit_name(unit)); }

template <class T>
QString name_at(const std::vector<T>& list, int at) {
  const auto i = static_cast<std::size_t>(at);
  return i < list.size() ? QString::fromStdString(list[i].name) : QString::number(at + 1);
}

// "rolls[0].width" to "Roll “Olive canvas”, width".
QString place_text(const std::string& where, const Job& job) {
  static const QRegularExpression kListed(QStringLiteral("^(rolls|panels)\\[(\\d+)\\]\\.?(.*)$"));
  const auto place = QString::fromStdString(where);
  const auto match = kListed.match(place);
  if (!match.hasMatch()) return field_words(place);
  const int at = match.captured(2).toInt();
  const bool is_roll = match.captured(1) == QLatin1String("rolls");
  const auto whose = is_roll ? tr("Roll “%1”").arg(name_at(job.rolls, at))
                             : tr("Panel “%1”").arg(name_at(job.panels, at));
  const auto field = match.captured(3);
  return field.isEmpty() ? whose : whose + QLatin1String(", ") + field_words(field);
}

}  // namespace

Result<Length> typed_length(const QString& text, Unit unit) {
  const auto trimmed = plain_numbers(text.trimmed());
  const auto whole = is_bare_number(trimmed) ? trimmed + QLatin1Char(' ') + unit_of_bare(unit) : trimmed;
  return read_length(whole.toStdString());
}

Result<Worth> typed_worth(const QString& text) {
  auto plain = text.trimmed();
  if (plain.count(QLatin1Char(',')) == 1 && !plain.contains(QLatin1Char('.'))) plain.replace(QLatin1Char(','), QLatin1Char('.'));
  if (const auto parts = read_decimal(plain.toStdString(), 4)) return Worth::parts(*parts);
  return Problem{"", tr("“%1” is not a worth").arg(text.trimmed()).toStdString(),
                 tr("write a number such as 7.50, with at most four decimals").toStdString()};
}

Result<std::optional<std::int64_t>> typed_limit(const QString& text) {
  const auto plain = text.trimmed();
  if (plain.isEmpty()) return std::optional<std::int64_t>();
  if (const auto count = read_decimal(plain.toStdString(), 0)) return std::optional<std::int64_t>(*count);
  return Problem{"", tr("“%1” is not a limit").arg(plain).toStdString(),
                 tr("write a whole number, or nothing for no limit").toStdString()};
}

QString length_text(Length length, Unit unit) { return local_numbers(QString::fromStdString(exact_length(length, unit))); }

QString breakable(const QString& text) {
  static const QRegularExpression kLongRun(QStringLiteral("(\\w{9})(?=\\w{4})"),
                                           QRegularExpression::UseUnicodePropertiesOption);
  return QString(text).replace(kLongRun, QStringLiteral("\\1\u200b"));
}

QString worth_text(Worth worth) { return local_numbers(QString::fromStdString(write_decimal(worth.parts(), 4))); }

QString problem_text(const Problem& problem, const Job& job) {
  Problem told = problem;
  told.where = problem.where.empty() ? "" : place_text(problem.where, job).toStdString();
  return spoken(told);
}

}  // namespace foldyard
