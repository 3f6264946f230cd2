#pragma once

// While a batch is being bettered: how many rounds are done, and Stop.

#include "batch/batch_planner.h"
#include "fields/progress_row.h"

namespace foldyard {

class RoundRow : public ProgressRow {
  Q_OBJECT

 public:
  explicit RoundRow(BatchPlanner& planner, QWidget* parent = nullptr);
};

}  // namespace foldyard
