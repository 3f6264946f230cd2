// The page of the batch in the window: beside the page of the chosen roll.

#include <QAction>
#include <QMenu>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "window/batch_drag.h"
#include "window/main_window.h"

namespace foldyard {
namespace {

// Neither page decides how small the window may be: not the one that is not seen, and
// where words are long or the screen is small, the other is scrolled.
QScrollArea* scrolled(QWidget* page, Qt::ScrollBarPolicy across) {
  auto* scroller = new QScrollArea;
  scroller->setWidget(page);
  scroller->setWidgetResizable(true);
  scroller->setFocusPolicy(Qt::NoFocus);
  scroller->setHorizontalScrollBarPolicy(across);
  scroller->viewport()->setAutoFillBackground(false);
  page->setAutoFillBackground(false);
  return scroller;
}

}  // namespace

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
  pages->addWidget(scrolled(roll_page, Qt::ScrollBarAlwaysOff));
  pages->addWidget(scrolled(batch_page_, Qt::ScrollBarAsNeeded));
  auto* column = new QVBoxLayout(side);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  column->addWidget(page_tabs_);
  column->addWidget(pages, 1);
  connect(page_tabs_, &QTabBar::currentChanged, pages, &QStackedWidget::setCurrentIndex);
  new BatchDrag(shelf_, batch_page_);
  return side;
}

void MainWindow::add_batch_entry(QMenu* menu) {
  auto* action = menu->addAction(tr("&Show the batch"));
  action->setCheckable(true);
  action->setShortcut(tr("Ctrl+B"));
  connect(action, &QAction::toggled, this, &MainWindow::show_batch);
  connect(page_tabs_, &QTabBar::currentChanged, action, [action](int page) { action->setChecked(page == 1); });
}

void MainWindow::show_batch(bool shown) { page_tabs_->setCurrentIndex(shown ? 1 : 0); }

}  // namespace foldyard
