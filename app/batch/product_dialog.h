#pragma once

// The products of the job: add one, take one away, and what one is: its name, worth,
// price and how many of each panel it takes.
//
// It works on a Job of its own, which can be taken once it is confirmed; that is
// only possible while the job can stand. Else the reason stands in the dialog.

#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTableView>

#include "batch/fill_in_model.h"
#include "job/job.h"

namespace foldyard {

class ProductDialog : public QDialog {
  Q_OBJECT

 public:
  explicit ProductDialog(const Job& job, QWidget* parent = nullptr);

  const Job& job() const { return job_; }
  QListWidget* list() const { return list_; }
  QPushButton* adder() const { return add_; }
  QPushButton* taker() const { return take_; }
  QLineEdit* name() const { return name_; }
  QLineEdit* worth() const { return worth_; }
  QLineEdit* price() const { return price_; }
  FillInModel* panels() const { return panels_; }
  QPushButton* confirmer() const { return confirmer_; }
  QString reason() const { return reason_->text(); }

 private:
  void arrange();
  QWidget* left_side();
  QWidget* fields();
  void add();
  void take_away();
  void show_list(int row);
  void show_product();
  void look();
  QString read_into(Product& product);
  QString read_panels(Product& product);
  int row() const { return list_->currentRow(); }

  Job job_;
  QListWidget* list_;
  QPushButton* add_;
  QPushButton* take_;
  QWidget* fields_;
  QLineEdit* name_;
  QLineEdit* worth_;
  QLineEdit* price_;
  FillInModel* panels_;
  QTableView* panels_view_;
  QLabel* reason_;
  QPushButton* confirmer_;
};

}  // namespace foldyard
