#pragma once

// A sheet on a printer, true to scale: the whole page without margins, a
// millimetre of the sheet a millimetre of paper at the printer's resolution.
//
// set_up_printer before the printer's own dialog and print_sheet after it: paper
// and its turn are the sheet's, whatever was chosen there. False where the
// printer refuses to begin or to go on.
//
// REQUIRES a printer made with QPrinter::HighResolution.

#include <QPrinter>

#include "drawing/sheet.h"

namespace foldyard {

void set_up_printer(QPrinter& printer, const Sheet& sheet);
bool print_sheet(QPrinter& printer, const Sheet& sheet, PageRange range);

}  // namespace foldyard
