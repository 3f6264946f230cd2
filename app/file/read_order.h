#pragma once

// The fields of a job file that a batch is planned from (docs/job-file.md):
// products, webbing and order. They name panels, webbing and products by their
// names; a name that nothing has is refused.

#include "file/field_reader.h"
#include "job/job.h"

namespace foldyard {

// REQUIRES that the job's panels are read.
void read_order(FieldReader& file, Job& job);

}  // namespace foldyard
