#include "job/roll_desk.h"

#include <algorithm>

#include "inspect/inspect_hand.h"
#include "job/counted_way.h"
#include "job/hand_edit.h"
#include "job/matched_planner.h"
#include "job/plan_by.h"

namespace foldyard {

namespace {

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
    planner_ = std::make_shared<RollPlanner>(job_, roll_, aim_, budget_.without_progress());
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
    return Problem{way_name(fold.way), say("the panels match a pattern; there folds are not put by hand"), ""};
  Result<Plan> plan = inspected(job_, planner()->plan_at(fold));
  note_cancel();
  return plan;
}

namespace {

constexpr int kPriceRounds = 24;  // of the search for prices

Result<Plan> kept_to(const Job& job, Result<Plan> plan, const Hand& hand) {
  if (!plan) return plan;
  const std::vector<std::string> findings = inspect_hand(job, *plan, hand);
  if (findings.empty()) return plan;
  return Problem{way_name(plan->way), say("the plan found does not keep to what is set: %1", findings.front()),
                 say("this is a fault of the program; please report it with the job file")};
}

constexpr const char* kReached = to_say("it reaches the bound of all plans of this way, whatever is set by hand");
constexpr const char* kFewFolds = to_say("this is the best found with what is set by hand, not proved best; the bound is that "
                                         "of all plans of this way");

// A fan with one line pinned; where all is pinned an end leg may be less than holds
// a panel, and no plan of the way has such a fold.
bool has_found_ends(const FoldWay& way, const Hand& hand) {
  const bool is_fan = way.kind == FoldKind::fan || way.kind == FoldKind::quarters;
  return is_fan && std::count_if(hand.lines.begin(), hand.lines.end(), [](const auto& l) { return l.has_value(); }) == 1;
}

}  // namespace

Result<Plan> RollDesk::within(const FoldWay& way, const Hand& hand) {
  if (hand.is_empty()) return best(way);
  if (needs_matching(job_, roll_))
    return Problem{way_name(way), say("the panels match a pattern; there nothing is set by hand"), ""};
  Result<Plan> plan = plan_within(way, hand);
  const bool is_bounded = !hand.has_lines() || (aim_ == Aim::most_worth && has_found_ends(way, hand));
  if (plan && !plan->proof.proved && is_bounded) plan = bounded_by_way(*plan);
  plan = kept_to(job_, inspected(job_, std::move(plan)), hand);
  note_cancel();
  return plan;
}

// Where the best plan with what is set has enough of everything, it is the answer.
Result<Plan> RollDesk::plan_within(const FoldWay& way, const Hand& hand) {
  Result<Plan> plan = planner()->plan_within(way, hand);
  if (!plan) return plan;
  const std::vector<std::int64_t> least = least_of(job_, hand);
  bool is_enough = is_within(plan->yield, limits_of(job_));
  for (std::size_t p = 0; p < least.size(); ++p) is_enough = is_enough && plan->yield[p] >= least[p];
  return is_enough ? plan : CountedWay(job_, roll_, aim_, way, hand, budget_.without_progress()).run(kPriceRounds);
}

// What keeps to the hand is a plan of the way where its end legs are found, or no
// line is pinned. (A line that is put where the worth does not change may save a
// cut, so that the bound of net worth does not hold.)
Plan RollDesk::bounded_by_way(Plan plan) {
  const std::optional<Proof> of_way = proof_of_way(plan.way);
  if (!of_way || of_way->bound > plan.proof.bound) return plan;
  const Worth reached = plan.aim == Aim::most_worth ? plan.worth : plan.net;
  if (reached > of_way->bound) return plan;
  plan.proof = {of_way->bound, reached == of_way->bound, say(reached == of_way->bound ? kReached : kFewFolds)};
  return plan;
}

std::optional<Proof> RollDesk::proof_of_way(const FoldWay& way) {
  {
    const std::lock_guard lock(mutex_);
    const auto known = proofs_.find(way);
    if (known != proofs_.end()) return known->second;
  }
  const Result<Plan> free = best(way);
  if (!free || budget_.is_cancelled()) return std::nullopt;
  const std::lock_guard lock(mutex_);
  proofs_[way] = free->proof;
  return free->proof;
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
