#include "fields/edit_table.h"

#include <QHeaderView>
#include <QVBoxLayout>

namespace foldyard {
namespace {

constexpr int kMostSqueezed = 5;
constexpr int kWidestColumn = 180;

void set_headers(QTableView* view, const DraftTable& model, int row_height) {
  view->verticalHeader()->hide();
  view->verticalHeader()->setMinimumSectionSize(row_height);
  view->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  auto* header = view->horizontalHeader();
  header->setSectionResizeMode(QHeaderView::ResizeToContents);
  header->setMaximumSectionSize(kWidestColumn);
  // Of many columns none is squeezed to nothing; they can be scrolled.
  for (int column = 0; column < model.columnCount() && model.columnCount() <= kMostSqueezed; ++column) {
    if (!model.is_words(column)) continue;
    header->setSectionResizeMode(column, QHeaderView::Stretch);
    break;
  }
  header->setMinimumSectionSize(44);
  header->setHighlightSections(false);
}

}  // namespace

EditTable::EditTable(DraftTable* model, const QString& name, QWidget* parent)
    : QWidget(parent), model_(model), view_(new QTableView), reason_(new QLabel), buttons_(new FlowBar) {
  auto* editor = new CellEditor(this);
  view_->setModel(model);
  view_->setItemDelegate(editor);
  view_->setAccessibleName(name);
  arrange();
  connect(editor, &CellEditor::left, this, &EditTable::left);
  connect(model, &QAbstractItemModel::dataChanged, this, &EditTable::show_reason);
  connect(model, &QAbstractItemModel::modelReset, this, &EditTable::show_reason);
  connect(view_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
          [this](const QModelIndex& current) { emit chosen(current.row()); });
  show_reason();
}

void EditTable::arrange() {
  view_->setShowGrid(false);
  view_->setTabKeyNavigation(false);
  view_->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                         QAbstractItemView::AnyKeyPressed | QAbstractItemView::SelectedClicked);
  set_headers(view_, *model_, fontMetrics().height() + 12);
  set_least_rows(3);
  reason_->setWordWrap(true);
  reason_->setProperty("fault", true);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(view_, 1);
  layout->addWidget(reason_);
  layout->addWidget(buttons_);
}

void EditTable::set_least_rows(int rows) { view_->setMinimumHeight((rows + 1) * (fontMetrics().height() + 12) + 4); }

void EditTable::add_button(QPushButton* button) { buttons_->row()->addWidget(button); }

void EditTable::refuse(const QString& reason) {
  reason_->setText(reason);
  reason_->setVisible(!reason.isEmpty());
}

void EditTable::choose(int row, int column) { view_->setCurrentIndex(model_->index(row, column)); }

void EditTable::show_reason() { refuse(model_->first_reason()); }

}  // namespace foldyard
