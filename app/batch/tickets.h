#pragma once

// Writes the papers of a batch (drawing/batch_sheet.h) as PDF. Gives nothing, or what
// went wrong and what to do.

#include <QString>

#include <optional>

#include "drawing/batch_tables.h"
#include "measure/result.h"

namespace foldyard {

std::optional<Problem> write_tickets(const BatchAnswer& answer, const QString& path);

}  // namespace foldyard
