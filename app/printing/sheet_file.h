#pragma once

// Writes a sheet to a file; the ending says how: .pdf, .svg or .png (150 dots an
// inch). The bytes are painted first and then written whole or not at all. Gives
// nothing, or what went wrong and what to do.

#include <QString>
#include <optional>

#include "drawing/sheet.h"
#include "measure/result.h"

namespace foldyard {

std::optional<Problem> write_sheet(const Sheet& sheet, const QString& path, PageRange range = {});

// The paper that is usual where the program runs.
Paper usual_paper();

}  // namespace foldyard
