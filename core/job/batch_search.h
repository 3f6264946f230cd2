#pragma once

// BatchSearch: the search behind plan_batch. Internal to it.
//
// Lengths are found by prices (batch_market.h) for the linear model of the order
// until none is worth adding; dives make whole plans of what the model says; a second
// model, with lengths folded end to end, gives the bound; dives with these come next; then
// the best is bettered step by step, and cut other ways where that is better. All on one thread but the markets.

#include "batch/order_dive.h"
#include "batch/order_improve.h"
#include "job/batch_market.h"
#include "job/last_length.h"

namespace foldyard {

// In parts. cost is of plans that fill `filled`, and keep every rule's at_least where
// keeps_rules.
struct BatchBounds {
  std::int64_t filled = 0;
  std::int64_t cost = 0;
  bool has_cost = false;
  bool keeps_rules = true;
  // Of plans that fill as much as the best found, where that is less than `filled`.
  std::optional<std::int64_t> served_cost = {};
};

class BatchSearch {
 public:
  // found: after each better plan.
  BatchSearch(const Job& job, const BatchCase& c, const BatchBudget& budget, std::function<void()> found);

  void run();
  const OrderState& best() const { return best_; }
  const OrderScore& score() const { return score_; }
  BatchBounds bounds() const { return bounds_; }
  BatchLengths& lengths() { return lengths_; }
  bool is_proved() const;

 private:
  // The linear model for one end: to fill the order, or with least cost besides; with
  // lengths folded end to end, as a bound needs them, or without, as plans are begun: their
  // tables are large.
  struct Stage {
    OrderModel model;
    bool to_fill = false;
    bool end_to_end = false;
    std::size_t allowed = 0;  // lengths of the pool that its sources may be cut by
  };
  OrderState kept_state();
  void add_first_lengths();
  void add_single_lengths(int kind);
  void add_single_lengths(int kind, int panel);
  void add_by_area(const Market& market);
  void allow_all(Stage& stage) const;
  void price_out(Stage& stage);
  bool price(Stage& stage, bool for_bound, std::int64_t steps);
  std::vector<Offer> offers_at(const Stage& stage, const OrderPrices& prices, bool for_bound, std::int64_t steps) const;
  bool add_offered(const std::vector<Offer>& offers);
  bool is_for(const Stage& stage, const OrderLength& length) const;
  void note_bound(const Stage& stage, const std::vector<Offer>& offers, OrderPrices prices);
  void note_cost_bound(const std::vector<Offer>& offers, OrderPrices prices);
  void note_fill_bound(const std::vector<Offer>& offers, OrderPrices prices);
  void bound(bool to_fill);
  double weight_that_serves() const;
  void bound_served();
  void consider(OrderState state);
  void dive_from(OrderState state, double share, bool with_last);
  std::vector<int> best_lengths();
  void improve();
  void refold_best(bool all_ways);
  std::int64_t uneven_cost() const;
  std::int64_t few_steps() const;
  bool is_over() const { return budget_.is_cancelled() || is_proved(); }
  FillTools tools(bool with_last);

  const Job& job_;
  const BatchCase& case_;
  const OrderCase& order_;
  BatchBudget budget_;
  std::function<void()> found_;
  std::vector<Market> markets_;
  BatchLengths lengths_;
  LastLengthFinder last_;
  std::vector<std::int64_t> areas_;
  ModelWeights weights_;
  Stage cost_;
  OrderState base_;  // the lengths that are kept
  OrderState best_;
  OrderScore score_;
  bool has_plan_ = false;
  BatchBounds bounds_;
};

}  // namespace foldyard
