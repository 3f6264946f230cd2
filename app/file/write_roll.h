#pragma once

// A roll as one object of a job file. The fields of every roll are always
// written; what only some cloth has (what was measured, railroaded, repeat,
// shrinkage, flaws) is written where it differs from plain cloth.

#include <string>

#include "cloth/roll.h"
#include "measure/write_length.h"

namespace foldyard {

std::string roll_text(const Roll& roll, Unit unit);

}  // namespace foldyard
