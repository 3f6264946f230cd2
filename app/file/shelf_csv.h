#pragma once

// The shelf as a table that a spreadsheet opens, and back.
//
// A row a roll; the first row names the columns: name, cloth, marks (parted by
// semicolons), width, selvedge, thickness, length, nap, colour, price_per_metre,
// squared, with values as in a job file (docs/job-file.md).
//
// with_shelf: the job with the table's rolls in its order in place of its own. What
// a table does not say of a roll with a known name stays; of a new one it is the
// default. Columns may stand in any order; name is needed, for new rolls also length.
// Refused, naming the line and column: an unknown column, a value that a job file
// would not take, and a job that could not stand.

#include <QByteArray>

#include "job/job.h"
#include "measure/result.h"

namespace foldyard {

QByteArray shelf_csv(const Job& job);
Result<Job> with_shelf(Job job, const QByteArray& csv);

}  // namespace foldyard
