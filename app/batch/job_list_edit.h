#pragma once

// A list of the job in the window: its table (batch/job_table.h) with buttons to add a
// row, to take the chosen one away and to move it up and down, where that means anything.

#include "batch/job_table.h"
#include "fields/edit_table.h"

namespace foldyard {

class JobListEdit : public QWidget {
  Q_OBJECT

 public:
  // add, take: what stands on the buttons; an empty text: no such button.
  JobListEdit(Document& document, JobList list, const QString& name, const QString& add, const QString& take,
              QWidget* parent = nullptr);

  JobTable* model() const { return model_; }
  EditTable* table() const { return table_; }
  QTableView* view() const { return table_->view(); }
  QPushButton* adder() const { return add_; }
  QPushButton* taker() const { return take_; }
  QPushButton* upper() const { return up_; }
  QPushButton* downer() const { return down_; }
  int row() const { return table_->row(); }
  QString reason() const { return table_->reason(); }
  std::vector<QWidget*> tab_order() const;
  // Rows can be added only while this holds.
  void set_can_add(bool can, const QString& why_not = {});

 public slots:
  void add();
  void take();
  void move_up() { move(-1); }
  void move_down() { move(1); }

 signals:
  // Another row is chosen, or the chosen one has other values; −1: none.
  void chosen(int row);

 private:
  void move(int by);
  void show_state();

  JobTable* model_;
  EditTable* table_;
  QPushButton* add_;
  QPushButton* take_;
  QPushButton* up_;
  QPushButton* down_;
};

}  // namespace foldyard
