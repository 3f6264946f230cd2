#include "language/local_numbers.h"

#include <QLocale>

namespace foldyard {
namespace {

bool is_between_digits(const QString& words, int at) {
  return at > 0 && at + 1 < words.size() && words[at - 1].isDigit() && words[at + 1].isDigit();
}

QString exchanged(QString words, const QString& from, const QString& to) {
  if (from == to || from.size() != 1 || to.size() != 1) return words;
  for (int at = 0; at < words.size(); ++at)
    if (words[at] == from[0] && is_between_digits(words, at)) words[at] = to[0];
  return words;
}

const QString kPoint = QStringLiteral(".");

}  // namespace

QString local_numbers(const QString& words) { return exchanged(words, kPoint, QLocale().decimalPoint()); }

QString plain_numbers(const QString& typed) { return exchanged(typed, QLocale().decimalPoint(), kPoint); }

QString local_number(double value, int places) { return local_numbers(QString::number(value, 'f', places)); }

}  // namespace foldyard
