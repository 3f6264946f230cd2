#pragma once

// The stopwatch in the window: its time large, what is being timed, and buttons to start
// it, to end a lap and to stop. F7 starts and stops, F8 ends a lap, from anywhere in the
// window while the row is seen.

#include <QLabel>
#include <QPushButton>
#include <QTimer>
#include <QWidget>

#include "batch/stopwatch.h"

namespace foldyard {

class WatchRow : public QWidget {
  Q_OBJECT

 public:
  explicit WatchRow(Stopwatch::Clock clock = {}, QWidget* parent = nullptr);

  // What the next lap is of; empty: nothing can be timed, and a running watch stops.
  void set_timed(const QString& what);
  bool is_running() const { return watch_.is_running(); }
  QPushButton* starter() const { return start_; }
  QPushButton* lapper() const { return lap_; }
  QString time() const { return time_->text(); }
  QString words() const { return words_->text(); }
  std::vector<QWidget*> tab_order() const { return {start_, lap_}; }

 public slots:
  void start_or_stop();
  void lap();

 signals:
  void lapped(foldyard::Duration time);

 private:
  void show_state();

  Stopwatch watch_;
  QString what_;
  QLabel* time_;
  QLabel* words_;
  QPushButton* start_;
  QPushButton* lap_;
  QTimer tick_;
};

}  // namespace foldyard
