#pragma once

// The small signs that stand for what is special of a roll. Each has a shape of
// its own; the words are in the roll's tool tip and accessible text.

#include <QRectF>

#include "shelf/roll_words.h"

class QPainter;
class QColor;

namespace foldyard {

// nap: an arrow the way it runs, up, or to the right on railroaded cloth;
// railroaded: two rails; repeat: two diamonds; shrinkage: two arrows towards each
// other; flaws: their number in a ring.
void paint_mark(QPainter& painter, const QRectF& box, const Roll& roll, RollMark mark, const QColor& ink);

}  // namespace foldyard
