#pragma once

// HandMenu: all that can be set by hand, as a menu: in the menu bar, for the line
// that is held and the panel that is lit; and as a context menu of the cloth.

#include <QMenu>

#include <functional>
#include <optional>

#include "window/by_hand.h"

namespace foldyard {

class HandMenu : public QMenu {
  Q_OBJECT

 public:
  HandMenu(ByHand* by_hand, PlanView* view, QWidget* parent = nullptr);

  // Asks a person for a whole number from 1 on; none: it was called off.
  using AskNumber = std::function<std::optional<std::int64_t>(const QString& title, const QString& label, std::int64_t first)>;
  void set_ask(AskNumber ask) { ask_ = std::move(ask); }
  // line, patch: what the entries speak of, −1 for none.
  void fill(QMenu* menu, int line, int patch);

 private:
  void add_line(QMenu* menu, int line);
  void add_length(QMenu* menu);
  void add_panel(QMenu* menu, int panel, bool plural);
  void add_panels(QMenu* menu, int patch);
  void want(int panel);

  ByHand* by_hand_;
  PlanView* view_;
  AskNumber ask_;
};

}  // namespace foldyard
