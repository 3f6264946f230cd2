#include "window/planner.h"

#include <QMetaObject>

#include <exception>

namespace foldyard {

Comparison compare(const Question& question, Watch& watch) {
  SearchBudget budget;
  budget.cancelled = &watch.stopped;
  budget.unwanted = &watch.unwanted;
  budget.progress = &watch.progress;
  return compare_ways(question.job, question.roll, question.aim, budget);
}

Planner::Planner(Compare compare, QObject* parent) : QObject(parent), compare_(std::move(compare)) {
  pool_.setMaxThreadCount(1);
}

Planner::~Planner() {
  watch_.unwanted = true;
  watch_.stopped = true;
  pool_.waitForDone();
}

void Planner::ask(Question question) {
  if (is_running_) {
    waiting_ = std::move(question);
    watch_.unwanted = true;
    watch_.stopped = true;
    return;
  }
  is_running_ = true;
  emit busy_changed(true);
  run(std::move(question));
}

void Planner::run(Question question) {
  watch_.stopped = false;
  watch_.unwanted = false;
  watch_.progress.begin(0);
  pool_.start([this, question = std::move(question)] {
    AnswerPtr answer;
    QString fault;
    try {
      answer = std::make_shared<const Answer>(Answer{question.job, compare_(question, watch_)});
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
