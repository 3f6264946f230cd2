#pragma once

// Writes the cutting diagram of one plan to a file; the ending says how:
// .pdf, .svg or .png. Gives nothing, or what went wrong and what to do.

#include <QString>

#include <optional>

#include "measure/result.h"
#include "window/planner.h"

namespace foldyard {

// REQUIRES a plan at the way.
std::optional<Problem> export_sheet(const Answer& answer, int way, const QString& path);

}  // namespace foldyard
