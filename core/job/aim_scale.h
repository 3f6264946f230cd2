#pragma once

// AimScale: turns an Aim into the gains and costs that the searches add up.
//
// most_worth: gain is worth; cost puts cuts (cross-cuts too) before travel.
// worth_less_time: both are working time without allowance, in ticks shifted
// right by `shift` bits where a large job would overflow: a panel gains what
// its worth buys of the maker's time, less its handling.
//
// Example: rate 20.00 an hour, no allowance: a panel of worth 1.00 gains three
// minutes.

#include "cutting/objective.h"
#include "cutting/shape.h"
#include "job/job.h"
#include "job/plan.h"

namespace foldyard {

struct AimScale {
  Objective objective;
  std::vector<Shape> shapes;
  // By panel: what is taken off again where one is cut but lost to a flaw; its
  // handling stays.
  std::vector<std::int64_t> lost;
  std::int64_t per_length = 0;  // cross-cut and folds
  std::int64_t per_lay = 0;
  int shift = 0;
};

// What each copy of a panel costs while a limit on copies is searched: gains
// are counted `scale` times finer, and each is less by its panel's price.
struct Prices {
  std::int64_t scale = 1;
  std::vector<std::int64_t> panel;  // empty: none
};

AimScale aim_scale(const Job& job, const Roll& roll, const FoldWay& way, Aim aim);
AimScale priced(AimScale scale, const Prices& prices);

}  // namespace foldyard
