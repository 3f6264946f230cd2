#include "batch/order_table.h"

#include <QVBoxLayout>

#include "batch/order_edits.h"
#include "batch/order_lists.h"
#include "batch/order_words.h"
#include "measure/index.h"

namespace foldyard {

OrderTable::OrderTable(Document& document, QWidget* parent)
    : QWidget(parent), document_(document),
      lines_(new JobListEdit(document, line_list(), tr("Order"), tr("Add a line"), tr("Take away"))), rules_of_(new QLabel),
      rules_(new JobListEdit(document, rule_list([this] { return lines_->row(); }), tr("Rules of the line"), tr("Add a rule"),
                             tr("Take the rule away"))) {
  rules_of_->setWordWrap(true);
  lines_->table()->set_least_rows(4);
  rules_->table()->set_least_rows(2);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(lines_, 3);
  layout->addWidget(rules_of_);
  layout->addWidget(rules_, 2);
  connect(lines_, &JobListEdit::chosen, this, &OrderTable::show_line);
  connect(&document_, &Document::changed, this, &OrderTable::name_line);
  show_line();
}

std::vector<QWidget*> OrderTable::tab_order() const {
  std::vector<QWidget*> order = lines_->tab_order();
  for (QWidget* widget : rules_->tab_order()) order.push_back(widget);
  return order;
}

void OrderTable::show_line() {
  name_line();
  rules_->model()->show_anew();
}

void OrderTable::name_line() {
  const Job& job = document_.job();
  const int line = lines_->row();
  const bool is_any = line >= 0 && line < std::ssize(job.order.lines);
  rules_of_->setText(is_any ? tr("Rules for “%1”: how many of a cloth or a mark").arg(product_name(job, job.order.lines[ix(line)]))
                            : tr("Choose a line to see and to make its rules."));
  lines_->set_can_add(!job.products.empty(), tr("There is no product yet; add one under Products"));
  rules_->set_can_add(is_any, tr("Choose a line of the order first"));
}

void OrderTable::order_all() {
  const QString words = document_.job().products.empty() ? tr("make an order from the panels") : tr("make an order from the products");
  const Job next = with_order_of_all(document_.job());
  if (const auto problem = document_.edit(next, words)) lines_->table()->refuse(order_problem_text(*problem, next));
}

}  // namespace foldyard
