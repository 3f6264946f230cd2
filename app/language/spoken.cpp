#include "language/spoken.h"

#include <QCoreApplication>
#include <cstring>

#include "language/local_numbers.h"

namespace foldyard {
namespace {

// Patterns of core have no class that could be their context.
constexpr const char* kContext = "core";

// The count that chooses among the forms of a pattern; −1 where none does.
int count_of(const Words& words) {
  if (!std::strstr(words.pattern(), "%n") || words.parts().empty()) return -1;
  return QString::fromStdString(words.parts()[0]).toInt();
}

// In one pass, so that a name with a percent sign is not filled again.
QString filled(const QString& pattern, const std::vector<Words>& parts) {
  QString text;
  for (qsizetype i = 0; i < pattern.size(); ++i) {
    const int place = pattern[i] == u'%' && i + 1 < pattern.size() ? pattern[i + 1].digitValue() : -1;
    if (place < 1 || place > static_cast<int>(parts.size())) {
      text += pattern[i];
      continue;
    }
    text += spoken(parts[static_cast<std::size_t>(place) - 1]);
    ++i;
  }
  return text;
}

}  // namespace

QString spoken(const Words& words) {
  const QString english = QString::fromStdString(words.english());
  if (words.is_number()) return local_numbers(english);
  if (!words.pattern()) return english;
  return filled(QCoreApplication::translate(kContext, words.pattern(), nullptr, count_of(words)), words.parts());
}

QString spoken(std::string_view pattern) { return QCoreApplication::translate(kContext, pattern.data()); }

QString spoken(const Problem& problem) {
  QString sentence = problem.where.empty() ? QString() : spoken(problem.where) + QStringLiteral(": ");
  sentence += spoken(problem.what);
  if (!problem.next.empty()) sentence += QStringLiteral("; ") + spoken(problem.next);
  return sentence + QLatin1Char('.');
}

std::string spoken_text(const Words& words) { return spoken(words).toStdString(); }

}  // namespace foldyard
