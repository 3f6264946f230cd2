#include "batch/page_tabs.h"

#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace foldyard {
namespace {

QScrollArea* scrolled(QWidget* page) {
  auto* area = new QScrollArea;
  area->setWidget(page);
  area->setWidgetResizable(true);
  area->setFocusPolicy(Qt::NoFocus);
  area->viewport()->setAutoFillBackground(false);
  page->setAutoFillBackground(false);
  return area;
}

}  // namespace

PageTabs::PageTabs(const QString& name, QWidget* parent) : QWidget(parent), tabs_(new QTabBar), pages_(new QStackedWidget) {
  tabs_->setAccessibleName(name);
  tabs_->setExpanding(false);
  tabs_->setDrawBase(false);
  tabs_->setUsesScrollButtons(true);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(4);
  layout->addWidget(tabs_);
  layout->addWidget(pages_, 1);
  connect(tabs_, &QTabBar::currentChanged, pages_, &QStackedWidget::setCurrentIndex);
}

void PageTabs::add(QWidget* page, const QString& words) {
  pages_->addWidget(scrolled(page));
  places_.push_back(page);
  tabs_->addTab(words);
}

void PageTabs::choose(const QWidget* page) {
  const auto place = std::find(places_.begin(), places_.end(), page);
  if (place != places_.end()) tabs_->setCurrentIndex(static_cast<int>(place - places_.begin()));
}

}  // namespace foldyard
