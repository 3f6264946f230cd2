#include "batch/job_list_edit.h"

#include <QVBoxLayout>

#include <algorithm>

namespace foldyard {

JobListEdit::JobListEdit(Document& document, JobList list, const QString& name, const QString& add, const QString& take,
                         QWidget* parent)
    : QWidget(parent), model_(new JobTable(document, std::move(list), this)), table_(new EditTable(model_, name)),
      add_(new QPushButton(add)), take_(new QPushButton(take)),
      up_(new QPushButton(tr("Up"))), down_(new QPushButton(tr("Down"))) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(table_);
  for (QPushButton* button : {add_, take_, up_, down_}) table_->add_button(button);
  add_->setVisible(!add.isEmpty());
  take_->setVisible(!take.isEmpty());
  for (QPushButton* button : {up_, down_}) button->setVisible(model_->rows().move != nullptr);
  up_->setToolTip(tr("Move the chosen row up"));
  down_->setToolTip(tr("Move the chosen row down"));
  connect(add_, &QPushButton::clicked, this, &JobListEdit::add);
  connect(take_, &QPushButton::clicked, this, &JobListEdit::take);
  connect(up_, &QPushButton::clicked, this, &JobListEdit::move_up);
  connect(down_, &QPushButton::clicked, this, &JobListEdit::move_down);
  connect(table_, &EditTable::left, &document, &Document::end_field);
  connect(table_, &EditTable::chosen, this, &JobListEdit::show_state);
  connect(model_, &QAbstractItemModel::modelReset, this, &JobListEdit::show_state);
  show_state();
}

std::vector<QWidget*> JobListEdit::tab_order() const {
  std::vector<QWidget*> order{view()};
  for (QPushButton* button : {add_, take_, up_, down_})
    if (!button->isHidden()) order.push_back(button);
  return order;
}

void JobListEdit::set_can_add(bool can, const QString& why_not) {
  add_->setEnabled(can);
  add_->setToolTip(can ? QString() : why_not);
}

void JobListEdit::add() {
  if (const auto refused = model_->add()) return table_->refuse(*refused);
  table_->choose(model_->rowCount() - 1);
  view()->setFocus();
}

// The row that takes its place is chosen then.
void JobListEdit::take() {
  const int at = row();
  if (at < 0) return;
  if (const auto refused = model_->take(at)) return table_->refuse(*refused);
  table_->choose(std::min(at, model_->rowCount() - 1));
}

// It stays chosen.
void JobListEdit::move(int by) {
  const int at = row();
  if (at < 0 || at + by < 0 || at + by >= model_->rowCount()) return;
  if (const auto refused = model_->move(at, by)) return table_->refuse(*refused);
  table_->choose(at + by);
}

void JobListEdit::show_state() {
  take_->setEnabled(row() >= 0);
  up_->setEnabled(row() > 0);
  down_->setEnabled(row() >= 0 && row() + 1 < model_->rowCount());
  emit chosen(row());
}

}  // namespace foldyard
