#pragma once

// QuickPlanner: a fair plan of one roll within a few milliseconds, for a search
// that is stopped before it has one. Internal to the doors of job/plan_roll.h.
//
// It plans with at most four of the panels (two worth most for their area, the
// narrowest and the shortest), on a table of 1.5 m or the longest of them, with
// few places and few plies. Whatever it gives is a plan of the whole job, for
// its worth summed up, but never proved; proof.bound is left to the caller. It
// may refuse a way that the whole search can plan.
//
// plan() may be called from several threads at once.

#include <mutex>
#include <optional>

#include "job/roll_planner.h"

namespace foldyard {

class QuickPlanner {
 public:
  QuickPlanner(const Job& job, int roll, Aim aim) : job_(job), roll_(roll), aim_(aim) {}

  Result<Plan> plan(const FoldWay& way);

 private:
  void prepare();
  Plan of_whole_job(Plan plan) const;

  const Job& job_;
  int roll_;
  Aim aim_;
  std::once_flag prepared_;
  std::vector<int> kept_;  // of job.panels, by panel of small_
  Job small_;
  std::optional<RollPlanner> planner_;
};

}  // namespace foldyard
