#pragma once

// The table of panels with what can be done to it: edit a cell, add a panel or
// those of ready goods, take one away. The reason of what is refused stands below it.
// Columns that few jobs need are shown when asked for; which are in use is said.

#include <QCheckBox>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QTableView>
#include <QWidget>

#include "window/panel_model.h"

namespace foldyard {

class PanelTable : public QWidget {
  Q_OBJECT

 public:
  explicit PanelTable(Document& document, QWidget* parent = nullptr);

  QTableView* view() const { return view_; }
  PanelModel* model() const { return model_; }
  QLabel* reason() const { return reason_; }
  QPushButton* adder() const { return add_; }
  // Opens a menu of ready goods.
  QPushButton* goods_adder() const { return goods_; }
  QPushButton* taker() const { return take_; }
  // Shows the columns that few jobs need.
  QCheckBox* more() const { return more_; }

 public slots:
  void add_panel();
  void take_away();

 private:
  void arrange();
  QMenu* goods_menu();
  void show_added(const std::optional<Problem>& problem);
  void show_columns();
  void show_refused(const Problem& problem);
  void show_state();

  Document& document_;
  PanelModel* model_;
  QTableView* view_;
  QPushButton* add_;
  QPushButton* goods_;
  QPushButton* take_;
  QCheckBox* more_;
  QLabel* reason_;
};

}  // namespace foldyard
