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
#include <utility>

#include "job/job.h"
#include "job/plan.h"
#include "job/plan_roll.h"

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

// What goes between a running plan and whoever waits for it. Once stopped it
// ends early with the best it has; unwanted too, with anything.
struct Watch {
  std::atomic<bool> stopped = false;
  std::atomic<bool> unwanted = false;
  SearchProgress progress;

  operator const std::atomic<bool>&() const { return stopped; }
};

using AnswerPtr = std::shared_ptr<const Answer>;
using Compare = std::function<Comparison(const Question&, Watch&)>;

// compare_ways of the job room.
Comparison compare(const Question& question, Watch& watch);

class Planner : public QObject {
  Q_OBJECT

 public:
  explicit Planner(Compare compare = foldyard::compare, QObject* parent = nullptr);
  ~Planner() override;

  void ask(Question question);
  bool is_busy() const { return is_running_; }
  // The running plan ends now; the best it has comes as its answer.
  void stop() { watch_.stopped = true; }
  // Ways done, and of how many; of 0 before it is known.
  std::pair<int, int> progress() const { return {watch_.progress.done, watch_.progress.total}; }

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
  Watch watch_;
  bool is_running_ = false;
};

}  // namespace foldyard
