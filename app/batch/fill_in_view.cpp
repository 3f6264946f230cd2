#include "batch/fill_in_view.h"

#include <QHeaderView>

namespace foldyard {
namespace {

QTableView* view_of(QAbstractItemModel* model, const QString& name) {
  auto* view = new QTableView;
  view->setModel(model);
  view->setAccessibleName(name);
  view->setTabKeyNavigation(false);
  view->setShowGrid(false);
  view->setAlternatingRowColors(true);
  view->verticalHeader()->hide();
  view->verticalHeader()->setMinimumSectionSize(view->fontMetrics().height() + 10);
  view->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  view->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  view->horizontalHeader()->setMinimumSectionSize(44);
  view->horizontalHeader()->setStretchLastSection(true);
  view->horizontalHeader()->setHighlightSections(false);
  view->setMinimumHeight(4 * (view->fontMetrics().height() + 10));
  return view;
}

}  // namespace

QTableView* fill_in_view(FillInModel* model, const QString& name) {
  auto* view = view_of(model, name);
  view->setItemDelegate(new CellEditor(view));
  view->setEditTriggers(QAbstractItemView::AllEditTriggers);
  return view;
}

QTableView* words_view(WordsModel* model, const QString& name) {
  auto* view = view_of(model, name);
  view->setEditTriggers(QAbstractItemView::NoEditTriggers);
  view->setSelectionBehavior(QAbstractItemView::SelectRows);
  view->setWordWrap(true);
  return view;
}

}  // namespace foldyard
