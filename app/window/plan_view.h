#pragma once

// The chosen plan: its answer in words, a tab for the roll and for each
// pattern, and the picture of the tab that is chosen.
//
// A way that is refused shows its reason and no picture.

#include <QLabel>
#include <QTabBar>
#include <QWidget>

#include "window/picture_view.h"
#include "window/planner.h"

namespace foldyard {

class PlanView : public QWidget {
  Q_OBJECT

 public:
  explicit PlanView(QWidget* parent = nullptr);

  // way: index into the comparison's ways.
  void show_plan(const AnswerPtr& answer, int way);
  // While the next answer is on its way, or it could not be had.
  void show_state(const QString& words);

  QTabBar* tabs() const { return tabs_; }
  QLabel* answer() const { return words_; }
  PictureView* picture() const { return picture_; }

 private:
  const Plan* plan() const;
  void show_tabs();
  void show_picture();

  AnswerPtr answer_;
  int way_ = 0;
  QLabel* words_;
  QLabel* state_;
  QTabBar* tabs_;
  PictureView* picture_;
};

}  // namespace foldyard
