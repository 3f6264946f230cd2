#pragma once

// While a plan takes long: how many of the fold ways are done, and Stop. Hidden for a plan
// that is there soon.

#include "fields/progress_row.h"
#include "window/planner.h"

namespace foldyard {

class BusyRow : public ProgressRow {
  Q_OBJECT

 public:
  explicit BusyRow(Planner& planner, QWidget* parent = nullptr);
};

}  // namespace foldyard
