#pragma once

// Writes the papers of a batch (drawing/batch_sheet.h): as one PDF, or as SVG or PNG, one
// page a file, by the ending of the name. Gives nothing, or what went wrong and what to do.
//
// Example: three pages to "tickets.svg" are tickets-1.svg, tickets-2.svg, tickets-3.svg.

#include <QString>
#include <QStringList>

#include <optional>

#include "drawing/batch_tables.h"
#include "measure/result.h"

namespace foldyard {

std::optional<Problem> write_tickets(const BatchAnswer& answer, const QString& path);
// The files that so many pages are written to.
QStringList ticket_files(const QString& path, int pages);

}  // namespace foldyard
