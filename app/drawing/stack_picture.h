#pragma once

// A stack of folded lengths on the table, seen from its end: which roll lies where, top
// to bottom, each with its plies, and the height that goes under the cutter.
//
// Widths are true to each other, and so are heights; heights are drawn a whole number of
// times larger than widths, and the picture says how many.

#include <QRectF>
#include <QString>

#include <vector>

#include "drawing/batch_tables.h"

class QPainter;

namespace foldyard {

// Lengths of one roll that lie on each other.
struct StackBand {
  QString roll;
  std::string colour;
  int lengths = 0;
  int plies = 0;  // of all of them
  Length height;
};

struct StackData {
  std::vector<StackBand> bands;  // top to bottom
  Length width;                  // of the folded cloth
  Length height;
  Length limit;  // of the cutter
};

// REQUIRES a lay of the answer's plan.
StackData stack_data(const BatchAnswer& answer, int lay);
// "1 × Slate, 2 plies, 2 mm", top to bottom.
QStringList stack_band_words(const StackData& stack);
// How many times larger heights are drawn than widths in a picture of this size.
int stack_stretch(const StackData& stack, const QSizeF& size);
void draw_stack(QPainter& painter, const QRectF& area, const StackData& stack);

}  // namespace foldyard
