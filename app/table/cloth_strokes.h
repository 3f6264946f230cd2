#pragma once

// What cloth on the table is drawn with, in pixels of the screen: weave, chalk
// lines, hatched waste, tags, turned edges. Strokes and words keep their size
// at every zoom; what would be too small to be read is left out.
//
// A panel is told by its name, the hatch of its tag and its chalk outline, so
// by more than colour.

#include <QColor>
#include <QLineF>
#include <QRectF>
#include <QString>

class QPainter;

namespace foldyard {

struct ClothLook {
  QColor cloth;
  QColor chalk;
  bool dark = false;  // of the window around the table
};

struct PanelWords {
  QString name;
  QString detail;
};

void paint_weave(QPainter& painter, const QRectF& box, const ClothLook& look);
// lit: the pointer or the keyboard is on it, or on a copy of it.
void paint_panel(QPainter& painter, const QRectF& box, const ClothLook& look, int panel,
                 const PanelWords& words, bool lit);
// A remnant has a tag with its size; an offcut says it only where there is room.
void paint_rest(QPainter& painter, const QRectF& box, const ClothLook& look, const QString& size,
                bool remnant, bool lit);
void paint_selvedge(QPainter& painter, const QRectF& band, const ClothLook& look);
// A turned edge: two lines that end in a round, and a soft shadow. `inward`
// points from the edge into the cloth.
void paint_fold_edge(QPainter& painter, const QLineF& edge, const QPointF& inward, const ClothLook& look);
// Where the flat cloth is folded; held: the hand is on it.
void paint_fold_line(QPainter& painter, const QLineF& line, const ClothLook& look, bool held);
// The way of the nap, beside the cloth.
void paint_nap(QPainter& painter, const QLineF& arrow, const QColor& ink);

}  // namespace foldyard
