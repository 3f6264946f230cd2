#include "window/figures.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include <cmath>
#include <numeric>

#include "drawing/words.h"

namespace foldyard {
namespace {

std::int64_t panels_of(const Plan& plan) {
  return std::accumulate(plan.yield.begin(), plan.yield.end(), std::int64_t{0});
}

double use_of(const Plan& plan) {
  const double cloth = static_cast<double>(plan.cloth.square_units());
  return cloth > 0 ? 100.0 * static_cast<double>(plan.used.square_units()) / cloth : 0;
}

QString signed_text(double value, int places) {
  const QString text = QString::number(std::abs(value), 'f', places);
  if (text.toDouble() == 0) return QStringLiteral("±0");
  return (value < 0 ? QStringLiteral("−") : QStringLiteral("+")) + text;
}

}  // namespace

Figures::Figures(QWidget* parent) : QWidget(parent) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(4, 0, 4, 0);
  row->setSpacing(26);
  const QString names[] = {tr("panels"), tr("of the cloth used"), tr("to cut it")};
  for (std::size_t i = 0; i < count; ++i) {
    auto* column = new QVBoxLayout;
    column->setSpacing(0);
    values_[i] = new QLabel;
    values_[i]->setProperty("figure", true);
    words_[i] = new QLabel(names[i]);
    words_[i]->setProperty("soft", true);
    column->addWidget(values_[i]);
    column->addWidget(words_[i]);
    row->addLayout(column);
  }
  row->addStretch(1);
}

void Figures::show_plan(const Plan* plan) {
  setVisible(plan != nullptr);
  if (!plan) return;
  values_[panels]->setText(QString::number(panels_of(*plan)));
  values_[use]->setText(use_words(plan->used, plan->cloth));
  values_[minutes]->setText(minutes_words(plan->time));
  words_[panels]->setText(tr("panels"));
  words_[use]->setText(tr("of the cloth used"));
  words_[minutes]->setText(tr("to cut it"));
}

void Figures::show_against(const Plan& plan, const Plan& other) {
  show_plan(&plan);
  words_[panels]->setText(tr("panels (%1)").arg(signed_text(static_cast<double>(panels_of(plan) - panels_of(other)), 0)));
  words_[use]->setText(tr("of the cloth used (%1)").arg(signed_text(use_of(plan) - use_of(other), 1)));
  words_[minutes]->setText(tr("to cut it (%1)").arg(signed_text(plan.time.in_minutes() - other.time.in_minutes(), 0)));
}

}  // namespace foldyard
