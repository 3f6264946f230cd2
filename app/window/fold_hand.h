#pragma once

// FoldHand: fold lines that a person moves, planned again on another thread
// while the hand moves, the latest place first.
//
// A line goes to a place where the yield can change if one is near, else to the
// nearest mark of the tape; where folds of its way cannot lie so, to the nearest
// that can. The roll's tables are kept between moves (job/roll_desk.h).

#include <QObject>
#include <QThreadPool>

#include <atomic>
#include <memory>
#include <optional>

#include "job/roll_desk.h"
#include "window/planner.h"

namespace foldyard {

class FoldHand : public QObject {
  Q_OBJECT

 public:
  explicit FoldHand(QObject* parent = nullptr);
  ~FoldHand() override;

  // Another job, roll or aim: what was moved before is forgotten.
  void set_question(const Question& question);
  // fold: where the lines lie now.
  void move(const FoldPlan& fold, int line, Length to);
  // To the next place where the yield can change: steps −1 to the left, +1 right.
  void step(const FoldPlan& fold, int line, int steps);
  bool is_busy() const { return is_running_; }

 signals:
  void planned(const std::shared_ptr<const foldyard::Plan>& plan);
  void refused(const QString& reason);

 private:
  struct Wish {
    FoldPlan fold;
    int line = 0;
    Length to;
    int steps = 0;  // not 0: `to` does not matter
  };
  void ask(const Wish& wish);
  void run(const Wish& wish);
  void finish(const std::shared_ptr<RollDesk>& desk, const std::shared_ptr<const Plan>& plan, const QString& reason);

  Question question_;
  std::shared_ptr<RollDesk> desk_;
  std::optional<Wish> waiting_;
  std::atomic<bool> stopped_ = false;
  bool is_running_ = false;
  QThreadPool pool_;
};

// The fold with its line moved towards a place as FoldHand does it, planned.
Result<Plan> plan_moved(RollDesk& desk, const FoldPlan& fold, int line, Length to, Unit unit);

}  // namespace foldyard
