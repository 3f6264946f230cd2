#include "shelf/range_teller.h"

#include <QMetaObject>

#include <exception>
#include <utility>

#include "language/spoken.h"

namespace foldyard {

Result<YieldRange> find_range(const RangeQuestion& question, const std::atomic<bool>& stopped) {
  SearchBudget budget;
  budget.cancelled = &stopped;
  budget.unwanted = &stopped;
  return yield_range(question.job, question.roll, question.way, question.aim, budget);
}

RangeTeller::RangeTeller(FindRange find, QObject* parent) : QObject(parent), find_(std::move(find)) { pool_.setMaxThreadCount(1); }

RangeTeller::~RangeTeller() {
  stopped_ = true;
  pool_.waitForDone();
}

void RangeTeller::ask(RangeQuestion question) {
  waiting_ = std::move(question);
  is_wanted_ = false;
  if (is_running_) stopped_ = true;
  else run();
}

void RangeTeller::forget() {
  waiting_.reset();
  is_wanted_ = false;
  stopped_ = true;
}

void RangeTeller::run() {
  is_running_ = is_wanted_ = true;
  stopped_ = false;
  pool_.start([this, question = *std::exchange(waiting_, std::nullopt)] {
    std::shared_ptr<const RangeAnswer> answer;
    QString reason;
    try {
      auto range = find_(question, stopped_);
      if (range) answer = std::make_shared<const RangeAnswer>(RangeAnswer{question, std::move(range).value()});
      else reason = spoken(range.problem());
    } catch (const std::exception& problem) {
      reason = tr("What the roll yields could not be found: %1.").arg(QString::fromUtf8(problem.what()));
    }
    QMetaObject::invokeMethod(this, [this, answer, reason] { finish(answer, reason); }, Qt::QueuedConnection);
  });
}

void RangeTeller::finish(const std::shared_ptr<const RangeAnswer>& answer, const QString& reason) {
  is_running_ = false;
  if (waiting_) return run();
  if (!std::exchange(is_wanted_, false)) return;
  if (answer) emit told(answer);
  else emit refused(reason);
}

}  // namespace foldyard
