#pragma once

// Where on its cut each number stands: on the line, clear of what is covered
// already and of the other numbers, as near to where the cut begins as can be.
// Where no place is clear, the one with the least overlap.

#include <QLineF>
#include <QRectF>
#include <vector>

namespace foldyard {

std::vector<QPointF> disc_places(const std::vector<QLineF>& cuts, std::vector<QRectF> covered);

}  // namespace foldyard
