#include "drawing/goods_list.h"

#include "drawing/goods_words.h"
#include "language/tr.h"

namespace foldyard {

namespace {

const std::vector<double> kShares = {0.1, 0.9};

ListLine row(const QString& count, const QString& words) {
  return {LineKind::row, {count, words}, kShares, -1};
}

}  // namespace

std::vector<ListLine> goods_lines(const Job& job, const Plan& plan) {
  std::vector<ListLine> lines;
  for (const GoodsMade& made : goods_made(job, plan.yield)) {
    if (lines.empty())
      lines.push_back(heading_line(tr("Goods the panels of this plan are enough for")));
    lines.push_back(row(QString::number(made.pieces) + QStringLiteral(" ×"),
                        QString::fromStdString(made.name) + QStringLiteral(": ") +
                            goods_words(made.goods, job.unit)));
    if (made.panels.size() > 1)
      lines.push_back(row({}, needed_words(job, made) + QLatin1Char('.')));
    for (const QString& words : making_words(made.goods, job.unit)) lines.push_back(row({}, words));
  }
  return lines;
}

}  // namespace foldyard
