#include "batch/order_table.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QVBoxLayout>

#include "batch/line_editor.h"
#include "batch/order_edits.h"
#include "batch/order_words.h"
#include "batch/product_dialog.h"

namespace foldyard {

OrderTable::OrderTable(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), model_(new LineModel(document, this)), view_(new QTableView(this)),
      add_(new QPushButton(tr("Add a line"), this)), take_(new QPushButton(tr("Take away"), this)),
      products_(new QPushButton(tr("Products…"), this)), reason_(new QLabel(this)) {
  auto* editor = new LineEditor(this);
  view_->setModel(model_);
  view_->setItemDelegate(editor);
  arrange();
  connect(editor, &CellEditor::left, &document_, &Document::end_field);
  connect(add_, &QPushButton::clicked, this, &OrderTable::add_line);
  connect(take_, &QPushButton::clicked, this, &OrderTable::take_line);
  connect(products_, &QPushButton::clicked, this, &OrderTable::edit_products);
  connect(model_, &LineModel::dataChanged, this, &OrderTable::show_state);
  connect(model_, &LineModel::modelReset, this, &OrderTable::show_state);
  connect(&document_, &Document::changed, this, &OrderTable::show_state);
  connect(view_->selectionModel(), &QItemSelectionModel::currentChanged, this, &OrderTable::show_state);
  show_state();
}

void OrderTable::arrange() {
  view_->setAccessibleName(tr("Order"));
  view_->verticalHeader()->hide();
  view_->verticalHeader()->setMinimumSectionSize(fontMetrics().height() + 12);
  view_->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  view_->setShowGrid(false);
  view_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  view_->horizontalHeader()->setSectionResizeMode(LineModel::product, QHeaderView::Stretch);
  view_->horizontalHeader()->setMinimumSectionSize(44);
  view_->horizontalHeader()->setHighlightSections(false);
  view_->setTabKeyNavigation(false);
  view_->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                         QAbstractItemView::AnyKeyPressed | QAbstractItemView::SelectedClicked);
  view_->setMinimumHeight(4 * (fontMetrics().height() + 12));
  take_->setToolTip(tr("Takes the chosen line out of the order"));
  products_->setToolTip(tr("What is made: its worth, its price and the panels it takes"));
  reason_->setWordWrap(true);
  reason_->setProperty("fault", true);
  auto* buttons = new QHBoxLayout;
  for (QPushButton* button : {add_, take_, products_}) buttons->addWidget(button);
  buttons->addStretch();
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(view_, 1);
  layout->addWidget(reason_);
  layout->addLayout(buttons);
}

void OrderTable::add_line() {
  edit(with_line(document_.job()), tr("add a line to the order"));
  view_->setCurrentIndex(model_->index(model_->rowCount() - 1, LineModel::product));
  view_->setFocus();
}

void OrderTable::take_line() {
  const int row = view_->currentIndex().row();
  if (row < 0) return;
  const auto& job = document_.job();
  edit(without_line(job, row), tr("take “%1” out of the order").arg(product_name(job, job.order.lines[static_cast<std::size_t>(row)])));
}

void OrderTable::edit_products() {
  ProductDialog dialog(document_.job(), this);
  if (dialog.exec() == QDialog::Accepted) edit(dialog.job(), tr("change the products"));
}

void OrderTable::order_all() {
  edit(with_order_of_all(document_.job()), document_.job().products.empty() ? tr("make an order from the panels")
                                                                             : tr("make an order from the products"));
}

void OrderTable::edit(const Job& next, const QString& words) {
  const auto problem = document_.edit(next, words);
  show_state();
  if (!problem) return;
  reason_->setText(order_problem_text(*problem, next));
  reason_->show();
}

void OrderTable::show_state() {
  const auto& job = document_.job();
  add_->setEnabled(!job.products.empty());
  add_->setToolTip(job.products.empty() ? tr("There is no product yet; add one under Products") : QString());
  products_->setEnabled(!job.panels.empty());
  take_->setEnabled(view_->currentIndex().isValid());
  reason_->setText(model_->first_reason());
  reason_->setVisible(!reason_->text().isEmpty());
}

}  // namespace foldyard
