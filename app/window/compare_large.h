#pragma once

// CompareLarge: pins fold ways and shows those that are pinned large beside each
// other, in the place of the chosen plan. As soon as two are pinned they are
// shown; the button, or Escape, goes back and forth.
//
// A way is pinned by the pin on its card, by C on its card, row or point, or by
// their context menu. A plan made by hand stands for its way.

#include <QMenu>
#include <QObject>
#include <QPushButton>
#include <QStackedWidget>

#include "window/by_hand.h"
#include "window/pinned_ways.h"
#include "window/side_by_side.h"
#include "window/way_cards.h"

namespace foldyard {

class CompareLarge : public QObject {
  Q_OBJECT

 public:
  CompareLarge(WayTable* table, WayCards* cards, QWidget* graph, PlanView* view, ByHand* by_hand, QObject* parent = nullptr);

  // The chosen plan, or the comparison.
  QStackedWidget* pages() const { return pages_; }
  QPushButton* button() const { return button_; }
  SideBySide* page() const { return page_; }
  PinnedWays* pinned() const { return pinned_; }
  bool is_shown() const { return pages_->currentWidget() == page_; }
  // Entries for the way that is chosen.
  void fill(QMenu* menu);

 public slots:
  void toggle(int row);
  void set_shown(bool shown);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void refresh();
  std::vector<ComparedPlan> plans() const;

  WayTable* table_;
  ByHand* by_hand_;
  PinnedWays* pinned_;
  SideBySide* page_;
  QStackedWidget* pages_;
  QPushButton* button_;
};

}  // namespace foldyard
