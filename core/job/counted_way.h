#pragma once

// CountedWay: the best plan of one roll under one way that keeps to a hand, where
// at least so many of a panel are asked for (or, with a hand, where some panel's
// at_most binds). Internal to RollDesk.
//
// How many of a panel the roll gives at most is looked up first: fewer than asked
// for is refused, and proved. Then each copy of a counted panel has a price, or a
// bonus where it is asked for: the best plan at any prices, with what the prices
// give back, bounds every plan within the counts (batch/counted_series.h). Where
// one panel is counted, prices close in on the best bound between too few and
// enough; else a subgradient search seeks them. The patterns met on the way are
// kept, and the best series of them that keeps to the counts is the plan. It is
// proved where it reaches the bound; else it is the best of what was met.

#include "batch/counted_series.h"
#include "job/hand.h"
#include "job/limited_pool.h"
#include "measure/words.h"

namespace foldyard {

class CountedWay {
 public:
  CountedWay(const Job& job, int roll, Aim aim, const FoldWay& way, const Hand& hand, const SearchBudget& budget);

  // rounds: of the search for prices.
  Result<Plan> run(int rounds);

 private:
  struct Kept {
    Pattern pattern;
    std::vector<std::int64_t> copies;  // by panel
    std::int64_t cost = 0;             // of its cuts
  };
  // What a round of prices found: of the counted panels, how many its plan gives.
  struct Round {
    std::int64_t priced = 0;  // no series gains more at these prices
    std::vector<std::int64_t> copies;
  };

  std::optional<Problem> find_most();
  std::optional<Problem> round_at(const std::vector<std::int64_t>& prices, Round& round);
  std::optional<Problem> search_prices(int rounds);
  std::optional<Problem> close_in(int rounds);
  std::optional<Problem> descend(int rounds);
  std::vector<std::int64_t> step_from(const std::vector<std::int64_t>& prices, const Round& round, int halvings) const;
  std::int64_t dearest_bonus(int panel) const;
  void keep(const std::vector<Pattern>& patterns);
  void lay();
  void consider(const std::vector<std::pair<Pattern, std::int64_t>>& lengths);
  CountBounds bounds(const std::vector<std::int64_t>& prices) const;
  std::vector<std::int64_t> counted(const std::vector<std::int64_t>& by_panel) const;
  bool is_enough(const Plan& plan) const;
  bool is_proved() const { return is_whole_ && bound_ - value_ < case_.scale && bound_ >= value_; }
  Words asked_words() const;
  Proof proof() const;

  LimitedCase case_;
  const Hand& hand_;
  std::vector<std::int64_t> least_;  // by panel
  std::vector<int> panels_;          // that are counted
  std::vector<std::int64_t> best_prices_;
  std::int64_t bound_;
  bool is_whole_ = true;
  Worth area_bound_;
  std::vector<Kept> kept_;
  Plan plan_;
  std::int64_t value_ = 0;
};

}  // namespace foldyard
