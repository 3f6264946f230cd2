#pragma once

// The pages of one pattern: heading, folding, pictures, then the lists; what
// of the lists does not fit below the pictures goes on on pages of its own.

#include "drawing/sheet.h"

namespace foldyard {

int pattern_pages(const Sheet& sheet, int pattern);
void draw_pattern_page(QPainter& painter, const Sheet& sheet, int pattern, int page);

}  // namespace foldyard
