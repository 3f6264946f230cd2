#pragma once

// The whole roll to scale, from its free end, in as many rows as the room asks
// for: lengths with their numbers, lays and patterns, losses, the remnant with
// its size, the places of the cross-cuts above and a tape below.
//
// lay_out_roll takes the finest round scale at which all rows fit the height.

#include <QRectF>
#include <vector>

#include "drawing/roll_rows.h"
#include "drawing/scale.h"

namespace foldyard {

struct RollLayout {
  Scale scale;
  std::vector<RollRow> rows;
  double marks = 0;   // room above a row for the places of its cross-cuts
  double cloth = 0;   // height of the cloth
  double height = 0;  // of all rows
};

RollLayout lay_out_roll(const Job& job, const Plan& plan, const QSizeF& room);
void draw_roll(QPainter& painter, const QPointF& top_left, const RollLayout& layout, const Job& job,
               const Plan& plan);

}  // namespace foldyard
