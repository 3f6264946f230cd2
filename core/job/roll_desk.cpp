#include "job/roll_desk.h"

#include <algorithm>

#include "job/matched_planner.h"
#include "job/plan_by.h"

namespace foldyard {

namespace {

// Progress counts what one call does, not what the planner does for several.
SearchBudget without_progress(SearchBudget budget) {
  budget.progress = nullptr;
  return budget;
}

Length distance(Length a, Length b) { return a > b ? a - b : b - a; }

}  // namespace

RollDesk::RollDesk(Job job, int roll, Aim aim, const SearchBudget& budget)
    : job_(std::move(job)), roll_(roll), aim_(aim), budget_(budget) {}

RollDesk::~RollDesk() = default;

// Tables that were being made when the flag went up may be unfinished.
std::shared_ptr<RollPlanner> RollDesk::planner() {
  const std::lock_guard lock(mutex_);
  const bool is_cancelled = budget_.is_cancelled();
  if (!planner_ || (is_spoiled_ && !is_cancelled))
    planner_ = std::make_shared<RollPlanner>(job_, roll_, aim_, without_progress(budget_));
  is_spoiled_ = is_cancelled;
  return planner_;
}

Result<Plan> RollDesk::best(const FoldWay& way) {
  Result<Plan> plan = plan_by(job_, roll_, way, aim_, budget_, *planner());
  note_cancel();
  return plan;
}

Result<Plan> RollDesk::at(const FoldPlan& fold) {
  if (needs_matching(job_, roll_))
    return Problem{way_name(fold.way), "the panels match a pattern; there folds are not put by hand", ""};
  Result<Plan> plan = inspected(job_, planner()->plan_at(fold));
  note_cancel();
  return plan;
}

Comparison RollDesk::compare() {
  Comparison comparison = compare_by(job_, roll_, aim_, budget_, *planner());
  note_cancel();
  return comparison;
}

void RollDesk::note_cancel() {
  if (!budget_.is_cancelled()) return;
  const std::lock_guard lock(mutex_);
  is_spoiled_ = true;
}

std::vector<Length> RollDesk::snaps(const FoldWay& way, int line) {
  std::vector<Length> places;
  for (const std::vector<Length>& lines : planner()->fold_places(way))
    if (0 <= line && line < std::ssize(lines)) places.push_back(lines[line]);
  std::sort(places.begin(), places.end());
  places.erase(std::unique(places.begin(), places.end()), places.end());
  return places;
}

FoldPlan RollDesk::snapped(const FoldPlan& fold, int line, Length place) {
  const auto farther = [&](const std::vector<Length>& lines) {
    Length others;
    for (std::size_t i = 0; i < lines.size(); ++i) others += distance(lines[i], fold.lines[i]);
    return std::pair(distance(lines[line], place), others);
  };
  FoldPlan nearest = fold;
  bool any = false;
  for (const std::vector<Length>& lines : planner()->fold_places(fold.way)) {
    if (lines.size() != fold.lines.size() || line < 0 || line >= std::ssize(lines)) continue;
    if (any && farther(lines) >= farther(nearest.lines)) continue;
    nearest.lines = lines;
    any = true;
  }
  return nearest;
}

}  // namespace foldyard
