#pragma once

// What the tests of the batch page share: a small order, answers of it, waiting.

#include <QTest>

#include <functional>

#include "batch/batch_planner.h"
#include "core/support/order_job.h"

namespace foldyard::sample {

inline Result<BatchPlan> quick_plan(const Job& job, BatchBudget budget) {
  budget.rounds = 5;
  return plan_order(job, budget);
}

inline BatchAnswerPtr answer_of(const Job& job) {
  return std::make_shared<const BatchAnswer>(batch_answer(job, *quick_plan(job, {})));
}

inline bool waited_for(const std::function<bool()>& is_there, int ms = 20000) {
  return QTest::qWaitFor(is_there, ms);
}

}  // namespace foldyard::sample
