#pragma once

// Reads a job file (docs/job-file.md): JSON, version 1, lengths as text.
//
// What is left out takes its default (job/defaults.h). All else is refused
// with one sentence that names the field (`rolls[1].width`) and says what to
// do: fields nobody knows, wrong types, a newer version, values out of their
// limits, sizes that contradict each other (job/check_job.h). A refused file
// leaves nothing behind.
//
// Worth: every panel names one, or none does (job/defaults.h: default_worth).

#include <QByteArray>
#include <QString>

#include "job/job.h"
#include "measure/result.h"

namespace foldyard {

inline constexpr int kJobFileVersion = 1;
inline constexpr qint64 kLargestJobFile = 4 * 1024 * 1024;  // bytes

Result<Job> read_job(const QByteArray& bytes);
// The file must be a regular one; of a larger one no byte is read.
Result<Job> load_job(const QString& path);

}  // namespace foldyard
