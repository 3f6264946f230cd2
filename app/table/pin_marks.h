#pragma once

// What the hand has set, as it is seen on the flat cloth: a pin head with its
// hatch and place at the end of a fold line that is pinned, and a tick on the tape
// where a line that is being moved has come to rest. In pixels of the screen.

#include <QPainter>

#include "table/board_colours.h"

namespace foldyard {

// What drew a moved fold line to its place.
enum class Snap { none, yield_changes, tape_mark };

// The head at the far end of a line, `words` beside it; to the left of the head
// where there is no room up to `right`.
void paint_pin(QPainter& painter, const QPointF& head, const QString& words, double right, const BoardColours& colours);
// A full wedge where the yield changes, an open one at a tape mark: a shape of
// its own each. tip: on the upper edge of the tape.
void paint_tick(QPainter& painter, const QPointF& tip, Snap snap, const BoardColours& colours);

}  // namespace foldyard
