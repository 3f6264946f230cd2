#pragma once

// Pages under tabs, each in a place that scrolls where it is too small for it.

#include <QStackedWidget>
#include <QTabBar>
#include <QWidget>

namespace foldyard {

class PageTabs : public QWidget {
  Q_OBJECT

 public:
  // name: what a screen reader says of the tabs.
  explicit PageTabs(const QString& name, QWidget* parent = nullptr);

  void add(QWidget* page, const QString& words);
  QTabBar* tabs() const { return tabs_; }
  void choose(const QWidget* page);

 private:
  QTabBar* tabs_;
  QStackedWidget* pages_;
  std::vector<const QWidget*> places_;
};

}  // namespace foldyard
