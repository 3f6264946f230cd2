#pragma once

// Whether what is set by hand for a batch can stand: lines kept on a roll, and lengths
// that are kept (job/order.h).
//   a roll that is named is one of the job and not left out of batches
//   a line's roll is of a cloth that may serve it
//   steps part a length to the end, name panels of the job, and cut above 0
// Whether a kept length can still be cut is asked when a batch is planned
// (job/kept_length.h), so that a size may change while it is kept.
//
// Example: a line kept on "moss 9" where no roll is called so:
// "order.lines[0].roll: no roll is called "moss 9"; name a roll of the job".

#include "job/first_fault.h"
#include "job/job.h"

namespace foldyard {

void check_pins(FirstFault& faults, const Job& job);

}  // namespace foldyard
