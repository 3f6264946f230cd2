#include "cli/text_table.h"

#include <algorithm>

namespace foldyard {
namespace {

std::vector<qsizetype> widths_of(const std::vector<QStringList>& rows) {
  std::vector<qsizetype> widths(static_cast<std::size_t>(rows.front().size()), 0);
  for (const QStringList& row : rows) {
    for (std::size_t i = 0; i < widths.size(); ++i) {
      widths[i] = std::max(widths[i], row[static_cast<qsizetype>(i)].size());
    }
  }
  return widths;
}

QString line_of(const QStringList& row, const std::vector<qsizetype>& widths) {
  QString line = row.front().leftJustified(widths.front());
  for (std::size_t i = 1; i < widths.size(); ++i) {
    line += QStringLiteral("  ") + row[static_cast<qsizetype>(i)].rightJustified(widths[i]);
  }
  while (line.endsWith(QLatin1Char(' '))) line.chop(1);
  return line + QLatin1Char('\n');
}

}  // namespace

QString text_table(const std::vector<QStringList>& rows) {
  if (rows.empty()) return {};
  const std::vector<qsizetype> widths = widths_of(rows);
  QString text;
  for (const QStringList& row : rows) text += line_of(row, widths);
  return text;
}

}  // namespace foldyard
