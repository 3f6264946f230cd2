#include "batch/webbing_page.h"

#include <QLabel>
#include <QVBoxLayout>

#include "batch/webbing_lists.h"

namespace foldyard {

WebbingPage::WebbingPage(Document& document, QWidget* parent)
    : QWidget(parent),
      webbings_(new JobListEdit(document, webbing_list(), tr("Webbing, tape, cord and zips"), tr("Add webbing"), tr("Take away"))),
      figures_(new JobListEdit(document, notion_list(), tr("Thread, labels and prices"), {}, {})) {
  webbings_->table()->set_least_rows(3);
  figures_->table()->set_least_rows(figures_->model()->rowCount());
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(webbings_, 3);
  layout->addWidget(new QLabel(tr("Thread, labels and prices")));
  layout->addWidget(figures_, 3);
}

std::vector<QWidget*> WebbingPage::tab_order() const {
  std::vector<QWidget*> order = webbings_->tab_order();
  for (QWidget* widget : figures_->tab_order()) order.push_back(widget);
  return order;
}

}  // namespace foldyard
