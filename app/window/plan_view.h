#pragma once

// The chosen plan: its large figures, a tab for each pattern and the roll. A
// pattern lies on the cutting table; the roll's tab has the answer in words and
// the roll with its cross-cuts.
//
// A way that is refused shows its reason and no cloth. A plan made by hand
// shows its figures against the best one of its way.

#include <QHBoxLayout>
#include <QLabel>
#include <QStackedWidget>
#include <QTabBar>
#include <QWidget>

#include "table/cloth_table.h"
#include "window/figures.h"
#include "window/picture_view.h"
#include "window/planner.h"

namespace foldyard {

class PlanView : public QWidget {
  Q_OBJECT

 public:
  explicit PlanView(QWidget* parent = nullptr);

  // way: index into the comparison's ways.
  void show_plan(const AnswerPtr& answer, int way);
  // A plan of the same way with its folds where the hand put them.
  void show_by_hand(const std::shared_ptr<const Plan>& plan);
  bool is_by_hand() const { return by_hand_ != nullptr; }
  // No plan yet: an empty table with a sentence of what to do.
  void show_nothing(const QString& words);
  // While the next answer is on its way, or it could not be had.
  void show_state(const QString& words);
  void set_dark(bool dark);
  // Something to do with the plan, in the row of its figures.
  void add_beside_figures(QWidget* widget);
  // Something that is said of it, below them.
  void add_under_figures(QWidget* widget);

  QTabBar* tabs() const { return tabs_; }
  QLabel* answer() const { return words_; }
  Figures* figures() const { return figures_; }
  ClothTable* table() const { return table_; }
  PictureView* picture() const { return picture_; }
  // The plan that is shown; null where the way is refused.
  const Plan* plan() const;
  // The pattern whose tab is chosen; −1 for the roll.
  int pattern() const;

 public slots:
  void zoom_in();
  void zoom_out();
  void fit();

 signals:
  void shown();

 private:
  const Plan* best() const;
  void show_words();
  void show_figures();
  void show_tabs();
  void show_picture();

  AnswerPtr answer_;
  std::shared_ptr<const Plan> by_hand_;
  int way_ = 0;
  QHBoxLayout* upper_;
  QLabel* words_;
  QLabel* state_;
  Figures* figures_;
  QTabBar* tabs_;
  QStackedWidget* pages_;
  ClothTable* table_;
  PictureView* picture_;
};

}  // namespace foldyard
