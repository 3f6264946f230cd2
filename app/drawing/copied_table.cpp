#include "drawing/copied_table.h"

#include "drawing/words.h"
#include "job/lift_room.h"

namespace foldyard {

namespace {

QString plain(QString cell) {
  for (QChar& letter : cell)
    if (letter == u'\t' || letter == u'\n' || letter == u'\r') letter = u' ';
  return cell;
}

QString tab_line(const QStringList& cells) {
  QStringList words;
  for (const QString& cell : cells) words << plain(cell);
  return words.join(u'\t') + u'\n';
}

QString html_row(const QStringList& cells, const char* tag) {
  QString row = QStringLiteral("<tr>");
  for (const QString& cell : cells)
    row += QStringLiteral("<%1>%2</%1>").arg(QLatin1String(tag), cell.toHtmlEscaped());
  return row + QStringLiteral("</tr>\n");
}

QString share_words(Area used, Area cloth) {
  return use_words(used, cloth).remove(QStringLiteral(" %"));
}

// For the lengths of one table, whose heads name the unit.
QString number(Length length, Unit unit) {
  return QString::fromStdString(unit == Unit::yard ? write_length(length, unit)
                                                   : write_number(length, unit));
}

QStringList plan_cells(const Job& job, const WayResult& way) {
  const Plan& plan = *way.plan;
  QStringList cells{QString::fromStdString(way_name(way.way))};
  for (std::size_t i = 0; i < job.panels.size(); ++i)
    cells << QString::number(i < plan.yield.size() ? plan.yield[i] : 0);
  return cells << worth_words(plan.worth) << worth_words(plan.net)
               << share_words(plan.used, plan.cloth)
               << QString::number(plan.cuts + plan.cross_cuts)
               << QString::number(lengths_in_a_lift(job, plan.roll, plan.way))
               << QString::number(plan.time.in_minutes(), 'f', 1)
               << (plan.proof.proved ? QStringLiteral("proved") : QStringLiteral("not proved"));
}

}  // namespace

QString CopiedTable::tab_text() const {
  QString text = tab_line(heads);
  for (const QStringList& row : rows) text += tab_line(row);
  return text;
}

QString CopiedTable::html() const {
  QString text = QStringLiteral(
      "<html><head><meta charset=\"utf-8\"></head><body><table>\n");
  text += html_row(heads, "th");
  for (const QStringList& row : rows) text += html_row(row, "td");
  return text + QStringLiteral("</table></body></html>\n");
}

CopiedTable comparison_table(const Job& job, const Comparison& comparison) {
  CopiedTable table;
  table.heads << QStringLiteral("fold way");
  for (const Panel& panel : job.panels) table.heads << QString::fromStdString(panel.name);
  table.heads << QStringLiteral("worth") << QStringLiteral("worth less time")
              << QStringLiteral("cloth used, %") << QStringLiteral("cuts")
              << QStringLiteral("lengths in a lift") << QStringLiteral("minutes")
              << QStringLiteral("best of its way");
  for (int index : comparison.ranking)
    table.rows.push_back(plan_cells(job, comparison.ways[static_cast<std::size_t>(index)]));
  for (const WayResult& way : comparison.ways) {
    if (way.plan) continue;
    QStringList cells{QString::fromStdString(way_name(way.way))};
    while (cells.size() + 1 < table.heads.size()) cells << QString();
    table.rows.push_back(cells << QStringLiteral("not possible: ") +
                                      QString::fromStdString(way.refused));
  }
  return table;
}

CopiedTable cut_table_of(const Job& job, const Plan& plan, int pattern) {
  const auto in = [&](const char* head) {
    return QLatin1String(head) + QStringLiteral(", ") + QString::fromStdString(unit_name(job.unit));
  };
  CopiedTable table{{QStringLiteral("cut"), QStringLiteral("runs"), in("at"), in("from"), in("to"),
                     in("length")},
                    {}};
  for (const Cut& cut : plan.patterns[static_cast<std::size_t>(pattern)].cuts)
    table.rows.push_back({QString::number(table.rows.size() + 1),
                          cut.direction == Direction::along ? QStringLiteral("along")
                                                            : QStringLiteral("across"),
                          number(cut.at, job.unit), number(cut.over.from, job.unit),
                          number(cut.over.to, job.unit), number(cut.over.size(), job.unit)});
  return table;
}

}  // namespace foldyard
