#pragma once

// The tapes printed along two edges of the table: numbers and ticks in the
// job's unit, counting from the corner where the cloth begins. They stay in
// sight when the cloth is looked at from near by.

#include <QRectF>
#include <QTransform>

#include "measure/write_length.h"

class QPainter;

namespace foldyard {

inline constexpr int kTapeWidth = 24;  // pixels
inline constexpr int kTapeGap = 8;     // from the cloth, for turned edges

// to_screen: from millimetres of cloth (x across, −y along) to pixels. view is
// what is seen, table the table top, both in pixels.
void paint_tape_across(QPainter& painter, const QTransform& to_screen, const QRectF& table, const QRectF& view, Unit unit);
void paint_tape_along(QPainter& painter, const QTransform& to_screen, const QRectF& table, const QRectF& view, Unit unit);

}  // namespace foldyard
