#include "cli/wrapped.h"

#include <QStringList>

namespace foldyard {
namespace {

constexpr qsizetype kLineWidth = 78;

}  // namespace

QString wrapped(const QString& paragraph, const QString& indent, const QString& first) {
  QString text;
  QString line = first;
  for (const QString& word : paragraph.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
    if (!line.isEmpty() && line.size() + 1 + word.size() > kLineWidth) {
      text += line + QLatin1Char('\n');
      line = indent + word;
    } else {
      line += (line.trimmed().isEmpty() ? QString() : QStringLiteral(" ")) + word;
    }
  }
  return text + line + QLatin1Char('\n');
}

}  // namespace foldyard
