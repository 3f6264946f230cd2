#pragma once

// While a plan takes long: how many of the fold ways are done, and a button that
// stops it. Hidden otherwise, and for a plan that is there soon.

#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTimer>
#include <QWidget>

#include "window/planner.h"

namespace foldyard {

class BusyRow : public QWidget {
  Q_OBJECT

 public:
  explicit BusyRow(Planner& planner, QWidget* parent = nullptr);

  QPushButton* stopper() const { return stop_; }
  QString words() const { return words_->text(); }

 private:
  void take_busy(bool busy);
  void show_progress();
  void stop();

  Planner& planner_;
  QLabel* words_;
  QProgressBar* bar_;
  QPushButton* stop_;
  QTimer wait_;   // until a plan counts as long
  QTimer steps_;  // between two looks at the progress
};

}  // namespace foldyard
