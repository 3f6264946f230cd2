#pragma once

// What is bought besides cloth: webbings with what is on hand, and the figures of
// thread, labels and the rest.

#include "batch/job_list_edit.h"

namespace foldyard {

class WebbingPage : public QWidget {
  Q_OBJECT

 public:
  explicit WebbingPage(Document& document, QWidget* parent = nullptr);

  JobListEdit* webbings() const { return webbings_; }
  JobListEdit* figures() const { return figures_; }
  std::vector<QWidget*> tab_order() const;

 private:
  JobListEdit* webbings_;
  JobListEdit* figures_;
};

}  // namespace foldyard
