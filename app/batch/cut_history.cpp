#include "batch/cut_history.h"

#include "drawing/words.h"
#include "language/tr.h"
#include "measure/index.h"

namespace foldyard {
namespace {

// "12 × Carrier of moss, 4 × Pouch of sand".
QString panels_words(const Job& job, const std::vector<CutPanels>& panels) {
  QStringList words;
  for (const CutPanels& cut : panels)
    words << tr("%1 × %2 of %3").arg(cut.count).arg(QString::fromStdString(job.panels[ix(cut.panel)].name),
                                                    QString::fromStdString(cut.cloth));
  return words.join(QStringLiteral("\n"));
}

// "Moss 1: 3.2 m cut off, 8.4 m left" or "…, none left".
QString rolls_words(const Job& job, const std::vector<CutFromRoll>& rolls) {
  QStringList words;
  for (const CutFromRoll& each : rolls) {
    const QString name = QString::fromStdString(each.roll), cut = length_words(each.cut, job.unit);
    words << (each.left == Length() ? tr("%1: %2 cut off, none left").arg(name, cut)
                                    : tr("%1: %2 cut off, %3 left").arg(name, cut, length_words(each.left, job.unit)));
  }
  return words.join(QStringLiteral("\n"));
}

}  // namespace

QStringList history_head() { return {tr("When"), tr("Lays"), tr("Gave"), tr("Spoilt"), tr("Rolls")}; }

std::vector<QStringList> history_rows(const Job& job) {
  std::vector<QStringList> rows;
  for (auto record = job.history.rbegin(); record != job.history.rend(); ++record)
    rows.push_back({QString::fromStdString(record->when), QString::number(record->lays), panels_words(job, record->panels),
                    panels_words(job, record->spoilt), rolls_words(job, record->rolls)});
  return rows;
}

}  // namespace foldyard
