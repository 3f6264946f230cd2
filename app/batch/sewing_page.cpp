#include "batch/sewing_page.h"

#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

#include "batch/fill_in_view.h"
#include "batch/sewing_edits.h"
#include "fields/cloth_combo.h"
#include "fields/duration_text.h"
#include "language/spoken.h"
#include "language/utf8.h"
#include "measure/index.h"

namespace foldyard {
SewingPage::SewingPage(Document& document, Stopwatch::Clock clock, QWidget* parent)
    : QWidget(parent), document_(document), product_(new ClothCombo),
      orders_(new JobListEdit(document, sewing_order_list(place()), tr("Orders of operations"), tr("Add an order"), tr("Take away"))),
      use_(new QPushButton(tr("Use this one"))), steps_of_(new QLabel),
      steps_(new JobListEdit(document, step_list(place()), tr("Steps"), tr("Add a step"), tr("Take the step away"))),
      watch_(new WatchRow(std::move(clock))), side_by_side_(new WordsModel(this)),
      compared_(words_view(side_by_side_, tr("Orders of operations side by side"))) {
  side_by_side_->set_plain(true);
  arrange();
  connect_all();
  follow_job();
}

// The lists ask while they are being made, too, before there is a product to choose.
SewingPlace SewingPage::place() {
  SewingPlace place;
  place.product = [this] { return product_->currentIndex(); };
  place.order = [this] { return chosen_order(); };
  place.pieces = [this](int product) {
    return product >= 0 && product < std::ssize(pieces_) ? pieces_[ix(product)] : 0;
  };
  return place;
}

void SewingPage::arrange() {
  auto* label = new QLabel(tr("Product"));
  label->setBuddy(product_);
  product_->setAccessibleName(tr("Product that is sewn"));
  auto* top = new QHBoxLayout;
  top->addWidget(label);
  top->addWidget(product_, 1);
  orders_->table()->add_button(use_);
  orders_->table()->set_least_rows(2);
  use_->setToolTip(tr("Reckon with this order of operations from now on"));
  steps_of_->setWordWrap(true);
  steps_->table()->set_least_rows(3);
  auto* beside = new QLabel(tr("Side by side"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addLayout(top);
  layout->addWidget(orders_, 2);
  layout->addWidget(steps_of_);
  layout->addWidget(steps_, 3);
  layout->addWidget(watch_);
  layout->addWidget(beside);
  layout->addWidget(compared_, 3);
}

void SewingPage::connect_all() {
  connect(product_, &QComboBox::currentIndexChanged, this, [this] {
    orders_->model()->show_anew();
    if (orders_->model()->rowCount() > 0) orders_->table()->choose(0);
  });
  connect(orders_, &JobListEdit::chosen, this, &SewingPage::show_order);
  connect(steps_, &JobListEdit::chosen, this, &SewingPage::name_timed);
  connect(use_, &QPushButton::clicked, this, &SewingPage::use_order);
  connect(watch_, &WatchRow::lapped, this, &SewingPage::keep_lap);
  connect(&document_, &Document::changed, this, &SewingPage::follow_job);
}

std::vector<QWidget*> SewingPage::tab_order() const {
  std::vector<QWidget*> order{product_};
  for (QWidget* widget : orders_->tab_order()) order.push_back(widget);
  order.push_back(use_);
  for (QWidget* widget : steps_->tab_order()) order.push_back(widget);
  for (QWidget* widget : watch_->tab_order()) order.push_back(widget);
  order.push_back(compared_);
  return order;
}

void SewingPage::set_pieces(std::vector<std::int64_t> pieces) {
  pieces_ = std::move(pieces);
  orders_->model()->refresh();
  steps_->model()->refresh();
  show_side_by_side();
}

void SewingPage::choose_product(int product) { product_->setCurrentIndex(product); }

// Products are followed by their places.
void SewingPage::follow_job() {
  const auto& products = document_.job().products;
  const int before = product_->currentIndex();
  {
    const QSignalBlocker quiet(product_);
    while (product_->count() > std::ssize(products)) product_->removeItem(product_->count() - 1);
    for (int i = 0; i < std::ssize(products); ++i) {
      const QString name = text(products[ix(i)].name);
      if (i < product_->count()) product_->setItemText(i, name);
      else product_->addItem(name);
    }
  }
  if (product_->currentIndex() != before || orders_->row() < 0) {
    orders_->model()->show_anew();
    if (orders_->model()->rowCount() > 0) orders_->table()->choose(0);
  }
  orders_->set_can_add(!products.empty(), tr("There is no product yet; add one under Products"));
  show_side_by_side();
  name_timed();
}

// The one that is chosen, else the one that is used.
int SewingPage::chosen_order() const { return std::max(orders_ ? orders_->row() : 0, 0); }

void SewingPage::show_order() {
  const auto& products = document_.job().products;
  const int product = product_->currentIndex(), order = orders_->row();
  use_->setEnabled(order > 0);
  const bool is_any = product >= 0 && order >= 0 && product < std::ssize(products) &&
                      order < std::ssize(products[ix(product)].sewing);
  steps_of_->setText(is_any ? tr("Steps of “%1”").arg(text(products[ix(product)].sewing[ix(order)].name))
                            : tr("There is no order of operations yet; add one and say its steps."));
  steps_->set_can_add(is_any, tr("Add an order of operations first"));
  steps_->model()->show_anew();
  if (steps_->model()->rowCount() > 0) steps_->table()->choose(0);
}

void SewingPage::name_timed() {
  const SewingStep* step = step_at(document_.job(), {product_->currentIndex(), chosen_order(), steps_->row()});
  watch_->set_timed(step ? tr("“%1”").arg(text(step->name)) : QString());
}

void SewingPage::show_side_by_side() {
  const int product = product_->currentIndex();
  const bool is_any = product >= 0 && product < std::ssize(document_.job().products);
  const auto table = is_any ? steps_side_by_side(document_.job(), product, place().pieces(product)) : SideBySideSteps{};
  side_by_side_->show(table.head, table.rows);
}

void SewingPage::use_order() {
  const int product = product_->currentIndex(), order = orders_->row();
  if (product < 0 || order <= 0) return;
  const Job& job = document_.job();
  const QString name = text(job.products[ix(product)].sewing[ix(order)].name);
  document_.edit(with_order_used(job, product, order), tr("use the order “%1”").arg(name));
  orders_->table()->choose(0);
}

void SewingPage::keep_lap(Duration time) {
  const StepPlace place{product_->currentIndex(), chosen_order(), steps_->row()};
  const SewingStep* step = step_at(document_.job(), place);
  if (!step) return;
  const QString words = tr("time the step “%1”: %2").arg(text(step->name), duration_text(time));
  if (const auto problem = document_.edit(with_time(document_.job(), place, time), words))
    return steps_->table()->refuse(spoken(*problem));
  steps_->table()->choose((place.step + 1) % steps_->model()->rowCount());
}

}  // namespace foldyard
