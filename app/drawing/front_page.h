#pragma once

// Page 1 of a sheet: the answer, the roll, the comparison, the calibration
// square; and, where the comparison does not fit beside the square, the pages
// on which it goes on. Without the comparison the cautions for the cutter and
// the patterns stand in its place.

#include <QRectF>

#include "drawing/sheet.h"

namespace foldyard {

// The room inside the margins of the sheet's page, above its foot line.
QRectF text_area(const QSizeF& page_mm);
QRectF text_area(const Sheet& sheet);
void draw_foot(QPainter& painter, const Sheet& sheet, int page, int pages);

int front_pages(const Sheet& sheet);
void draw_front(QPainter& painter, const Sheet& sheet, int page);

}  // namespace foldyard
