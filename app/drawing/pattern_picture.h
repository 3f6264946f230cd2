#pragma once

// The pictures of one pattern set together: the flat cloth at the left, the
// folded cloth beside it at the same scale, the section below over the width.
//
// lay_out_pattern takes the finest scale that fits the room (round: one of
// round_scale). Sizes are in millimetres of paper.

#include <QSizeF>

#include "drawing/pattern_data.h"
#include "drawing/scale.h"

namespace foldyard {

struct PatternLayout {
  Scale scale;
  Scale section;
  Scale section_along;  // used where the length is folded end to end
  bool round = true;
  double clothes = 0;  // height of the upper row
  double height = 0;   // of all
};

PatternLayout lay_out_pattern(const PatternData& data, const QSizeF& room, bool round);
void draw_pattern(QPainter& painter, const QPointF& top_left, double width,
                  const PatternLayout& layout, const PatternData& data);

}  // namespace foldyard
