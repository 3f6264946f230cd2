#pragma once

// LimitedPool: the patterns met while a limited roll is searched, and the best
// plan within the limits that can be laid from them. Internal to the limited
// planner.
//
// Values are in the gain units of AimScale, without prices, `scale` times finer:
// worth, or for the other aim working time, of the patterns as they are cut
// (panels that a ply gives by the way are counted).

#include "batch/limited_series.h"
#include "job/cut_back.h"
#include "job/plan_roll.h"
#include "job/roll_planner.h"
#include "measure/index.h"

namespace foldyard {

// One way of one roll for one aim, as the limited search sees it.
struct LimitedCase {
  LimitedCase(const Job& job, int roll, Aim aim, const FoldWay& way, const SearchBudget& budget);

  const Job& job;
  int roll;
  Aim aim;
  FoldWay way;
  SearchBudget budget;
  bool worth_first;
  Length capacity;
  std::int64_t most_lengths = 1;        // in a lay
  AimScale costs;                       // unpriced
  std::int64_t scale = 1;
  std::vector<std::int64_t> gains;      // by panel, scaled
  std::vector<std::int64_t> most;       // by panel
  std::vector<int> limited;             // the panels that have a limit
  std::vector<int> limit_of;            // by panel: index into limited, or −1

  const Roll& cloth() const { return job.rolls[ix(roll)]; }
  // By index into `limited`.
  std::vector<std::int64_t> of_limited(const std::vector<std::int64_t>& by_panel) const;
  CopyLimits limits(const std::vector<std::int64_t>& prices) const;
  std::int64_t value_of(const Plan& plan) const;
  std::int64_t gain_of(const std::vector<std::int64_t>& copies) const;
};

// The plan of these patterns, each so many lengths, in lays of as many as fit the
// cutter, the longest lengths first; summed up, not held to any limit.
Plan laid(const LimitedCase& c, const std::vector<std::pair<Pattern, std::int64_t>>& lengths);

class LimitedPool {
 public:
  explicit LimitedPool(const LimitedCase& c) : case_(c) {}

  // Keeps a pattern, cut back to the limits.
  void add(const Pattern& pattern);
  // Lays the best from all patterns, then cuts back what else fits the rest.
  void improve(const std::vector<std::int64_t>& prices, std::int64_t steps);
  // Keeps the plan of these patterns, each so many lengths, if it keeps within
  // the limits and is better.
  void consider(const std::vector<std::pair<Pattern, std::int64_t>>& lengths);

  bool has_plan() const { return !best_.lengths.empty(); }
  const Plan& best() const { return best_; }
  std::int64_t value() const { return value_; }  // 0 without a plan

 private:
  struct Kept {
    Pattern pattern;
    std::vector<std::int64_t> copies;
    std::int64_t cost = 0;  // of its cuts
  };
  void add_entries(std::vector<LimitedEntry>& entries, std::vector<std::pair<int, std::int64_t>>& of) const;
  bool add_to_rest(std::vector<std::pair<Pattern, std::int64_t>>& lengths) const;
  Length size_of(const Pattern& pattern) const { return pattern.length + case_.job.losses.allowance; }

  const LimitedCase& case_;
  std::vector<Kept> kept_;
  Plan best_;
  std::int64_t value_ = 0;
};

}  // namespace foldyard
