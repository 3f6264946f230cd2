#pragma once

// Planner: plans on another thread, so that the window never waits.
//
// One plan runs at a time. A question asked meanwhile replaces the one that
// waits, and an answer that is no longer the latest is dropped: the latest
// question wins. Each answer carries the job it belongs to.

#include <QObject>
#include <QThreadPool>

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
using Compare = std::function<Comparison(const Question&)>;

// compare_ways of the job room.
Comparison compare(const Question& question);

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
  bool is_running_ = false;
};

}  // namespace foldyard
