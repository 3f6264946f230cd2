#pragma once

// The job that is measured: one roll of 50 m, 150 cm wide, and eight goods in
// steps of 5 mm, as a workshop for seats and bags would cut them.

#include "job/job.h"

namespace foldyard::bench {

// goods: 8 or 16, the second eight other sizes of the same kind.
Job workshop_job(int goods = 8);

}  // namespace foldyard::bench
