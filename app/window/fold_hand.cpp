#include "window/fold_hand.h"

#include <QMetaObject>

#include <algorithm>
#include <exception>
#include <utility>

namespace foldyard {
namespace {

// A place where the yield changes draws the line from as far as this.
constexpr Length kNear = Length::mm(8);

Length tape_mark(Length place, Unit unit) {
  const Length step = unit == Unit::inch || unit == Unit::yard ? Length::inches64(32) : Length::mm(10);
  return step * ((place + step / 2) / step);
}

Length apart(Length a, Length b) { return a < b ? b - a : a - b; }

Length line_of(const FoldPlan& fold, int line) { return fold.lines[static_cast<std::size_t>(line)]; }

// The next place beyond the line in the direction of the step; the line's own
// where there is none.
Length next_place(const std::vector<Length>& places, Length from, int steps) {
  if (steps > 0) {
    const auto next = std::upper_bound(places.begin(), places.end(), from);
    return next == places.end() ? from : *next;
  }
  const auto here = std::lower_bound(places.begin(), places.end(), from);
  return here == places.begin() ? from : *std::prev(here);
}

}  // namespace

Result<Plan> plan_moved(RollDesk& desk, const FoldPlan& fold, int line, Length to, Unit unit) {
  const FoldPlan snapped = desk.snapped(fold, line, to);
  if (apart(line_of(snapped, line), to) <= kNear) return desk.at(snapped);
  FoldPlan free = fold;
  free.lines[static_cast<std::size_t>(line)] = tape_mark(to, unit);
  Result<Plan> plan = desk.at(free);
  return plan ? plan : desk.at(snapped);
}

FoldHand::FoldHand(QObject* parent) : QObject(parent) { pool_.setMaxThreadCount(1); }

FoldHand::~FoldHand() {
  stopped_ = true;
  pool_.waitForDone();
}

void FoldHand::set_question(const Question& question) {
  question_ = question;
  desk_.reset();
  waiting_.reset();
  stopped_ = true;  // what is being planned belongs to the question before
}

void FoldHand::move(const FoldPlan& fold, int line, Length to) { ask({fold, line, to, 0}); }
void FoldHand::step(const FoldPlan& fold, int line, int steps) { ask({fold, line, {}, steps}); }

void FoldHand::ask(const Wish& wish) {
  if (wish.line < 0 || wish.line >= static_cast<int>(wish.fold.lines.size())) return;
  if (is_running_) {
    waiting_ = wish;
    return;
  }
  is_running_ = true;
  run(wish);
}

void FoldHand::run(const Wish& wish) {
  stopped_ = false;
  if (!desk_) {
    SearchBudget budget;
    budget.cancelled = &stopped_;
    desk_ = std::make_shared<RollDesk>(question_.job, question_.roll, question_.aim, budget);
  }
  pool_.start([this, desk = desk_, wish, unit = question_.job.unit] {
    std::shared_ptr<const Plan> plan;
    QString reason;
    try {
      const Length to = wish.steps == 0 ? wish.to
                                        : next_place(desk->snaps(wish.fold.way, wish.line), line_of(wish.fold, wish.line), wish.steps);
      const Result<Plan> found = plan_moved(*desk, wish.fold, wish.line, to, unit);
      if (found) plan = std::make_shared<const Plan>(*found);
      else reason = QString::fromStdString(found.problem().what);
    } catch (const std::exception& problem) {
      reason = tr("The plan could not be made: %1.").arg(QString::fromUtf8(problem.what()));
    }
    QMetaObject::invokeMethod(this, [this, desk, plan, reason] { finish(desk, plan, reason); }, Qt::QueuedConnection);
  });
}

void FoldHand::finish(const std::shared_ptr<RollDesk>& desk, const std::shared_ptr<const Plan>& plan, const QString& reason) {
  is_running_ = false;
  const bool is_ours = desk == desk_;
  if (waiting_) ask(*std::exchange(waiting_, std::nullopt));
  if (!is_ours) return;
  if (plan) emit planned(plan);
  else emit refused(reason);
}

}  // namespace foldyard
