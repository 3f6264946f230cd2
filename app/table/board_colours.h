#pragma once

// The colours of the cutting table seen from above, light and dark, and the
// only place in this room that names any.
//
// Cloth keeps the roll's own colour. What is drawn on it is chalk: white on
// dark cloth, black on light cloth, whichever is told apart better. For
// any cloth the chalk has a contrast of at least 4.5 : 1 on it (tested).

#include <QColor>

#include <string>

namespace foldyard {

struct BoardColours {
  QColor board;       // the table top
  QColor rim;         // beyond the table
  QColor grain;       // its faint lines; carry no meaning
  QColor tape;        // the tapes along two edges
  QColor on_tape;
  QColor shadow;      // under the cloth and its folds
  QColor tag;         // a label that lies on the cloth
  QColor on_tag;
  QColor pointed;     // what the pointer or the keyboard is on
  QColor ink;         // words on the board
};

const BoardColours& board_colours(bool dark);

// The cloth as it is; a linen tone where the text is no colour.
QColor cloth_colour(const std::string& colour);
QColor chalk_on(const QColor& cloth);

}  // namespace foldyard
