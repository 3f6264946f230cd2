#pragma once

// The goods that the panels of a plan are enough for, as lines of a list: how
// many, finished size, what one needs, corners, handles and webbing. Empty where
// no panel is sewn into anything.

#include <vector>

#include "drawing/list_flow.h"
#include "job/job.h"
#include "job/plan.h"

namespace foldyard {

std::vector<ListLine> goods_lines(const Job& job, const Plan& plan);

}  // namespace foldyard
