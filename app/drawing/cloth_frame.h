#pragma once

// Where a place of the cloth lies on paper: u (or x) runs to the right, v (or
// y) upwards from the near end, as a person at the near end sees the table.
//
// Example: at 1 : 10 with near_left (20, 100), the place u = 450 mm, v = 900 mm
// lies at (65, 10).

#include <QPointF>
#include <QRectF>

#include "drawing/scale.h"
#include "measure/rect.h"

namespace foldyard {

struct ClothFrame {
  QPointF near_left;
  Scale scale;

  double x(Length across) const { return near_left.x() + scale.mm(across); }
  double y(Length along) const { return near_left.y() - scale.mm(along); }
  QPointF at(Length across, Length along) const { return {x(across), y(along)}; }
  QRectF rect(const Rect& cloth) const {
    return {at(cloth.across.from, cloth.along.to), at(cloth.across.to, cloth.along.from)};
  }
};

}  // namespace foldyard
