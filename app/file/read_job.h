#pragma once

// Reads a job file (docs/job-file.md): JSON, lengths as text, of the present
// version or an older one (file/migrate_job.h).
//
// What is left out takes its default (job/defaults.h). All else is refused
// with one sentence that names the field (`rolls[1].width`) and says what to
// do: fields nobody knows, wrong types, a newer version, values out of their
// limits, sizes that contradict each other (job/check_job.h). A refused file
// leaves nothing behind. The flaws of a roll are put in order
// (cloth/flaw_order.h); faults name them as they stand in the file.
//
// Worth: every panel names one, or none does (job/defaults.h: default_worth).

#include <QByteArray>
#include <QString>

#include "file/migrate_job.h"
#include "job/job.h"
#include "measure/result.h"

namespace foldyard {

inline constexpr qint64 kLargestJobFile = 4 * 1024 * 1024;  // bytes

Result<Job> read_job(const QByteArray& bytes);
// The file must be a regular one; of a larger one no byte is read.
Result<Job> load_job(const QString& path);

}  // namespace foldyard
