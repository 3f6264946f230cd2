#pragma once

// The pages of a panel's template in full size: a first page with its name, its
// size, how many to cut, a map of the tiles and a square of 100 mm to check the
// print; then a page for each tile, with the cut line, the lines of stitching
// and of hems, the grain and the match marks.
//
// REQUIRES that the panel has no template_problem on the sheet's paper.

#include "drawing/sheet.h"

namespace foldyard {

int template_pages(const Sheet& sheet, int panel);
void draw_template_page(QPainter& painter, const Sheet& sheet, int panel, int page);

// Where the tile stands on its page: the template's tile_rect is drawn here.
QRectF tile_area(const Sheet& sheet);

}  // namespace foldyard
