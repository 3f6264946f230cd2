#pragma once

// What goes to the clipboard: a picture as an image and as SVG, a table as text
// with tabs and as HTML. Each program takes what it knows. A picture without
// image or SVG is null.

#include <QMimeData>
#include <memory>

#include "drawing/copied_picture.h"
#include "drawing/copied_table.h"
#include "drawing/sheet.h"

namespace foldyard {

// dots_per_inch: those of the screen.
std::unique_ptr<QMimeData> picture_data(const CopiedPicture& picture, double dots_per_inch);
std::unique_ptr<QMimeData> page_data(const Sheet& sheet, int page);
std::unique_ptr<QMimeData> table_data(const CopiedTable& table);

// False where there is nothing to copy.
bool put_on_clipboard(std::unique_ptr<QMimeData> data);

}  // namespace foldyard
