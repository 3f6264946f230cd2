#pragma once

// What was cut so far: a row for each time, and the panels on hand.

#include <QLabel>

#include "batch/job_list_edit.h"
#include "batch/words_model.h"

namespace foldyard {

class CutPage : public QWidget {
  Q_OBJECT

 public:
  explicit CutPage(Document& document, QWidget* parent = nullptr);

  WordsModel* history() const { return history_; }
  JobListEdit* on_hand() const { return on_hand_; }
  std::vector<QWidget*> tab_order() const;

 private:
  void show_job();

  Document& document_;
  WordsModel* history_;
  QTableView* view_;
  QLabel* words_;
  JobListEdit* on_hand_;
};

}  // namespace foldyard
