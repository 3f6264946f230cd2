#pragma once

// What can be done with a roll on the shelf, once for the menu bar and for the
// list's own menu. Keys that also mean something elsewhere (Enter, Delete) hold
// only while the list has the focus.

#include <QAction>
#include <QCoreApplication>
#include <QList>

class QWidget;

namespace foldyard {

struct ShelfActions {
  Q_DECLARE_TR_FUNCTIONS(foldyard::ShelfActions)

 public:
  // list: who has the keys and shows them in its menu.
  explicit ShelfActions(QWidget* list);

  QAction* put = nullptr;
  QAction* all_about = nullptr;
  QAction* measure = nullptr;
  QAction* copy = nullptr;
  QAction* take_away = nullptr;
  QAction* up = nullptr;
  QAction* down = nullptr;
  QAction* find = nullptr;

  // In the order of a menu; null where a line stands between.
  QList<QAction*> in_order() const;
};

}  // namespace foldyard
