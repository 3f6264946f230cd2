#pragma once

// One length as it lies folded on the table, seen from above: what a person
// marks and cuts. Fold edges are doubled lines with round ends, selvedges
// stitched bands; each cut carries its number in the order of cutting, and the
// tapes at the left edge and the near end carry the distances to mark.

#include <QMarginsF>

#include "drawing/cloth_frame.h"
#include "drawing/pattern_data.h"

namespace foldyard {

QMarginsF folded_margins(const PatternData& data, const Scale& scale);
void draw_folded(QPainter& painter, const ClothFrame& frame, const PatternData& data);

}  // namespace foldyard
