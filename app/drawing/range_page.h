#pragma once

// The pages of a sheet that say what a roll of unknown length gives by its length,
// and what to cut first. None where the sheet has no range.

#include "drawing/sheet.h"

class QPainter;

namespace foldyard {

int range_pages(const Sheet& sheet);
void draw_range_page(QPainter& painter, const Sheet& sheet, int page);

}  // namespace foldyard
