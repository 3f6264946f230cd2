#pragma once

// Writes a job as a job file of the present version that read_job reads back to
// the same job. REQUIRES a job that stands (job/check_job.h).
//
// Every field is written, in the order of docs/job-file.md, but for those that
// only some cloth and some panels have (from `measured` and `at_most` on): they
// are written where they differ from their default. Lengths are exact, in the
// job's unit where they can be; same job, same bytes.

#include <QByteArray>

#include "job/job.h"

namespace foldyard {

QByteArray write_job(const Job& job);

}  // namespace foldyard
