#include "batch/product_page.h"

#include <QVBoxLayout>

#include "batch/product_lists.h"
#include "measure/index.h"

namespace foldyard {

ProductPage::ProductPage(Document& document, QWidget* parent)
    : QWidget(parent), document_(document),
      products_(new JobListEdit(document, product_list(), tr("Products"), tr("Add a product"), tr("Take away"))), panels_of_(new QLabel) {
  const auto chosen = [this] { return products_->row(); };
  panels_ = new JobListEdit(document, piece_list(chosen), tr("Panels of a piece"), tr("Add a panel"), tr("Take the panel out"));
  webbing_ = new JobListEdit(document, webbing_cut_list(chosen), tr("Webbing of a piece"), tr("Add webbing"), tr("Take the webbing out"));
  prices_ = new JobListEdit(document, price_list(chosen), tr("Prices by cloth"), tr("Add a price"), tr("Take the price away"));
  panels_of_->setWordWrap(true);
  products_->table()->set_least_rows(4);
  for (JobListEdit* list : {panels_, webbing_, prices_}) list->table()->set_least_rows(2);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(products_, 3);
  layout->addWidget(panels_of_);
  for (JobListEdit* list : {panels_, webbing_, prices_}) layout->addWidget(list, 2);
  connect(products_, &JobListEdit::chosen, this, &ProductPage::show_product);
  connect(&document_, &Document::changed, this, &ProductPage::name_product);
  show_product();
}

std::vector<QWidget*> ProductPage::tab_order() const {
  std::vector<QWidget*> order;
  for (const JobListEdit* list : {products_, panels_, webbing_, prices_})
    for (QWidget* widget : list->tab_order()) order.push_back(widget);
  return order;
}

void ProductPage::show_product() {
  name_product();
  for (JobListEdit* list : {panels_, webbing_, prices_}) list->model()->show_anew();
}

void ProductPage::name_product() {
  const Job& job = document_.job();
  const int at = products_->row();
  const bool is_any = at >= 0 && at < std::ssize(job.products);
  panels_of_->setText(is_any ? tr("What goes into a piece of “%1”, and what it is sold for")
                                   .arg(QString::fromStdString(job.products[ix(at)].name))
                             : tr("Choose a product to see what goes into it."));
  const QString why = tr("Choose a product first");
  products_->set_can_add(!job.panels.empty(), tr("There is no panel to make one of"));
  panels_->set_can_add(is_any, why);
  prices_->set_can_add(is_any, why);
  webbing_->set_can_add(is_any && !job.webbings.empty(), is_any ? tr("There is no webbing yet; add one under Webbing") : why);
}

}  // namespace foldyard
