#pragma once

// BatchPlanner: plans an order on another thread, so that the window never waits.
//
// Each better plan is told as it is found, then the last one as the answer. One
// order is planned at a time; a question asked meanwhile stops it, and what it
// still tells is dropped: the latest question wins. Every answer carries the whole
// job that was asked, the rolls that are left out included.

#include <QObject>
#include <QThreadPool>

#include <atomic>
#include <functional>
#include <memory>
#include <optional>
#include <utility>

#include "batch/left_out.h"
#include "drawing/batch_tables.h"
#include "job/plan_batch.h"
#include "measure/result.h"

namespace foldyard {

struct BatchQuestion {
  Job job;
  RollNames left_out = {};
  bool operator==(const BatchQuestion&) const = default;
};

using BatchAnswerPtr = std::shared_ptr<const BatchAnswer>;
using PlanOrder = std::function<Result<BatchPlan>(const BatchQuestion&, BatchBudget)>;

// plan_batch of the job room, without the rolls that are left out. A problem is
// told in words of the window.
Result<BatchPlan> plan_order(const BatchQuestion& question, BatchBudget budget);

class BatchPlanner : public QObject {
  Q_OBJECT

 public:
  explicit BatchPlanner(PlanOrder plan = plan_order, QObject* parent = nullptr);
  ~BatchPlanner() override;

  void ask(BatchQuestion question);
  // Nobody waits for an answer any more.
  void forget();
  // The running plan ends now; the best it has comes as its answer.
  void stop() { stopped_ = true; }
  bool is_busy() const { return is_running_; }
  // Rounds done, and of how many; of 0 before it is known.
  std::pair<int, int> progress() const { return {progress_.done, progress_.total}; }

 signals:
  // A plan that may still be bettered.
  void found(const foldyard::BatchAnswerPtr& answer);
  void answered(const foldyard::BatchAnswerPtr& answer);
  // Refused, or a fault of the program, in one sentence.
  void failed(const QString& reason);
  void busy_changed(bool busy);

 private:
  struct Ending {
    BatchAnswerPtr answer;
    QString fault;
  };

  void run(BatchQuestion question);
  Ending planned(const BatchQuestion& question, int number);
  void tell_found(const BatchAnswerPtr& answer, int number);
  void finish(const Ending& ending, int number);

  PlanOrder plan_;
  QThreadPool pool_;
  std::optional<BatchQuestion> waiting_;
  std::atomic<bool> stopped_ = false;
  SearchProgress progress_;
  int wanted_ = 0;  // the number of the question whose answer is waited for
  bool is_running_ = false;
};

}  // namespace foldyard
