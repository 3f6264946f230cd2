#include "batch/round_row.h"

#include <QHBoxLayout>

namespace foldyard {
namespace {

constexpr int kStepMs = 150;
constexpr int kBarWidth = 140;

}  // namespace

RoundRow::RoundRow(BatchPlanner& planner, QWidget* parent)
    : QWidget(parent), planner_(planner), words_(new QLabel), bar_(new QProgressBar), stop_(new QPushButton(tr("Stop"))) {
  bar_->setTextVisible(false);
  bar_->setFixedSize(kBarWidth, 8);
  bar_->setAccessibleName(tr("Rounds of betterment done"));
  stop_->setToolTip(tr("End planning now and keep the best plan found so far"));
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(words_);
  layout->addWidget(bar_);
  layout->addWidget(stop_);
  layout->addStretch(1);
  steps_.setInterval(kStepMs);
  connect(&planner, &BatchPlanner::busy_changed, this, &RoundRow::take_busy);
  connect(&steps_, &QTimer::timeout, this, &RoundRow::show_progress);
  connect(stop_, &QPushButton::clicked, this, &RoundRow::stop);
  hide();
}

void RoundRow::take_busy(bool busy) {
  stop_->setEnabled(true);
  show_progress();
  setVisible(busy);
  if (busy) steps_.start();
  else steps_.stop();
}

void RoundRow::show_progress() {
  const auto [done, total] = planner_.progress();
  bar_->setMaximum(total);
  bar_->setValue(done);
  words_->setText(total > 0 ? tr("Looking for better plans: round %1 of %2").arg(done).arg(total) : tr("Planning the batch"));
}

void RoundRow::stop() {
  stop_->setEnabled(false);
  planner_.stop();
}

}  // namespace foldyard
