#pragma once

// Hatches as plain lines cut to a rectangle: no clip path and no pattern
// brush, so that every kind of picture file shows the same.
//
// hatch_lines: all lines lie inside the rectangle, ends included; spacing is
// measured square to the lines. An empty rectangle or spacing ≤ 0 gives none.

#include <QLineF>
#include <QRectF>
#include <vector>

class QColor;
class QPainter;

namespace foldyard {

enum class Hatch { none, rising, falling, level, upright, crossed, squared, rising_dense };

std::vector<QLineF> hatch_lines(const QRectF& rect, Hatch hatch, double spacing);
void draw_hatch(QPainter& painter, const QRectF& rect, Hatch hatch, double spacing,
                const QColor& colour, double width);

}  // namespace foldyard
