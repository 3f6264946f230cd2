#include "batch/cut_history.h"

#include "language/tr.h"

namespace foldyard {
namespace {

// "12 × Carrier of moss, 4 × Pouch of sand".
QString panels_words(const Job& job, const std::vector<CutPanels>& panels) {
  QStringList words;
  for (const CutPanels& cut : panels)
    words << tr("%1 × %2 of %3").arg(cut.count).arg(QString::fromStdString(job.panels[static_cast<std::size_t>(cut.panel)].name),
                                                    QString::fromStdString(cut.cloth));
  return words.join(QStringLiteral("\n"));
}

}  // namespace

QStringList history_head() { return {tr("When"), tr("Lays"), tr("Gave")}; }

std::vector<QStringList> history_rows(const Job& job) {
  std::vector<QStringList> rows;
  for (auto record = job.history.rbegin(); record != job.history.rend(); ++record)
    rows.push_back({QString::fromStdString(record->when), QString::number(record->lays), panels_words(job, record->panels)});
  return rows;
}

}  // namespace foldyard
