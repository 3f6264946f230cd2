#pragma once

// PriceSearch: prices of limited copies that make the bound of a roll small.
// Internal to the limited planner.
//
// For any prices ≥ 0, the best plan when each copy costs its price and copies
// are free, plus prices × limits, bounds every plan within the limits. A
// subgradient search raises the price of what is cut too often and lowers that
// of what is cut too seldom, each step in proportion to the panel's gain. All in
// whole numbers, so that it takes the same path everywhere.
// Source: Held, Wolfe & Crowder 1974, Mathematical Programming 6 (from memory,
// no page seen).

#include "job/limited_pool.h"

namespace foldyard {

class PriceSearch {
 public:
  static constexpr int kPatience = 3;  // rounds without a lower bound before steps halve
  static constexpr int kHalvings = 7;

  PriceSearch(const LimitedCase& c, std::vector<std::int64_t> start);

  const std::vector<std::int64_t>& prices() const { return at_; }  // to plan with next
  const std::vector<std::int64_t>& best_prices() const { return best_; }
  std::int64_t bound() const { return bound_; }
  std::int64_t given_back(const std::vector<std::int64_t>& prices) const;
  // A plan was found best at prices(); no series gains more there than `bound`.
  // reached: the value of the best plan within the limits. False where no other
  // prices are worth a try.
  bool note(const std::vector<std::int64_t>& used, std::int64_t bound, std::int64_t reached);

 private:
  bool move(const std::vector<std::int64_t>& used, std::int64_t bound, std::int64_t reached);

  const LimitedCase& case_;
  std::vector<std::int64_t> at_, best_;  // by panel
  std::int64_t bound_;
  int halvings_ = 0;
  int waited_ = 0;
};

}  // namespace foldyard
