#pragma once

// A swatch of cloth: its colour with a light weave, cut with pinking shears along
// its lower edge. The same on the shelf, under the pointer and in the dialog.

#include <QPixmap>
#include <QRectF>

#include "cloth/roll.h"

class QPainter;
class QPalette;

namespace foldyard {

void paint_swatch(QPainter& painter, const QRectF& box, const std::string& colour, const QColor& outline);

// What is seen while a roll is dragged: its swatch with its name on a tag.
QPixmap drag_picture(const Roll& roll, const QPalette& palette, const QFont& font, double pixel_ratio);

}  // namespace foldyard
