#pragma once

// Writes a job as a job file that read_job reads back to the same job.
//
// Every field is written, in the order of docs/job-file.md, lengths exact in
// the job's unit where they can be; same job, same bytes.

#include <QByteArray>

#include "job/job.h"

namespace foldyard {

QByteArray write_job(const Job& job);

}  // namespace foldyard
