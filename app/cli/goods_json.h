#pragma once

// The goods that a plan's panels are enough for, as docs/output.md has them.

#include <QJsonArray>

#include "job/job.h"
#include "job/plan.h"

namespace foldyard {

QJsonArray goods_json(const Job& job, const Plan& plan);

}  // namespace foldyard
