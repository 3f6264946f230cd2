#pragma once

// A square whose sides measure 100 mm, centre of line to centre of line, with
// rulers in millimetres and inches inside its edges and the key to the
// drawings in its middle: what to measure before trusting a printed distance.

#include <QRectF>

class QPainter;

namespace foldyard {

inline constexpr double kSquare = 100;  // mm

void draw_calibration_square(QPainter& painter, const QPointF& top_left);
// The same square with no key in it.
void draw_plain_square(QPainter& painter, const QPointF& top_left);
// The signs of the drawings with their meanings.
void draw_key(QPainter& painter, const QRectF& area);

}  // namespace foldyard
