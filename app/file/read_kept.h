#pragma once

// A length that is kept in an order, as a job file has it (docs/job-file.md). Panels go
// by their names.

#include "file/field_reader.h"
#include "job/job.h"

namespace foldyard {

// REQUIRES the panels of the job to be read.
KeptLength read_kept(FieldReader& fields, const Job& job);

}  // namespace foldyard
