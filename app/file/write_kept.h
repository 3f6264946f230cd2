#pragma once

// A length that is kept in an order, as read_kept reads it, on one line.

#include "job/job.h"

namespace foldyard {

std::string kept_text(const KeptLength& kept, const Job& job);

}  // namespace foldyard
