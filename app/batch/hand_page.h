#pragma once

// What is set by hand for a batch: lengths that are kept, and what counts first.

#include "batch/job_list_edit.h"

namespace foldyard {

class HandPage : public QWidget {
  Q_OBJECT

 public:
  explicit HandPage(Document& document, QWidget* parent = nullptr);

  JobListEdit* kept() const { return kept_; }
  JobListEdit* aims() const { return aims_; }
  std::vector<QWidget*> tab_order() const;

 private:
  JobListEdit* kept_;
  JobListEdit* aims_;
};

}  // namespace foldyard
