#include "window/panel_table.h"

#include <QHeaderView>
#include <QVBoxLayout>

#include "drawing/goods_words.h"
#include "fields/cell_editor.h"
#include "fields/field_text.h"
#include "fields/flow_row.h"
#include "language/heading_words.h"
#include "language/spoken.h"

namespace foldyard {

PanelTable::PanelTable(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), model_(new PanelModel(document, this)), view_(new QTableView(this)),
      add_(new QPushButton(tr("&Add a panel"), this)), goods_(new QPushButton(tr("Add &goods"), this)),
      take_(new QPushButton(tr("Ta&ke away"), this)),
      more_(new QCheckBox(tr("More columns: limit, match, grain"), this)), reason_(new QLabel(this)) {
  auto* editor = new CellEditor(this);
  view_->setModel(model_);
  view_->setItemDelegate(editor);
  arrange();
  connect(editor, &CellEditor::left, &document_, &Document::end_field);
  connect(add_, &QPushButton::clicked, this, &PanelTable::add_panel);
  connect(take_, &QPushButton::clicked, this, &PanelTable::take_away);
  for (const auto& show : {&PanelTable::show_state, &PanelTable::show_columns}) {
    connect(model_, &PanelModel::dataChanged, this, show);
    connect(model_, &PanelModel::modelReset, this, show);
  }
  connect(more_, &QCheckBox::toggled, this, &PanelTable::show_columns);
  connect(view_->selectionModel(), &QItemSelectionModel::currentChanged, this, &PanelTable::show_state);
  show_state();
  show_columns();
}

void PanelTable::arrange() {
  view_->setAccessibleName(tr("Panels"));
  view_->verticalHeader()->hide();
  view_->verticalHeader()->setMinimumSectionSize(fontMetrics().height() + 12);
  view_->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  view_->setShowGrid(false);
  view_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  view_->horizontalHeader()->setSectionResizeMode(PanelModel::name, QHeaderView::Stretch);
  view_->horizontalHeader()->setMinimumSectionSize(40);
  view_->horizontalHeader()->setHighlightSections(false);
  view_->setTabKeyNavigation(false);
  view_->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                         QAbstractItemView::AnyKeyPressed | QAbstractItemView::SelectedClicked);
  view_->setMinimumHeight(5 * (fontMetrics().height() + 12));
  reason_->setWordWrap(true);
  reason_->setProperty("fault", true);
  goods_->setMenu(goods_menu());
  goods_->setToolTip(tr("Panels of ready goods, from their finished sizes"));
  auto* row = new FlowBar;
  row->row()->addWidget(add_);
  row->row()->addWidget(goods_);
  row->row()->addWidget(take_);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  more_->setToolTip(tr("The most that is cut of a panel, how it lies to a repeat, and its grain on railroaded cloth"));
  layout->addWidget(view_, 1);
  layout->addWidget(more_);
  layout->addWidget(reason_);
  layout->addWidget(row);
}

// The sizes in the unit that the job has when the menu opens.
QMenu* PanelTable::goods_menu() {
  auto* menu = new QMenu(this);
  connect(menu, &QMenu::aboutToShow, this, [this, menu] {
    menu->clear();
    for (const ReadyGoods& ready : ready_goods()) {
      const auto name = spoken(ready.name);
      menu->addAction(tr("%1 (%2)").arg(name, goods_words(ready.goods, document_.job().unit)), this,
                      [this, &ready] { show_added(model_->add_ready(ready)); });
    }
  });
  return menu;
}

void PanelTable::add_panel() { show_added(model_->add_panel()); }

void PanelTable::show_added(const std::optional<Problem>& problem) {
  if (problem) return show_refused(*problem);
  view_->setCurrentIndex(model_->index(model_->rowCount() - 1, PanelModel::name));
  view_->setFocus();
}

void PanelTable::take_away() {
  const auto current = view_->currentIndex();
  if (!current.isValid()) return;
  if (const auto problem = model_->take_away(current.row())) show_refused(*problem);
}

void PanelTable::show_refused(const Problem& problem) {
  reason_->setText(problem_text(problem, document_.job()));
  reason_->show();
}

// Beside rare columns the name keeps room for a word, and the rest is scrolled to.
void PanelTable::show_columns() {
  auto* header = view_->horizontalHeader();
  const bool is_crowded = more_->isChecked();
  QStringList used;
  for (int column = 0; column < PanelModel::columns; ++column) {
    view_->setColumnHidden(column, PanelModel::is_rare(column) && !is_crowded);
    if (model_->is_used(column)) used << heading_words(model_->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString());
  }
  header->setSectionResizeMode(PanelModel::name, is_crowded ? QHeaderView::Interactive : QHeaderView::Stretch);
  if (is_crowded) header->resizeSection(PanelModel::name, 12 * fontMetrics().averageCharWidth());
  more_->setText(used.isEmpty() ? tr("More columns: limit, match, grain")
                                : tr("More columns; in use: %1").arg(used.join(QStringLiteral(", "))));
}

void PanelTable::show_state() {
  take_->setEnabled(model_->rowCount() > 1 && view_->currentIndex().isValid());
  const auto reason = model_->first_reason();
  reason_->setText(reason);
  reason_->setVisible(!reason.isEmpty());
}

}  // namespace foldyard
