#pragma once

// A length of folded cloth as a small picture without words, to be told from
// others beside it at the same scale: panels, waste, fold edges.

#include <QRectF>

#include "table/laid_cloth.h"

class QPainter;

namespace foldyard {

// The near end stands at the bottom of the box, the cloth in its middle. What
// is larger than the box at this scale is drawn smaller, to fit.
void paint_small_cloth(QPainter& painter, const QRectF& box, const LaidCloth& cloth, double pixels_per_mm);

}  // namespace foldyard
