#pragma once

// A table that is edited cell by cell, with buttons below it and the reason of what is
// refused. The first column of words takes the room that is left.

#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QWidget>

#include "fields/draft_table.h"
#include "fields/flow_row.h"

namespace foldyard {

class EditTable : public QWidget {
  Q_OBJECT

 public:
  // name: what a screen reader says. The model outlives the table.
  EditTable(DraftTable* model, const QString& name, QWidget* parent = nullptr);

  QTableView* view() const { return view_; }
  int row() const { return view_->currentIndex().row(); }
  QString reason() const { return reason_->text(); }
  // Below the table, behind those that were added before.
  void add_button(QPushButton* button);
  // Of what belongs to no cell; goes with the next change.
  void refuse(const QString& reason);
  void choose(int row, int column = 0);
  // How many rows are seen at least.
  void set_least_rows(int rows);

 signals:
  // Another row is chosen; −1: none.
  void chosen(int row);
  // The editing of a cell has ended.
  void left();

 private:
  void arrange();
  void show_reason();

  DraftTable* model_;
  QTableView* view_;
  QLabel* reason_;
  FlowBar* buttons_;
};

}  // namespace foldyard
