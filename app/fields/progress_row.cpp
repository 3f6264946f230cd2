#include "fields/progress_row.h"

#include <QHBoxLayout>

namespace foldyard {
namespace {

constexpr int kLookMs = 100;
constexpr int kBarWidth = 140;
constexpr int kBarHeight = 8;

}  // namespace

ProgressRow::ProgressRow(WatchedWork work, int wait, QWidget* parent)
    : QWidget(parent), work_(std::move(work)), words_(new QLabel), bar_(new QProgressBar),
      stop_(new QPushButton(tr("Stop"))) {
  bar_->setTextVisible(false);
  bar_->setFixedSize(kBarWidth, kBarHeight);
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(words_);
  layout->addWidget(bar_);
  layout->addWidget(stop_);
  wait_.setSingleShot(true);
  wait_.setInterval(wait);
  looks_.setInterval(kLookMs);
  connect(&wait_, &QTimer::timeout, this, &ProgressRow::begin);
  connect(&looks_, &QTimer::timeout, this, &ProgressRow::show_progress);
  connect(stop_, &QPushButton::clicked, this, &ProgressRow::stop);
  hide();
}

void ProgressRow::take_busy(bool busy) {
  stop_->setEnabled(true);
  wait_.stop();
  looks_.stop();
  if (!busy) return hide();
  if (wait_.interval() > 0) wait_.start();
  else begin();
}

void ProgressRow::begin() {
  looks_.start();
  show_progress();
  show();
}

void ProgressRow::show_progress() {
  const auto [done, all] = work_.steps();
  bar_->setMaximum(all);
  bar_->setValue(done);
  words_->setText(work_.words(done, all));
}

void ProgressRow::stop() {
  stop_->setEnabled(false);
  work_.stop();
}

}  // namespace foldyard
