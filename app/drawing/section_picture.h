#pragma once

// The section through the plies of one length: the ribbon with its face side
// marked, each ply named with its face and, on one-way cloth, its nap, and a blade with its numbers where each cut goes.
// Across it is seen from the near end; along (cloth folded end to end) from
// the right edge. Its thickness is drawn larger than true, and it says so.

#include <QRectF>

#include "drawing/pattern_data.h"
#include "drawing/scale.h"

namespace foldyard {

double section_height(const AxisMap& axis);
// The finest scale (round: one to read off a ruler) that fits the width.
Scale section_scale(const PatternData& data, const AxisMap& axis, double width, bool round);
// direction: of the cuts that go through this section.
void draw_section(QPainter& painter, const QRectF& area, const Scale& scale,
                  const PatternData& data, const AxisMap& axis, Direction direction);

}  // namespace foldyard
