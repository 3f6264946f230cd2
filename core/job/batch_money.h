#pragma once

// What a batch costs, brings and takes, and what a faster step is worth.
//
// Time is standard time: basic time with the allowance of Job::pace on it. Each
// product is sewn in its first order of operations; without one it takes no time.
// income: each piece at its price for its cloth, else its price, else its worth.
// cloth: what is cut off (BatchPlan), at its price, without the pieces beyond
// `must`. Thread and webbing are bought in whole reels and rolls; prices are those
// of buying anew, also for what is on hand but webbing's ends (they cost nothing).
// an_hour: income less all that is spent, by the hours of cutting and sewing;
// none where no time is taken. Rounded down.
// is_assumed: some step has never been timed.
//
// Worked example: 20 bags at 24, cloth 150, webbing 18, labels 4, thread 4: 304
// are earned; in 1 h of cutting and 3 h of sewing: 76 an hour.

#include <optional>

#include "job/batch_plan.h"
#include "job/job.h"
#include "job/plan_webbing.h"

namespace foldyard {

struct BatchMoney {
  Worth income;
  Worth cloth;
  Worth webbing;
  Worth thread;
  Worth labels;
  std::int64_t reels = 0;
  std::int64_t label_count = 0;
  Duration cutting;
  Duration sewing;
  bool is_assumed = false;

  Worth spent() const { return cloth + webbing + thread + labels; }
  Worth earned() const { return income - spent(); }
  std::optional<Worth> an_hour() const;
  bool operator==(const BatchMoney&) const = default;
};

// REQUIRES the invariants of Job and a plan of it.
BatchMoney batch_money(const Job& job, const BatchPlan& plan, const std::vector<WebbingPlan>& webbing);
Worth price_of(const Job& job, const Product& product, const std::string& cloth);
// Standard time of one piece in its n-th order of operations.
Duration sewing_time(const Job& job, const Product& product, std::size_t order = 0);
// What sewing all these pieces in the n-th order instead of the first saves, at the
// rate of Job::pace; below zero where it takes longer.
Worth saved_by_order(const Job& job, const Product& product, std::int64_t pieces, std::size_t order);
// What it saves if a step of the first order takes so much less.
Worth saved_by_step(const Job& job, std::int64_t pieces, Duration less);

}  // namespace foldyard
