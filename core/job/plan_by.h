#pragma once

// The doors of job/plan_roll.h with a planner that the caller keeps. Internal to
// them and to job/roll_desk.h; what they give is inspected.
//
// REQUIRES a planner of the same job, roll and aim, and of the same cancel flag.
// budget.progress counts stages, or for a comparison ways.

#include "job/roll_planner.h"

namespace foldyard {

// The plan, or what the inspector found (a fault of the program).
Result<Plan> inspected(const Job& job, Result<Plan> plan);

Result<Plan> plan_by(const Job& job, int roll, const FoldWay& way, Aim aim, const SearchBudget& budget,
                     RollPlanner& planner);
Comparison compare_by(const Job& job, int roll, Aim aim, const SearchBudget& budget, RollPlanner& planner);

}  // namespace foldyard
