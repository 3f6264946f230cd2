#pragma once

// The order in the window: its lines, and below them the rules of the chosen one.

#include <QLabel>

#include "batch/job_list_edit.h"

namespace foldyard {

class OrderTable : public QWidget {
  Q_OBJECT

 public:
  explicit OrderTable(Document& document, QWidget* parent = nullptr);

  JobListEdit* lines() const { return lines_; }
  JobListEdit* rules() const { return rules_; }
  QString rules_of() const { return rules_of_->text(); }
  std::vector<QWidget*> tab_order() const;

 public slots:
  // A line for every product or, where there is none, for every panel.
  void order_all();

 private:
  void show_line();
  void name_line();

  Document& document_;
  JobListEdit* lines_;
  QLabel* rules_of_;
  JobListEdit* rules_;
};

}  // namespace foldyard
