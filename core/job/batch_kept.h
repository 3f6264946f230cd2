#pragma once

// Puts the lengths that an order keeps on the rolls of its case.
//
// Each lies in the first stretch of its roll that has room. Ways they are folded by
// become ways of their kind.
//
// Refused, in one sentence: one that can no longer be cut so (job/kept_length.h), more
// than find room.

#include "job/batch_case.h"

namespace foldyard {

std::optional<Problem> add_kept(const Job& job, BatchCase& c);

}  // namespace foldyard
