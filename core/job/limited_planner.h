#pragma once

// LimitedPlanner: plans one roll under any way for one aim, within every
// panel's at_most. Internal to the doors of job/plan_roll.h; plan() may be called
// from several threads at once, and gives each way the same plan whichever was
// planned before.
//
// Where the best plan without limits keeps within them, it is the answer.
// Otherwise limited_way.h searches; open cloth goes first, and the prices that
// it ends with start the other ways.

#include <mutex>
#include <optional>

#include "job/limited_way.h"

namespace foldyard {

class LimitedPlanner {
 public:
  // REQUIRES a planner of the same job, roll and aim that lives as long as this.
  LimitedPlanner(const Job& job, int roll, Aim aim, const SearchBudget& budget, RollPlanner& free);

  Result<Plan> plan(const FoldWay& way);

 private:
  struct Open {
    std::optional<Result<Plan>> plan;  // none: the limits do not bind, or the way is refused
    std::vector<std::int64_t> prices;
  };
  bool keeps_limits(const Plan& plan) const;
  const Open& open();

  const Job& job_;
  int roll_;
  Aim aim_;
  SearchBudget budget_;
  RollPlanner& free_;  // without limits
  std::once_flag once_;
  Open open_;
};

}  // namespace foldyard
