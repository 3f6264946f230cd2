#pragma once

// The colours of the window, light and dark, and the only place in it that
// names any. The pictures of cloth keep their own (drawing/palette.h): paper
// stays light in the dark window too.
//
// Properties (tested): text reaches 4.5 : 1 on every ground it stands on, and
// what shows a control or its focus reaches 3 : 1 (WCAG 2.2, 1.4.3 and 1.4.11).

#include <QColor>
#include <QPalette>
#include <QString>

namespace foldyard {

struct WindowColours {
  QColor linen;      // ground of the window
  QColor field;      // ground of fields and tables
  QColor ink;        // text
  QColor soft_ink;   // secondary text, outlines of controls
  QColor faded_ink;  // text of what cannot be used now
  QColor chalk;      // what is chosen, and focus
  QColor on_chalk;   // text on it
  QColor tape;       // headings: a measuring tape
  QColor on_tape;
  QColor fault;      // what is refused
  QColor weave;      // threads of the ground; carries no meaning
};

enum class Shade { light, dark };

const WindowColours& window_colours(Shade shade);
QPalette window_palette(Shade shade);
QString window_style_sheet(Shade shade);

// The shade that a palette is of: by the lightness of its ground.
Shade shade_of(const QPalette& palette);

}  // namespace foldyard
