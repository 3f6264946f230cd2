#pragma once

// The colours of the drawing room, and the only place that names any.
//
// Ground is white paper. Panels take the colour-blind safe set of Okabe and
// Ito (https://jfly.uni-koeln.de/color/), lightened, each with a hatch of its
// own and an ink outline, so that none is told apart by colour alone.
//
// Properties (tested): ink, soft ink, chalk and blade have a contrast of at
// least 4.5 : 1 on paper, on the tape and on every panel's fill; two of the
// first eight panels never share a hatch.

#include <QColor>
#include <string>

#include "drawing/hatch.h"

namespace foldyard {

namespace palette {
QColor paper();
QColor ink();       // outlines, text
QColor soft_ink();  // secondary text
QColor thread();    // hairlines and grounds that carry no meaning alone
QColor pale();      // every second lay on the roll
QColor tape();      // the measuring tape
QColor chalk();     // fold lines and headings
QColor blade();     // cuts
}  // namespace palette

struct PanelLook {
  QColor fill;
  QColor line;
  Hatch hatch = Hatch::none;
};

PanelLook panel_look(int panel);

// The ground of the cloth: "#rrggbb" thinned until ink is readable on it; a
// plain linen tone if the text is no colour.
QColor cloth_ground(const std::string& colour);

// Contrast of two colours, 1 … 21 (WCAG 2.2, relative luminance).
double contrast(const QColor& a, const QColor& b);

}  // namespace foldyard
