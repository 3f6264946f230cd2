#include "shelf/flaw_table.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QVBoxLayout>

namespace foldyard {

FlawTable::FlawTable(Roll& roll, Unit unit, QWidget* parent)
    : QWidget(parent), model_(new FlawModel(roll, unit, this)), view_(new QTableView(this)),
      add_(new QPushButton(tr("Add a &flaw"), this)), take_(new QPushButton(tr("Ta&ke the flaw away"), this)), reason_(new QLabel(this)) {
  view_->setModel(model_);
  view_->setItemDelegate(new CellEditor(this));
  arrange();
  connect(add_, &QPushButton::clicked, this, &FlawTable::add);
  connect(take_, &QPushButton::clicked, this, &FlawTable::take_away);
  connect(model_, &QAbstractItemModel::dataChanged, this, &FlawTable::show_state);
  connect(model_, &QAbstractItemModel::rowsInserted, this, &FlawTable::show_state);
  connect(model_, &QAbstractItemModel::rowsRemoved, this, &FlawTable::show_state);
  connect(view_->selectionModel(), &QItemSelectionModel::currentChanged, this, &FlawTable::show_state);
  show_state();
}

void FlawTable::arrange() {
  view_->setAccessibleName(tr("Flaws"));
  view_->verticalHeader()->hide();
  view_->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 12);
  view_->setShowGrid(false);
  view_->setTabKeyNavigation(false);
  view_->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                         QAbstractItemView::AnyKeyPressed | QAbstractItemView::SelectedClicked);
  view_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  view_->horizontalHeader()->setMinimumSectionSize(6 * fontMetrics().averageCharWidth() + 20);
  view_->horizontalHeader()->setSectionResizeMode(FlawModel::kind, QHeaderView::Stretch);
  view_->horizontalHeader()->setHighlightSections(false);
  view_->setMinimumHeight(4 * (fontMetrics().height() + 12));
  reason_->setWordWrap(true);
  reason_->setProperty("fault", true);
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(add_);
  buttons->addWidget(take_);
  buttons->addStretch();
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(view_, 1);
  layout->addWidget(reason_);
  layout->addLayout(buttons);
}

void FlawTable::add() {
  model_->add();
  view_->setCurrentIndex(model_->index(model_->rowCount() - 1, FlawModel::from));
  view_->setFocus();
}

void FlawTable::take_away() {
  if (view_->currentIndex().isValid()) model_->take_away(view_->currentIndex().row());
}

void FlawTable::show_state() {
  take_->setEnabled(view_->currentIndex().isValid());
  reason_->setText(model_->first_reason());
  reason_->setVisible(!reason_->text().isEmpty());
}

}  // namespace foldyard
