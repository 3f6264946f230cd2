#pragma once

// What is made: the products, and of the chosen one the panels and the webbing that go
// into a piece, and the prices it is sold for by cloth.

#include <QLabel>

#include "batch/job_list_edit.h"

namespace foldyard {

class ProductPage : public QWidget {
  Q_OBJECT

 public:
  explicit ProductPage(Document& document, QWidget* parent = nullptr);

  JobListEdit* products() const { return products_; }
  JobListEdit* panels() const { return panels_; }
  JobListEdit* webbing() const { return webbing_; }
  JobListEdit* prices() const { return prices_; }
  std::vector<QWidget*> tab_order() const;

 private:
  void show_product();
  void name_product();

  Document& document_;
  JobListEdit* products_;
  QLabel* panels_of_;
  JobListEdit* panels_;
  JobListEdit* webbing_;
  JobListEdit* prices_;
};

}  // namespace foldyard
