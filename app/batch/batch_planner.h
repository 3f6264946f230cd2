#pragma once

// BatchPlanner: plans an order on another thread, so that the window never waits.
//
// Each better plan is told as it is found, then the last one as the answer. One
// order is planned at a time; a question asked meanwhile stops it, and what it
// still tells is dropped: the latest question wins. Every answer carries the job that
// was asked.

#include <QObject>
#include <QThreadPool>

#include <atomic>
#include <functional>
#include <memory>
#include <optional>
#include <utility>

#include "drawing/batch_tables.h"
#include "job/plan_batch.h"
#include "measure/result.h"

namespace foldyard {

using BatchAnswerPtr = std::shared_ptr<const BatchAnswer>;
using PlanOrder = std::function<Result<BatchPlan>(const Job&, BatchBudget)>;

// plan_batch of the job room. A problem is told in words of the window.
Result<BatchPlan> plan_order(const Job& job, BatchBudget budget);
// The job with all left out that changes no plan of it: how goods are sewn and sold, and
// what they take besides cloth. Jobs that are equal then have equal plans.
Job as_planned(Job job);

class BatchPlanner : public QObject {
  Q_OBJECT

 public:
  explicit BatchPlanner(PlanOrder plan = plan_order, QObject* parent = nullptr);
  ~BatchPlanner() override;

  void ask(Job job);
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

  void run(Job job);
  Ending planned(const Job& job, int number);
  void tell_found(const BatchAnswerPtr& answer, int number);
  void finish(const Ending& ending, int number);

  PlanOrder plan_;
  QThreadPool pool_;
  std::optional<Job> waiting_;
  std::atomic<bool> stopped_ = false;
  SearchProgress progress_;
  int wanted_ = 0;  // the number of the question whose answer is waited for
  bool is_running_ = false;
};

}  // namespace foldyard
