#pragma once

// An entry of a menu that acts when it is chosen or its keys are pressed.

#include <QAction>
#include <QKeySequence>
#include <QMenu>

#include <functional>

namespace foldyard {

inline QAction* entry(QMenu* menu, const QString& text, const QKeySequence& keys, QObject* owner,
                      const std::function<void()>& act) {
  auto* action = menu->addAction(text);
  action->setShortcut(keys);
  QObject::connect(action, &QAction::triggered, owner, act);
  return action;
}

}  // namespace foldyard
