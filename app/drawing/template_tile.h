#pragma once

// One tile of a template: the lines that lie on it, cut off at its edges without
// a clip path, so that every kind of file shows the same.

#include <QPainter>

#include "drawing/template_data.h"

namespace foldyard {

// The part of a level or upright line inside the box; null where none is.
QLineF inside(const QLineF& line, const QRectF& box);

// The painter's origin is the tile's top left corner. words: the panel's name and
// what else stands in its middle, line by line.
void draw_tile(QPainter& painter, const TemplateData& data, int row, int column,
               const QStringList& words);

}  // namespace foldyard
