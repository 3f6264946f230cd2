#include "batch/watch_row.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include "fields/duration_text.h"

namespace foldyard {
namespace {

constexpr int kTickMs = 100;

}  // namespace

WatchRow::WatchRow(Stopwatch::Clock clock, QWidget* parent)
    : QWidget(parent), watch_(std::move(clock)), time_(new QLabel), words_(new QLabel), start_(new QPushButton),
      lap_(new QPushButton(tr("Lap"))) {
  time_->setProperty("figure", true);
  time_->setMinimumWidth(time_->fontMetrics().averageCharWidth() * 12);
  words_->setWordWrap(true);
  start_->setAccessibleName(tr("Stopwatch"));
  lap_->setToolTip(tr("Keep the time for this step and go on with the next (F8)"));
  lap_->setShortcut(Qt::Key_F8);
  auto* row = new QHBoxLayout;
  row->addWidget(time_);
  row->addWidget(start_);
  row->addWidget(lap_);
  row->addStretch(1);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  column->addLayout(row);
  column->addWidget(words_);
  tick_.setInterval(kTickMs);
  connect(&tick_, &QTimer::timeout, this, [this] { time_->setText(watch_text(watch_.elapsed())); });
  connect(start_, &QPushButton::clicked, this, &WatchRow::start_or_stop);
  connect(lap_, &QPushButton::clicked, this, &WatchRow::lap);
  show_state();
}

void WatchRow::set_timed(const QString& what) {
  what_ = what;
  if (what.isEmpty()) watch_.stop();
  show_state();
}

void WatchRow::start_or_stop() {
  if (what_.isEmpty()) return;
  if (watch_.is_running()) watch_.stop();
  else watch_.start();
  show_state();
}

void WatchRow::lap() {
  if (!watch_.is_running()) return;
  emit lapped(watch_.lap());
  show_state();
}

// A button's shortcut goes with its text and is set anew.
void WatchRow::show_state() {
  const bool runs = watch_.is_running();
  time_->setText(watch_text(watch_.elapsed()));
  start_->setText(runs ? tr("Stop") : tr("Start"));
  start_->setToolTip(runs ? tr("Stop without keeping this lap (F7)") : tr("Start timing the chosen step (F7)"));
  start_->setShortcut(Qt::Key_F7);
  start_->setEnabled(!what_.isEmpty());
  lap_->setEnabled(runs);
  if (what_.isEmpty()) words_->setText(tr("Choose a step to time it."));
  else words_->setText(runs ? tr("Timing %1").arg(what_) : tr("Next: %1").arg(what_));
  if (runs) tick_.start();
  else tick_.stop();
}

}  // namespace foldyard
