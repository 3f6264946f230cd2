#pragma once

// The icons of the window, drawn for this trade (resources/icons): what stands on
// buttons and in menus beside their words.
//
// Drawn in the ink of the application's palette when they are painted, so they
// follow light and dark, and are sharp at every scale. What cannot be used now is
// drawn in the palette's ink for that, what is chosen in the ink on the chosen ground.
// A menu asks for the active icon of the entry that is chosen, a button of one that
// merely has the focus; so each has icons of its own.

#include <QIcon>

namespace foldyard {

enum class TradeIcon {
  roll_on_table,
  roll_add,
  roll_tag,
  roll_measure,
  panel_add,
  goods_add,
  take_away,
  cut,
  lay,
  paper,
  stopwatch,
  compare,
};
inline constexpr int kTradeIcons = 12;

enum class IconPlace { button, menu };

QIcon trade_icon(TradeIcon icon, IconPlace place = IconPlace::menu);

}  // namespace foldyard
