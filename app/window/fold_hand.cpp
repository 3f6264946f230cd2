#include "window/fold_hand.h"

#include <QMetaObject>

#include <algorithm>
#include <exception>
#include <utility>

#include "job/hand_edit.h"
#include "language/spoken.h"

namespace foldyard {
namespace {

// A place where the yield changes draws the line from as far as this.
constexpr Length kNear = Length::mm(8);

Length tape_mark(Length place, Unit unit) {
  const Length step = unit == Unit::inch || unit == Unit::yard ? Length::inches64(32) : Length::mm(10);
  return step * ((place + step / 2) / step);
}

Length apart(Length a, Length b) { return a < b ? b - a : a - b; }

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

std::optional<Length> nearest(const std::vector<Length>& places, Length to) {
  const auto found = std::min_element(places.begin(), places.end(),
                                      [&](Length a, Length b) { return apart(a, to) < apart(b, to); });
  return found == places.end() ? std::nullopt : std::optional(*found);
}

Result<HandPlan> planned_within(RollDesk& desk, const FoldWay& way, const Hand& hand, int line, Snap snap) {
  Result<Plan> plan = desk.within(way, hand);
  if (!plan) return plan.problem();
  return HandPlan{way, hand, std::move(plan).value(), line, snap};
}

}  // namespace

Result<HandPlan> plan_moved(RollDesk& desk, const FoldWay& way, const Hand& hand, int line, Length to, Unit unit) {
  const std::optional<Length> place = nearest(desk.snaps(way, line), to);
  const auto at = [&](Length where, Snap snap) {
    return planned_within(desk, way, with_line(hand, way, line, where), line, snap);
  };
  if (place && apart(*place, to) <= kNear) return at(*place, Snap::yield_changes);
  Result<HandPlan> plan = at(tape_mark(to, unit), Snap::tape_mark);
  if (plan || !place) return plan;
  Result<HandPlan> other = at(*place, Snap::yield_changes);
  return other ? other : plan;
}

FoldHand::FoldHand(QObject* parent) : QObject(parent) { pool_.setMaxThreadCount(1); }

FoldHand::~FoldHand() {
  stopped_ = true;
  pool_.waitForDone();
}

void FoldHand::set_question(const Question& question) {
  question_ = question;
  desk_.reset();
  drop();
}

void FoldHand::drop() {
  waiting_.reset();
  if (!is_running_) return;
  is_dropped_ = true;
  stopped_ = true;
}

void FoldHand::move(const FoldWay& way, const Hand& hand, int line, Length to) { ask({way, hand, line, to, 0}); }
void FoldHand::plan(const FoldWay& way, const Hand& hand) { ask({way, hand, -1, {}, 0}); }

void FoldHand::step(const FoldWay& way, const Hand& hand, int line, Length from, int steps) {
  ask({way, hand, line, from, steps});
}

void FoldHand::ask(const Wish& wish) {
  if (is_running_) {
    waiting_ = wish;
    return;
  }
  is_running_ = true;
  run(wish);
}

namespace {

// Steps from place to place where the yield can change.
Result<HandPlan> stepped(RollDesk& desk, const FoldWay& way, const Hand& hand, int line, Length from, int steps) {
  const Length to = next_place(desk.snaps(way, line), from, steps);
  return planned_within(desk, way, with_line(hand, way, line, to), line, Snap::yield_changes);
}

}  // namespace

void FoldHand::run(const Wish& wish) {
  stopped_ = false;
  is_dropped_ = false;
  if (!desk_) {
    SearchBudget budget;
    budget.cancelled = &stopped_;
    desk_ = std::make_shared<RollDesk>(question_.job, question_.roll, question_.aim, budget);
  }
  pool_.start([this, desk = desk_, wish, unit = question_.job.unit] {
    HandPlanPtr plan;
    QString reason;
    try {
      const Result<HandPlan> found =
          wish.line < 0    ? planned_within(*desk, wish.way, wish.hand, -1, Snap::none)
          : wish.steps == 0 ? plan_moved(*desk, wish.way, wish.hand, wish.line, wish.to, unit)
                            : stepped(*desk, wish.way, wish.hand, wish.line, wish.to, wish.steps);
      if (found) plan = std::make_shared<const HandPlan>(*found);
      else reason = spoken(found.problem());
    } catch (const std::exception& problem) {
      reason = tr("The plan could not be made: %1.").arg(QString::fromUtf8(problem.what()));
    }
    QMetaObject::invokeMethod(this, [this, desk, plan, reason] { finish(desk, plan, reason); }, Qt::QueuedConnection);
  });
}

void FoldHand::finish(const std::shared_ptr<RollDesk>& desk, const HandPlanPtr& plan, const QString& reason) {
  is_running_ = false;
  const bool is_ours = desk == desk_ && !is_dropped_;
  if (waiting_) ask(*std::exchange(waiting_, std::nullopt));
  if (is_ours && plan) emit planned(plan);
  if (is_ours && !plan) emit refused(reason);
  if (!is_running_) emit settled();
}

}  // namespace foldyard
