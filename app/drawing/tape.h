#pragma once

// A measuring tape along an edge, counting as a maker's tape does: in the
// job's unit, from 0 at the edge's beginning or from any place on the roll.
//
// tape_steps: fields between numbers, and ticks between fields, wide enough on
// paper to be read (numbers at least `number_mm` apart, ticks at least 0.9 mm).
// Example: at 1 : 75 in centimetres, numbers 11 mm apart: 100 cm and 10 cm.

#include <QRectF>

#include "drawing/scale.h"
#include "measure/rect.h"

namespace foldyard {

struct TapeSteps {
  Length number;
  Length tick;
};

TapeSteps tape_steps(const Scale& scale, Unit unit, double number_mm);

// Level: the tape fills the box from `shown.from` at its left.
void draw_tape(QPainter& painter, const QRectF& box, const Scale& scale, Span shown, Unit unit);
// Ticks only, beside a cloth edge whose marks say the numbers. The zero end is
// at the left, or at the bottom of an upright one.
void draw_plain_tape(QPainter& painter, const QRectF& box, const Scale& scale, Length length,
                     Unit unit);
void draw_plain_tape_upright(QPainter& painter, const QRectF& box, const Scale& scale,
                             Length length, Unit unit);

}  // namespace foldyard
