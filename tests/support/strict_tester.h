#pragma once

#include <QAbstractItemModelTester>

namespace foldyard {

// Watches a model for as long as it lives, and ends the tests at the first rule it breaks.
struct StrictTester : QAbstractItemModelTester {
  explicit StrictTester(QAbstractItemModel* model)
      : QAbstractItemModelTester(model, QAbstractItemModelTester::FailureReportingMode::Fatal) {}
};

}  // namespace foldyard
