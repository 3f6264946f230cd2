#pragma once

// The flaws of a roll with what can be done to them: edit a cell, add one, take
// one away. The reason of a refused cell stands below.

#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QWidget>

#include "shelf/flaw_model.h"

namespace foldyard {

class FlawTable : public QWidget {
  Q_OBJECT

 public:
  // The roll outlives the table.
  FlawTable(Roll& roll, Unit unit, QWidget* parent = nullptr);

  QTableView* view() const { return view_; }
  FlawModel* model() const { return model_; }
  QLabel* reason() const { return reason_; }
  QPushButton* adder() const { return add_; }
  QPushButton* taker() const { return take_; }

 private:
  void arrange();
  void add();
  void take_away();
  void show_state();

  FlawModel* model_;
  QTableView* view_;
  QPushButton* add_;
  QPushButton* take_;
  QLabel* reason_;
};

}  // namespace foldyard
