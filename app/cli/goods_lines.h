#pragma once

// The goods of a job as lines of text: finished sizes, what one needs, corners,
// handles and webbing. Empty where no panel is sewn into anything.

#include <QString>

#include "job/job.h"
#include "job/plan.h"

namespace foldyard {

// Without a plan: what one of each is.
QString goods_legend(const Job& job);
// With how many the plan's panels are enough for, and the webbing for all.
QString plan_goods_words(const Job& job, const Plan& plan);

}  // namespace foldyard
