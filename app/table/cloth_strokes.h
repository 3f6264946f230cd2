#pragma once

// What cloth on the table is drawn with, in pixels of the screen: weave, chalk
// lines, hatched waste, tags, turned edges. Strokes and words keep their size
// at every zoom; what would be too small to be read is left out.
//
// Of a panel less than 21 px high or wide only the ground and an outline are left,
// below 4 px only the ground; of a rest below 4 px, too. These are many, and are
// painted together (SmallPatches).
//
// A panel is told by its name, the hatch of its tag and its chalk outline, so
// by more than colour.

#include <QColor>
#include <QLineF>
#include <QRectF>
#include <QString>

#include <vector>

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

// shown: what of it can be seen.
void paint_weave(QPainter& painter, const QRectF& box, const QRectF& shown, const ClothLook& look);
void paint_shadow(QPainter& painter, const QRectF& box);
// Whether there is room for words on a panel.
bool has_words(const QRectF& box);
// lit: the pointer or the keyboard is on it, or on a copy of it.
void paint_panel(QPainter& painter, const QRectF& box, const ClothLook& look, int panel,
                 const PanelWords& words, bool lit);
// The panels and rests that are too small for more than a ground and an outline.
class SmallPatches {
 public:
  // False: it is large enough to be painted by itself.
  bool takes(const QRectF& box, bool rest);
  void paint(QPainter& painter, const ClothLook& look) const;

 private:
  std::vector<QRectF> bare_;
  std::vector<QRectF> outlined_;
  std::vector<QRectF> rests_;
};

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
