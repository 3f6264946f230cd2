#pragma once

// LimitedWay: the best plan of one roll under one way when the plan without
// limits passes some panel's at_most. Internal to the limited planner.
//
// Prices of copies give a bound and, with every round, patterns to lay a plan
// from (limited_prices.h, limited_pool.h). What then lies between plan and bound
// is enumerated: every length that a better plan could hold
// (cutting/near_strips.h), and every series of them (batch/limited_series.h),
// first for small losses against the bound, then for all. Where that ends within
// the budget, the plan is proved; where only the smaller losses were enumerated,
// the bound is lower by them.

#include "cutting/near_strips.h"
#include "job/limited_prices.h"
#include "measure/words.h"

namespace foldyard {

class LimitedWay {
 public:
  LimitedWay(const Job& job, int roll, Aim aim, const FoldWay& way, const SearchBudget& budget,
             std::vector<std::int64_t> start_prices);

  // rounds: of the price search.
  Result<Plan> run(int rounds);
  const std::vector<std::int64_t>& prices() const { return prices_.best_prices(); }
  std::int64_t scale() const { return case_.scale; }

 private:
  RollPlanner planner(const std::vector<std::int64_t>& prices) const;
  bool is_proved() const { return bound_ - pool_.value() < case_.scale; }
  std::optional<Problem> search_prices(int rounds);
  void fill_in_turn();
  void close_gap();
  bool close_gap(RollPlanner& planner, const RollPlanner::Searched& priced, std::int64_t allowed);
  std::vector<LimitedEntry> entries_of(const NearStrips& near, const CopyLimits& limits,
                                       const limited::Counting& counting) const;
  Pattern pattern_of(NearStrips& near, const NearStrips::Column& column, const Grid& along) const;
  bool lay_series(NearStrips& near, const CopyLimits& limits, const limited::Counting& counting, const Grid& along,
                  std::int64_t allowed);
  Words refusal() const;
  Proof proof() const;

  LimitedCase case_;
  LimitedPool pool_;
  PriceSearch prices_;
  std::int64_t bound_ = 0;
  bool is_whole_ = true;
  std::int64_t steps_left_ = 0;
  Worth area_bound_;
};

}  // namespace foldyard
