#pragma once

// Markets: each cloth in each of its kinds, in which lengths sell their panels at
// the prices of the order model. Finds lengths that a better plan would hold, and
// with the same prices the bound.
//
// Prices are rounded to whole numbers, `scale` times finer than parts; what is found
// at them is exact for them.

#include "batch/order_bound.h"
#include "batch/order_model.h"
#include "job/batch_lengths.h"
#include "job/plan_batch.h"

namespace foldyard {

struct Market {
  int cloth = 0;
  int kind = 0;
  std::vector<int> sources;
};

std::vector<Market> markets_of(const OrderCase& order);

// What one market's search at prices gives. sold: bounds every length of any way.
struct Offer {
  std::vector<std::pair<int, Pattern>> lengths;  // way, pattern: those worth adding
  std::vector<SoldLength> sold;
  bool is_whole = true;
  Wide most_of_metre = 0;  // no metre sells for more, where not whole
};

// What is asked of the markets.
struct Asking {
  const Job& job;
  const BatchCase& batch;
  const OrderPrices& prices;
  std::vector<double> metre_prices;  // by source, in whole currency
  bool end_to_end = false;           // else ways that fold so are left out
  bool for_bound = false;            // then also lengths that only bound
  std::int64_t steps = 0;
  const std::atomic<bool>* cancelled = nullptr;
  std::int64_t most_panels = std::int64_t{1} << 40;  // on all lengths of a market; one of few it may have
};

// In the order of the markets; searched by several threads, as many at once as memory lets.
// Once cancelled, what is not searched yet offers nothing, and then no bound may be drawn from
// any: least_of_all, given the same flag, draws none.
std::vector<Offer> offers_of(const std::vector<Market>& markets, const Asking& asking);

// The prices of a solved model, for these weights. may: of pieces beyond must.
OrderPrices whole_prices(const OrderCase& order, const OrderModel& model);
// The least that any plan comes to at these prices, scaled; no bound where the
// search was stopped.
std::optional<Wide> least_of_all(const OrderCase& order, const std::vector<Market>& markets,
                                 const std::vector<Offer>& offers, const OrderPrices& prices, std::int64_t steps,
                                 const std::atomic<bool>* cancelled);

}  // namespace foldyard
