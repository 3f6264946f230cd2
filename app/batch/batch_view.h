#pragma once

// The answer of a batch: its large figures, what it says in a sentence, and all its
// tables, one tab each. The rolls can be ticked out of the batch in theirs, also while
// there is no answer, and one that is chosen be made to be cut. The chosen lay is shown
// as it is stacked, and can be kept.

#include <QLabel>
#include <QPushButton>
#include <QTabBar>
#include <QTableView>
#include <QWidget>

#include <vector>

#include "batch/batch_figures.h"
#include "batch/batch_planner.h"
#include "batch/round_row.h"
#include "batch/stack_view.h"
#include "batch/words_model.h"

namespace foldyard {

class BatchView : public QWidget {
  Q_OBJECT

 public:
  explicit BatchView(BatchPlanner& planner, QWidget* parent = nullptr);

  // job: whose rolls are listed. answer: null, or the last good one, maybe of a job
  // before; then nothing can be marked as cut from it.
  void show_answer(const Job& job, const BatchAnswerPtr& answer);
  // What went wrong; empty: nothing.
  void show_fault(const QString& reason);
  const BatchAnswerPtr& answer() const { return answer_; }

  BatchFigures* figures() const { return figures_; }
  QLabel* words() const { return words_; }
  QString fault() const { return fault_->text(); }
  QTabBar* tabs() const { return tabs_; }
  QTableView* table() const { return table_; }
  WordsModel* model() const { return model_; }
  QPushButton* marker() const { return mark_; }
  QPushButton* ticketer() const { return tickets_; }
  QPushButton* keeper() const { return keep_; }
  QPushButton* forcer() const { return must_; }
  StackView* stack() const { return stack_; }
  // The chosen row of the table of lays or of rolls; −1: none, or another is shown.
  int chosen_lay() const { return chosen_in(BatchTableKind::lays); }
  int chosen_roll() const { return chosen_in(BatchTableKind::rolls); }
  QPushButton* copier() const { return copy_; }
  RoundRow* rounds() const { return rounds_; }
  void choose(BatchTableKind kind);
  std::vector<QWidget*> tab_order() const { return {rounds_->stopper(), tabs_, table_, keep_, must_, mark_, tickets_, copy_}; }

 public slots:
  // The table that is shown, as text for a spreadsheet.
  void copy() const;

 signals:
  void roll_ticked(int roll, bool on);
  void keep_wanted(int lay);
  void must_wanted(int roll, bool on);
  void mark_wanted();
  void tickets_wanted();

 private:
  void arrange();
  void show_tabs();
  void show_table();
  void show_chosen();
  BatchTableKind shown_kind() const;
  int chosen_in(BatchTableKind kind) const;
  std::vector<BatchTable> tables_with_rolls(const BatchTable& rolls) const;

  BatchAnswerPtr answer_;
  bool is_of_job_ = false;
  std::vector<BatchTable> tables_;
  std::vector<bool> ticks_;
  std::vector<bool> musts_;
  BatchFigures* figures_;
  QLabel* words_;
  QLabel* fault_;
  RoundRow* rounds_;
  QTabBar* tabs_;
  WordsModel* model_;
  QTableView* table_;
  QLabel* note_;
  StackView* stack_;
  QPushButton* keep_;
  QPushButton* must_;
  QPushButton* mark_;
  QPushButton* tickets_;
  QPushButton* copy_;
};

}  // namespace foldyard
