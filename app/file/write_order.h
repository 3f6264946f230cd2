#pragma once

// The fields of a job file that a batch is planned from, as read_order reads
// them; nothing for a job without products, webbing and order.

#include <string>

#include "job/job.h"

namespace foldyard {

std::string order_fields(const Job& job);

}  // namespace foldyard
