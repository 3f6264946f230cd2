#include "batch/batch_planner.h"

#include <QMetaObject>

#include <exception>

#include "batch/order_words.h"
#include "job/check_job.h"
#include "language/spoken.h"

namespace foldyard {

Result<BatchPlan> plan_order(const Job& job, BatchBudget budget) {
  if (const auto problem = check_job(job)) return told_in_words(*problem, job);
  auto plan = plan_batch(job, budget);
  if (!plan) return told_in_words(plan.problem(), job);
  return plan;
}

Job as_planned(Job job) {
  const Job usual;
  job.name = usual.name;
  job.unit = usual.unit;
  job.webbings.clear();
  job.notions = usual.notions;
  job.sitting = usual.sitting;
  job.history.clear();
  for (Product& product : job.products) {
    Product bare;
    bare.name = product.name;
    bare.panels = product.panels;
    bare.worth = product.worth;
    product = std::move(bare);
  }
  return job;
}

BatchPlanner::BatchPlanner(PlanOrder plan, QObject* parent) : QObject(parent), plan_(std::move(plan)) {
  pool_.setMaxThreadCount(1);
}

BatchPlanner::~BatchPlanner() {
  stopped_ = true;
  pool_.waitForDone();
}

void BatchPlanner::ask(Job job) {
  ++wanted_;
  if (is_running_) {
    waiting_ = std::move(job);
    stopped_ = true;
    return;
  }
  is_running_ = true;
  emit busy_changed(true);
  run(std::move(job));
}

void BatchPlanner::forget() {
  ++wanted_;
  waiting_.reset();
  stopped_ = true;
}

void BatchPlanner::run(Job job) {
  stopped_ = false;
  progress_.begin(0);
  pool_.start([this, job = std::move(job), number = wanted_] {
    const Ending ending = planned(job, number);
    QMetaObject::invokeMethod(this, [this, ending, number] { finish(ending, number); }, Qt::QueuedConnection);
  });
}

// On the thread that plans.
BatchPlanner::Ending BatchPlanner::planned(const Job& job, int number) {
  const auto answer_of = [&](const BatchPlan& plan) {
    return std::make_shared<const BatchAnswer>(batch_answer(job, plan));
  };
  BatchBudget budget;
  budget.cancelled = &stopped_;
  budget.progress = &progress_;
  budget.found = [&](const BatchPlan& plan) {
    QMetaObject::invokeMethod(
        this, [this, answer = answer_of(plan), number] { tell_found(answer, number); }, Qt::QueuedConnection);
  };
  try {
    const auto plan = plan_(job, budget);
    if (!plan) return {nullptr, spoken(plan.problem())};
    return {answer_of(*plan), {}};
  } catch (const std::exception& problem) {
    return {nullptr, tr("The batch could not be planned: %1.").arg(QString::fromUtf8(problem.what()))};
  }
}

void BatchPlanner::tell_found(const BatchAnswerPtr& answer, int number) {
  if (number == wanted_) emit found(answer);
}

void BatchPlanner::finish(const Ending& ending, int number) {
  if (waiting_) return run(*std::exchange(waiting_, std::nullopt));
  is_running_ = false;
  emit busy_changed(false);
  if (number != wanted_) return;
  if (ending.answer) emit answered(ending.answer);
  else emit failed(ending.fault);
}

}  // namespace foldyard
