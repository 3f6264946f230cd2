#pragma once

// FoldHand: plans within what is set by hand, on another thread while the hand
// moves, the latest wish first.
//
// A moved fold line is pinned: at a place where the yield can change if one is
// near, else at the nearest mark of the tape; where folds of its way cannot lie so,
// at the nearest place where the yield changes. The other lines stay as they are
// pinned, or are searched. The roll's tables are kept between wishes
// (job/roll_desk.h).

#include <QObject>
#include <QThreadPool>

#include <atomic>
#include <memory>
#include <optional>

#include "job/roll_desk.h"
#include "table/pin_marks.h"
#include "window/planner.h"

namespace foldyard {

// What the hand has set under one way, and the plan that keeps to it.
struct HandPlan {
  FoldWay way;
  Hand hand;
  Plan plan;
  int moved = -1;  // the line that was moved; −1: none
  Snap snap = Snap::none;
};

using HandPlanPtr = std::shared_ptr<const HandPlan>;

class FoldHand : public QObject {
  Q_OBJECT

 public:
  explicit FoldHand(QObject* parent = nullptr);
  ~FoldHand() override;

  // Another job, roll or aim: what was wished before is forgotten.
  void set_question(const Question& question);
  // hand: what is set already.
  void move(const FoldWay& way, const Hand& hand, int line, Length to);
  // From where the line lies to the next place where the yield can change: steps
  // −1 to the left, +1 right.
  void step(const FoldWay& way, const Hand& hand, int line, Length from, int steps);
  // With what is set, and nothing moved.
  void plan(const FoldWay& way, const Hand& hand);
  // What still waits or runs is not wanted any more.
  void drop();
  bool is_busy() const { return is_running_; }

 signals:
  void planned(const foldyard::HandPlanPtr& plan);
  void refused(const QString& reason);
  // Nothing runs and nothing waits; after planned or refused.
  void settled();

 private:
  struct Wish {
    FoldWay way;
    Hand hand;
    int line = -1;
    Length to;      // or, for a step, from where
    int steps = 0;
  };
  void ask(const Wish& wish);
  void run(const Wish& wish);
  void finish(const std::shared_ptr<RollDesk>& desk, const HandPlanPtr& plan, const QString& reason);

  Question question_;
  std::shared_ptr<RollDesk> desk_;
  std::optional<Wish> waiting_;
  std::atomic<bool> stopped_ = false;
  bool is_running_ = false;
  bool is_dropped_ = false;
  QThreadPool pool_;
};

// The hand with its line moved towards a place as FoldHand does it, planned.
Result<HandPlan> plan_moved(RollDesk& desk, const FoldWay& way, const Hand& hand, int line, Length to, Unit unit);

}  // namespace foldyard
