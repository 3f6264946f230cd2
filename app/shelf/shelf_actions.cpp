#include "shelf/shelf_actions.h"

#include <QWidget>

#include "fields/trade_icon.h"

namespace foldyard {
namespace {

QAction* action(QWidget* list, const QString& text, const QKeySequence& keys, Qt::ShortcutContext where) {
  auto* made = new QAction(text, list);
  made->setShortcut(keys);
  made->setShortcutContext(where);
  return made;
}

QAction* on_list(QWidget* list, const QString& text, const QKeySequence& keys) {
  return action(list, text, keys, Qt::WidgetShortcut);
}

QAction* in_window(QWidget* list, const QString& text, const QKeySequence& keys = {}) {
  return action(list, text, keys, Qt::WindowShortcut);
}

}  // namespace

ShelfActions::ShelfActions(QWidget* list)
    : put(in_window(list, tr("&Put on the table"), tr("Ctrl+T"))),
      all_about(in_window(list, tr("&All about this roll…"), tr("Ctrl+I"))),
      measure(in_window(list, tr("&Measured…"))), copy(in_window(list, tr("&Duplicate"), tr("Ctrl+D"))),
      take_away(on_list(list, tr("&Take away"), QKeySequence::Delete)),
      up(on_list(list, tr("Move &up"), tr("Ctrl+Shift+Up"))), down(on_list(list, tr("Move d&own"), tr("Ctrl+Shift+Down"))),
      find(in_window(list, tr("&Find a roll"), QKeySequence::Find)) {
  put->setIcon(trade_icon(TradeIcon::roll_on_table));
  all_about->setIcon(trade_icon(TradeIcon::roll_tag));
  measure->setIcon(trade_icon(TradeIcon::roll_measure));
  take_away->setIcon(trade_icon(TradeIcon::take_away));
  for (QAction* made : in_order()) {
    if (made) {
      list->addAction(made);
      continue;
    }
    auto* line = new QAction(list);
    line->setSeparator(true);
    list->addAction(line);
  }
}

QList<QAction*> ShelfActions::in_order() const {
  return {put, all_about, measure, nullptr, copy, take_away, nullptr, up, down, nullptr, find};
}

}  // namespace foldyard
