#pragma once

// While work is done behind the window: how far it is, and a button that stops it. Hidden
// otherwise, and for work that is done within `wait` milliseconds.

#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTimer>
#include <QWidget>

#include <functional>
#include <utility>

namespace foldyard {

// steps: those done and all; all is 0 while nobody knows.
struct WatchedWork {
  std::function<std::pair<int, int>()> steps;
  std::function<QString(int done, int all)> words;
  std::function<void()> stop;
};

class ProgressRow : public QWidget {
  Q_OBJECT

 public:
  ProgressRow(WatchedWork work, int wait, QWidget* parent = nullptr);

  QPushButton* stopper() const { return stop_; }
  QString words() const { return words_->text(); }

 public slots:
  void take_busy(bool busy);

 protected:
  QProgressBar* bar() const { return bar_; }

 private:
  void begin();
  void show_progress();
  void stop();

  WatchedWork work_;
  QLabel* words_;
  QProgressBar* bar_;
  QPushButton* stop_;
  QTimer wait_;
  QTimer looks_;  // at the progress
};

}  // namespace foldyard
