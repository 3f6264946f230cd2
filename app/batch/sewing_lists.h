#pragma once

// The lists of sewing that are edited: a product's orders of operations with what they
// take, and the steps of one of them.

#include <functional>

#include "batch/job_table.h"

namespace foldyard {

// Which product and which of its orders; −1: none. pieces: of the batch, by product.
struct SewingPlace {
  std::function<int()> product;
  std::function<int()> order;
  std::function<std::int64_t(int)> pieces;
};

enum class SewingColumn { name, a_piece, batch, saves };
JobList sewing_order_list(const SewingPlace& place);
enum class StepColumn { name, usual, timed, counts, tenth };
JobList step_list(const SewingPlace& place);

// "1:50, assumed", "1:49, median of 3".
QString counts_as(const SewingStep& step);

// Step by step beside each other, each order of operations in a column: a row for each
// place, then what a piece takes without and with the allowance, and the batch.
struct SideBySideSteps {
  QStringList head;
  std::vector<QStringList> rows;
};
// REQUIRES a product of the job.
SideBySideSteps steps_side_by_side(const Job& job, int product, std::int64_t pieces);

}  // namespace foldyard
