#pragma once

// How the webbing, tape, cord and zips of so many pieces are cut: the fewest full
// rolls to buy, ends on hand first (batch/cut_to_length.h).
//
// Each webbing of the job that a piece takes has a plan, in the order of
// Job::webbings. Lengths that are the same are one; the longest stands first.
//
// winding: a board of this girth, wound so many turns side by side and cut through
// at one edge, gives the lengths at one stroke: girth = the length with its loss.
// Common practice, no source.
//
// Worked example: 20 carriers with two handles of 55 cm from rolls of 50 m: 40 of
// 55 cm, 22 m, one roll; a board of 55 cm girth, 40 turns.

#include <vector>

#include "batch/cut_to_length.h"
#include "job/batch_plan.h"
#include "job/job.h"

namespace foldyard {

struct WebbingPlan {
  int webbing = 0;  // index into Job::webbings
  std::vector<WantedLength> wanted;
  CutToLength cuts;
  Worth price;      // of the full rolls to buy
  bool operator==(const WebbingPlan&) const = default;
};

// pieces: by product. REQUIRES the invariants of Job, one entry for each product.
std::vector<WebbingPlan> plan_webbing(const Job& job, const std::vector<std::int64_t>& pieces);
// Of what a batch makes, by product.
std::vector<std::int64_t> pieces_of(const Job& job, const BatchPlan& plan);

struct Winding {
  Length girth;
  std::int64_t turns = 0;
};
Winding winding(const Webbing& webbing, Length length, std::int64_t count);

}  // namespace foldyard
