#pragma once

// A plan as text to work from at the table: the answer and its proof, where to
// cut the roll across, and for each pattern how to fold, every cut in its
// order with the distance to mark, the panels, the rests; then the cautions.

#include <QString>

#include "job/job.h"
#include "job/plan.h"

namespace foldyard {

QString plan_words(const Job& job, const Plan& plan);
// What every plan says in the end, once for all.
QString caution_words(const Job& job);

}  // namespace foldyard
