// The page of the batch in the window: beside the page of the chosen roll.

#include <QAction>
#include <QMenu>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "window/main_window.h"

namespace foldyard {

QWidget* MainWindow::with_batch(QWidget* roll_page) {
  auto* side = new QWidget;
  auto* pages = new QStackedWidget;
  batch_page_ = new BatchPage(document_);
  page_tabs_ = new QTabBar;
  page_tabs_->setAccessibleName(tr("Page"));
  page_tabs_->setDrawBase(false);
  page_tabs_->setExpanding(false);
  page_tabs_->addTab(tr("One roll"));
  page_tabs_->addTab(tr("Batch"));
  page_tabs_->setTabToolTip(1, tr("An order planned over all rolls of the shelf (Ctrl+B)"));
  pages->addWidget(roll_page);
  pages->addWidget(batch_page_);
  auto* column = new QVBoxLayout(side);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  column->addWidget(page_tabs_);
  column->addWidget(pages, 1);
  connect(page_tabs_, &QTabBar::currentChanged, pages, &QStackedWidget::setCurrentIndex);
  return side;
}

void MainWindow::add_batch_entry(QMenu* view) {
  auto* action = view->addAction(tr("The &batch"));
  action->setCheckable(true);
  action->setShortcut(tr("Ctrl+B"));
  connect(action, &QAction::toggled, this, &MainWindow::show_batch);
  connect(page_tabs_, &QTabBar::currentChanged, action, [action](int page) { action->setChecked(page == 1); });
}

void MainWindow::show_batch(bool shown) { page_tabs_->setCurrentIndex(shown ? 1 : 0); }

}  // namespace foldyard
