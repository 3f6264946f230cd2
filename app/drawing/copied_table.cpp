#include "drawing/copied_table.h"

#include "drawing/words.h"
#include "job/lift_room.h"
#include "language/local_numbers.h"
#include "language/spoken.h"
#include "language/tr.h"
#include "measure/index.h"

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
QStringList plan_cells(const Job& job, const WayResult& way) {
  const Plan& plan = *way.plan;
  QStringList cells{spoken(way_name(way.way))};
  for (std::size_t i = 0; i < job.panels.size(); ++i)
    cells << QString::number(i < plan.yield.size() ? plan.yield[i] : 0);
  return cells << worth_words(plan.worth) << worth_words(plan.net)
               << share_words(plan.used, plan.cloth)
               << QString::number(plan.cuts + plan.cross_cuts)
               << QString::number(lengths_in_a_lift(job, plan.roll, plan.way))
               << local_number(plan.time.in_minutes(), 1)
               << (plan.proof.proved ? tr("proved") : tr("not proved"));
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
  table.heads << tr("fold way");
  for (const Panel& panel : job.panels) table.heads << QString::fromStdString(panel.name);
  table.heads << tr("worth", "column") << tr("worth less time")
              << tr("cloth used, %") << tr("cuts", "column")
              << tr("lengths in a lift") << tr("minutes")
              << tr("best of its way");
  for (int index : comparison.ranking)
    table.rows.push_back(plan_cells(job, comparison.ways[ix(index)]));
  for (const WayResult& way : comparison.ways) {
    if (way.plan) continue;
    QStringList cells{spoken(way_name(way.way))};
    while (cells.size() + 1 < table.heads.size()) cells << QString();
    table.rows.push_back(cells << tr("not possible: %1").arg(spoken(way.refused)));
  }
  return table;
}

CopiedTable cut_table_of(const Job& job, const Plan& plan, int pattern) {
  const auto in = [&](const QString& head) {
    return head + QStringLiteral(", ") + QString::fromStdString(unit_name(job.unit));
  };
  CopiedTable table{{tr("cut", "column"), tr("runs", "column"), in(tr("at", "column")), in(tr("from", "column")),
                     in(tr("to", "column")), in(tr("length", "column"))},
                    {}};
  for (const Cut& cut : plan.patterns[ix(pattern)].cuts)
    table.rows.push_back({QString::number(table.rows.size() + 1),
                          cut.direction == Direction::along ? tr("along")
                                                            : tr("across"),
                          number_words(cut.at, job.unit), number_words(cut.over.from, job.unit),
                          number_words(cut.over.to, job.unit), number_words(cut.over.size(), job.unit)});
  return table;
}

}  // namespace foldyard
