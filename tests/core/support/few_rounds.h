#pragma once

// A plan of an order that is bettered no longer than a test may last.

#include "job/plan_batch.h"

namespace foldyard::test {

inline BatchBudget few_rounds(int rounds = 40) {
  BatchBudget budget;
  budget.rounds = rounds;
  return budget;
}

}  // namespace foldyard::test
