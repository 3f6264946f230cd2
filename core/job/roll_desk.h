#pragma once

// RollDesk: one roll on the table, with all that its plans share kept from call
// to call: the cut tables and what strips give at every length. The first plan
// costs what plan_roll does; a fold line that is moved by hand afterwards is
// planned again in a small part of that.
//
//   best(way)  the best plan of a way, as plan_roll gives it
//   at(fold)   the best plan with the folds where `fold` says
//   within(way, hand)  the best plan of a way that keeps to what is set by hand
//   compare()  all ways, as compare_ways gives them
//   snaps      the finite set of places among which a fold line has its best one
//
// at() is refused, in one sentence, where the folds cannot lie so
// (job/check_fold.h), a way is not allowed or panels must match a pattern. Its proof speaks of folds that lie
// there. levels are the way's own; what `fold` holds there is not looked at.
// Positions that are whole in no unit are the caller's business.
//
// within() pins fold lines and the length of all lengths, and asks for at least so
// many of a panel (job/hand.h); what is not set is searched. With nothing set it
// is best(). Its bound speaks of plans that keep to the hand; where not all of
// them were searched, it is that of all plans of the way, and proved only where
// the plan reaches it. Refused where it cannot be kept, as at() is; panels that
// must match a pattern take no hand.
//
// Every plan given out has passed inspect_plan, and those of within() inspect_hand. Calls may come from several
// threads at once. Once the budget's cancel flag is up, calls end as those of
// plan_roll do; tables left unfinished so are made again for the next call after
// the flag is down.
//
// REQUIRES as plan_roll.
// Example: 1500 mm with selvedges of 10, folded off-centre, carriers 450 wide:
// snaps(off-centre, 0) holds 235 mm (half a carrier from the selvedge).

#include <map>
#include <memory>
#include <mutex>
#include <vector>

#include "job/hand.h"
#include "job/plan_roll.h"

namespace foldyard {

class RollPlanner;

class RollDesk {
 public:
  RollDesk(Job job, int roll, Aim aim, const SearchBudget& budget = {});
  ~RollDesk();

  Result<Plan> best(const FoldWay& way);
  Result<Plan> at(const FoldPlan& fold);
  Result<Plan> within(const FoldWay& way, const Hand& hand);
  Comparison compare();

  // The places of fold line `line` (from 0, left to right) where what the roll
  // yields can change, ascending; each belongs to a fold that lies as the way
  // allows. Empty where the way has no such line.
  std::vector<Length> snaps(const FoldWay& way, int line);
  // Of all folds with their lines in such places, the one with this line nearest
  // to `place`; of those the one whose other lines lie nearest to where they
  // are. Without any: `fold` as it is.
  FoldPlan snapped(const FoldPlan& fold, int line, Length place);

 private:
  std::shared_ptr<RollPlanner> planner();
  void note_cancel();
  Result<Plan> plan_within(const FoldWay& way, const Hand& hand);
  Plan bounded_by_way(Plan plan);
  std::optional<Proof> proof_of_way(const FoldWay& way);

  const Job job_;
  int roll_;
  Aim aim_;
  SearchBudget budget_;
  std::mutex mutex_;  // guards all below
  std::shared_ptr<RollPlanner> planner_;
  bool is_spoiled_ = false;
  std::map<FoldWay, Proof> proofs_;  // of the best plans of ways
};

}  // namespace foldyard
