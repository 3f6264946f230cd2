#pragma once

// A roll from its object in a job file.
//
// A roll has `length`, or `measured`, or both: then `length` is what was found
// since. With `measured` alone its length is the low end of the estimate, or
// zero where the figures give none (job/check_job.h refuses them). Flaws come
// in the order of the file.

#include "cloth/roll.h"
#include "file/field_reader.h"

namespace foldyard {

Roll read_roll(FieldReader& fields);

}  // namespace foldyard
