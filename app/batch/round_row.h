#pragma once

// While a batch is being bettered: how many rounds are done, and a button that stops
// it. Hidden otherwise.

#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTimer>
#include <QWidget>

#include "batch/batch_planner.h"

namespace foldyard {

class RoundRow : public QWidget {
  Q_OBJECT

 public:
  explicit RoundRow(BatchPlanner& planner, QWidget* parent = nullptr);

  QPushButton* stopper() const { return stop_; }
  QString words() const { return words_->text(); }

 private:
  void take_busy(bool busy);
  void show_progress();
  void stop();

  BatchPlanner& planner_;
  QLabel* words_;
  QProgressBar* bar_;
  QPushButton* stop_;
  QTimer steps_;
};

}  // namespace foldyard
