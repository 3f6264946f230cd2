#include "window/busy_row.h"

#include <QHBoxLayout>

namespace foldyard {
namespace {

constexpr int kLongMs = 200;
constexpr int kStepMs = 100;
constexpr int kBarWidth = 140;

}  // namespace

BusyRow::BusyRow(Planner& planner, QWidget* parent)
    : QWidget(parent), planner_(planner), words_(new QLabel), bar_(new QProgressBar), stop_(new QPushButton(tr("Stop"))) {
  bar_->setTextVisible(false);
  bar_->setFixedWidth(kBarWidth);
  bar_->setFixedHeight(8);
  bar_->setAccessibleName(tr("Fold ways planned"));
  stop_->setToolTip(tr("End planning now and show the best found so far (Ctrl+.)"));
  stop_->setShortcut(tr("Ctrl+."));
  stop_->setFocusPolicy(Qt::TabFocus);
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(8, 0, 8, 0);
  layout->addWidget(words_);
  layout->addWidget(bar_);
  layout->addWidget(stop_);
  wait_.setSingleShot(true);
  wait_.setInterval(kLongMs);
  steps_.setInterval(kStepMs);
  connect(&planner, &Planner::busy_changed, this, &BusyRow::take_busy);
  connect(&wait_, &QTimer::timeout, this, [this] {
    steps_.start();
    show_progress();
    show();
  });
  connect(&steps_, &QTimer::timeout, this, &BusyRow::show_progress);
  connect(stop_, &QPushButton::clicked, this, &BusyRow::stop);
  hide();
}

void BusyRow::take_busy(bool busy) {
  stop_->setEnabled(true);
  if (busy) return wait_.start();
  wait_.stop();
  steps_.stop();
  hide();
}

void BusyRow::show_progress() {
  const auto [done, total] = planner_.progress();
  bar_->setMaximum(total);
  bar_->setValue(done);
  words_->setText(total > 0 ? tr("Planning: %1 of %2 fold ways done").arg(done).arg(total) : tr("Planning"));
}

void BusyRow::stop() {
  stop_->setEnabled(false);
  planner_.stop();
}

}  // namespace foldyard
