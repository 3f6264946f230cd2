#pragma once

// Planner: plans on another thread, so that the window never waits.
//
// One plan runs at a time. A question asked meanwhile stops it and replaces the
// one that waits, and an answer that is no longer the latest is dropped: the
// latest question wins. Each answer carries the job it belongs to.

#include <QObject>
#include <QThreadPool>

#include <atomic>
#include <functional>
#include <memory>
#include <optional>

#include "job/job.h"
#include "job/plan.h"

namespace foldyard {

struct Question {
  Job job;
  int roll = 0;
  Aim aim = Aim::most_worth;
};

struct Answer {
  Job job;
  Comparison comparison;
};

using AnswerPtr = std::shared_ptr<const Answer>;
// Ends early, with what it has, once `stopped` is true.
using Compare = std::function<Comparison(const Question&, const std::atomic<bool>& stopped)>;

// compare_ways of the job room.
Comparison compare(const Question& question, const std::atomic<bool>& stopped);

class Planner : public QObject {
  Q_OBJECT

 public:
  explicit Planner(Compare compare = foldyard::compare, QObject* parent = nullptr);
  ~Planner() override;

  void ask(Question question);
  bool is_busy() const { return is_running_; }

 signals:
  void answered(const foldyard::AnswerPtr& answer);
  // A fault of the program or too little memory, in one sentence.
  void failed(const QString& reason);
  void busy_changed(bool busy);

 private:
  void run(Question question);
  void finish(const AnswerPtr& answer, const QString& fault);

  Compare compare_;
  QThreadPool pool_;
  std::optional<Question> waiting_;
  std::atomic<bool> stopped_ = false;
  bool is_running_ = false;
};

}  // namespace foldyard
