#include "batch/order_words.h"

#include <QRegularExpression>

#include <algorithm>

#include "cloth/cloth_of.h"
#include "fields/field_names.h"
#include "fields/field_text.h"
#include "language/spoken.h"
#include "language/tr.h"

namespace foldyard {
namespace {

QString line_words(const Job& job, std::size_t at) {
  const auto& lines = job.order.lines;
  return tr("Line %1, “%2”").arg(at + 1).arg(at < lines.size() ? product_name(job, lines[at]) : QString());
}

QString product_words(const Job& job, std::size_t at) {
  return tr("Product “%1”")
      .arg(at < job.products.size() ? QString::fromStdString(job.products[at].name) : QString::number(at + 1));
}

bool is_word(const Job& job, const QString& text) {
  const std::string word = text.toStdString();
  return std::any_of(job.rolls.begin(), job.rolls.end(), [&](const Roll& roll) { return answers_to(roll, word); });
}

void add_words(std::vector<std::string>& words, const QStringList& list) {
  for (const QString& each : list)
    if (!each.trimmed().isEmpty()) words.push_back(each.trimmed().toStdString());
}

}  // namespace

QString product_name(const Job& job, const OrderLine& line) {
  const auto at = static_cast<std::size_t>(line.product);
  return at < job.products.size() ? QString::fromStdString(job.products[at].name) : QString();
}

Problem told_in_words(const Problem& problem, const Job& job) {
  static const QRegularExpression kListed(QStringLiteral("^(order\\.lines|products)\\[(\\d+)\\]\\.?(.*)$"));
  const auto match = kListed.match(QString::fromStdString(problem.where));
  Problem told = problem;
  if (!match.hasMatch()) {
    QString words = problem_text(problem, job);
    if (words.endsWith(QLatin1Char('.'))) words.chop(1);
    return {"", words.toStdString(), ""};
  }
  const auto at = match.captured(2).toUInt();
  const QString whose = match.captured(1) == QLatin1String("products") ? product_words(job, at) : line_words(job, at);
  const QString field = field_words(match.captured(3));
  told.where = (field.isEmpty() ? whose : whose + QLatin1String(", ") + field).toStdString();
  return told;
}

QString order_problem_text(const Problem& problem, const Job& job) {
  return spoken(told_in_words(problem, job));
}

std::vector<std::string> typed_words(const QString& text, const Job& job) {
  std::vector<std::string> words;
  for (const QString& each : text.split(QLatin1Char(';')))
    add_words(words, is_word(job, each.trimmed()) ? QStringList{each} : each.split(QLatin1Char(',')));
  return words;
}

QString words_text(const std::vector<std::string>& words) {
  QStringList list;
  for (const std::string& word : words) list << QString::fromStdString(word);
  return list.join(QLatin1String("; "));
}

Result<std::int64_t> typed_count(const QString& text) {
  bool is_number = false;
  const qlonglong count = text.trimmed().toLongLong(&is_number);
  if (is_number && count >= 0) return static_cast<std::int64_t>(count);
  return Problem{"", tr("“%1” is not a number of pieces").arg(text.trimmed()).toStdString(),
                 tr("write a whole number such as 12").toStdString()};
}

}  // namespace foldyard
