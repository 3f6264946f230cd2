#include "window/planner.h"

#include <QMetaObject>

#include <exception>

#include "job/plan_roll.h"

namespace foldyard {

Comparison compare(const Question& question, const std::atomic<bool>& stopped) {
  SearchBudget budget;
  budget.cancelled = &stopped;
  return compare_ways(question.job, question.roll, question.aim, budget);
}

Planner::Planner(Compare compare, QObject* parent) : QObject(parent), compare_(std::move(compare)) {
  pool_.setMaxThreadCount(1);
}

Planner::~Planner() {
  stopped_ = true;
  pool_.waitForDone();
}

void Planner::ask(Question question) {
  if (is_running_) {
    waiting_ = std::move(question);
    stopped_ = true;
    return;
  }
  is_running_ = true;
  emit busy_changed(true);
  run(std::move(question));
}

void Planner::run(Question question) {
  stopped_ = false;
  pool_.start([this, question = std::move(question)] {
    AnswerPtr answer;
    QString fault;
    try {
      answer = std::make_shared<const Answer>(Answer{question.job, compare_(question, stopped_)});
    } catch (const std::exception& problem) {
      fault = tr("The plan could not be made: %1.").arg(QString::fromUtf8(problem.what()));
    }
    QMetaObject::invokeMethod(this, [this, answer, fault] { finish(answer, fault); }, Qt::QueuedConnection);
  });
}

void Planner::finish(const AnswerPtr& answer, const QString& fault) {
  if (waiting_) {
    run(*std::exchange(waiting_, std::nullopt));
    return;
  }
  is_running_ = false;
  emit busy_changed(false);
  if (answer) emit answered(answer);
  else emit failed(fault);
}

}  // namespace foldyard
