#include "batch/batch_figures.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>

#include "drawing/words.h"
#include "fields/reading_order.h"
#include "language/local_numbers.h"

namespace foldyard {
namespace {

struct PieceCount {
  std::int64_t asked = 0;  // that must be made
  std::int64_t of_them = 0;
  std::int64_t more = 0;
};

PieceCount pieces_counted(const BatchAnswer& answer) {
  PieceCount counts;
  const auto& lines = answer.job.order.lines;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    std::int64_t made = 0;
    for (const Made& each : answer.plan.made)
      if (each.line == static_cast<int>(i)) made += each.pieces;
    const std::int64_t of_them = std::min(made, lines[i].must);
    counts.asked += lines[i].must;
    counts.of_them += of_them;
    counts.more += made - of_them;
  }
  return counts;
}

}  // namespace

// Rounded up to a tenth, so that it never sounds nearer than it is.
QString gap_words(const BatchAnswer& answer) {
  const BatchPlan& plan = answer.plan;
  if (plan.proved) return BatchFigures::tr("proved");
  const auto cloth = answer.money.cloth.parts();
  if (plan.filled < plan.filled_bound || cloth <= 0) return {};
  const auto over = plan.cost.parts() - plan.cost_bound.parts();
  // No batch costs more than 2 · 10¹⁴ parts (200 rolls of 1 km at the highest price).
  const auto tenths = over <= 0 ? 0 : (over * 1000 + cloth - 1) / cloth;
  return BatchFigures::tr("at most %1 % too much").arg(local_number(static_cast<double>(tenths) / 10, 1));
}

BatchFigures::BatchFigures(QWidget* parent) : QWidget(parent) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(4, 0, 4, 0);
  row->setSpacing(22);
  for (std::size_t i = 0; i < count; ++i) {
    auto* column = new QVBoxLayout;
    column->setSpacing(0);
    values_[i] = new QLabel;
    values_[i]->setProperty("figure", true);
    words_[i] = new QLabel;
    words_[i]->setProperty("soft", true);
    column->addWidget(values_[i]);
    column->addWidget(words_[i]);
    row->addLayout(column);
  }
  row->addStretch(1);
  hide();
}

void BatchFigures::show_answer(const BatchAnswer* answer) {
  setVisible(answer != nullptr);
  if (!answer) return;
  const PieceCount made = pieces_counted(*answer);
  values_[pieces]->setText(made.asked > 0 ? tr("%1 of %2").arg(made.of_them).arg(made.asked) : QString::number(made.more));
  words_[pieces]->setText(made.more > 0 && made.asked > 0 ? tr("pieces, and %1 more").arg(made.more) : tr("pieces"));
  const QString gap = gap_words(*answer);
  values_[cloth]->setText(in_own_order(worth_words(answer->money.cloth)));
  words_[cloth]->setText(gap.isEmpty() ? tr("for cloth") : tr("for cloth, %1").arg(gap));
  values_[lays]->setText(QString::number(answer->plan.lays.size()));
  words_[lays]->setText(tr("lay(s)", nullptr, static_cast<int>(answer->plan.lays.size())));
  values_[minutes]->setText(in_own_order(minutes_words(answer->plan.time)));
  words_[minutes]->setText(tr("to cut it"));
}

}  // namespace foldyard
