#pragma once

// The table of the order with what can be done to it: edit a cell, add a line, take
// one away, edit the products. The reason of what is refused stands below it.

#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QWidget>

#include <vector>

#include "batch/line_model.h"

namespace foldyard {

class OrderTable : public QWidget {
  Q_OBJECT

 public:
  explicit OrderTable(Document& document, QWidget* parent = nullptr);

  QTableView* view() const { return view_; }
  LineModel* model() const { return model_; }
  QPushButton* adder() const { return add_; }
  QPushButton* taker() const { return take_; }
  QPushButton* products() const { return products_; }
  QString reason() const { return reason_->text(); }
  std::vector<QWidget*> tab_order() const { return {view_, add_, take_, products_}; }

 public slots:
  void add_line();
  void take_line();
  void edit_products();
  // A line for every product or, where there is none, for every panel.
  void order_all();

 private:
  void arrange();
  void edit(const Job& next, const QString& words);
  void show_state();

  Document& document_;
  LineModel* model_;
  QTableView* view_;
  QPushButton* add_;
  QPushButton* take_;
  QPushButton* products_;
  QLabel* reason_;
};

}  // namespace foldyard
