#pragma once

// What a draw call wants on the sheet, held against the plan that is drawn.

#include "cli/call.h"
#include "job/job.h"
#include "job/plan.h"

namespace foldyard {

// Refused: a pattern that the plan does not have, a panel that the job does not
// have, a template that takes too many pages, pages that the sheet does not
// have. Templates without a named panel are those of all panels on the plan.
Result<SheetOptions> sheet_options(const Call& call, const Job& job, const Plan& plan);
std::optional<Problem> wrong_pages(const Call& call, const Sheet& sheet);

}  // namespace foldyard
