#include "batch/batch_planner.h"

#include <QMetaObject>

#include <exception>

#include "batch/order_words.h"
#include "job/check_job.h"

namespace foldyard {

Result<BatchPlan> plan_order(const BatchQuestion& question, BatchBudget budget) {
  const RollsIn in = without_rolls(question.job, question.left_out);
  const auto in_words = [&](const Problem& problem) { return told_in_words(problem, in.job); };
  if (in.job.rolls.empty())
    return Problem{"", BatchPlanner::tr("Every roll is left out of the batch").toStdString(),
                   BatchPlanner::tr("tick one in the table of rolls").toStdString()};
  if (const auto problem = check_job(in.job)) return in_words(*problem);
  if (budget.found) {
    budget.found = [&in, found = budget.found](const BatchPlan& plan) { found(in_whole_job(plan, in.places)); };
  }
  auto plan = plan_batch(in.job, budget);
  if (!plan) return in_words(plan.problem());
  return in_whole_job(std::move(plan).value(), in.places);
}

BatchPlanner::BatchPlanner(PlanOrder plan, QObject* parent) : QObject(parent), plan_(std::move(plan)) {
  pool_.setMaxThreadCount(1);
}

BatchPlanner::~BatchPlanner() {
  stopped_ = true;
  pool_.waitForDone();
}

void BatchPlanner::ask(BatchQuestion question) {
  ++wanted_;
  if (is_running_) {
    waiting_ = std::move(question);
    stopped_ = true;
    return;
  }
  is_running_ = true;
  emit busy_changed(true);
  run(std::move(question));
}

void BatchPlanner::forget() {
  ++wanted_;
  waiting_.reset();
  stopped_ = true;
}

void BatchPlanner::run(BatchQuestion question) {
  stopped_ = false;
  progress_.begin(0);
  pool_.start([this, question = std::move(question), number = wanted_] {
    const Ending ending = planned(question, number);
    QMetaObject::invokeMethod(this, [this, ending, number] { finish(ending, number); }, Qt::QueuedConnection);
  });
}

// On the thread that plans.
BatchPlanner::Ending BatchPlanner::planned(const BatchQuestion& question, int number) {
  const auto answer_of = [&](const BatchPlan& plan) {
    return std::make_shared<const BatchAnswer>(batch_answer(question.job, plan));
  };
  BatchBudget budget;
  budget.cancelled = &stopped_;
  budget.progress = &progress_;
  budget.found = [&](const BatchPlan& plan) {
    QMetaObject::invokeMethod(
        this, [this, answer = answer_of(plan), number] { tell_found(answer, number); }, Qt::QueuedConnection);
  };
  try {
    const auto plan = plan_(question, budget);
    if (!plan) return {nullptr, QString::fromStdString(plan.problem().sentence())};
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
