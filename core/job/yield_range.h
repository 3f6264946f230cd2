#pragma once

// What a roll of unknown length gives, and what to do first at the table.
//
// A measured roll is at least, likely and at most so long (length_estimate).
// YieldRange says, for one fold way and aim, what each length between gives,
// and an order of work that is safe whatever the length turns out to be: first
// all lengths of the plan for the least length, which are cut in any case; then,
// by how far the roll goes on, what to cut from the rest.
//
// steps: of the whole roll, from the least length to the most.
// further: of the rest. `from` is counted from the last cross-cut of `first` to
// the raw end of the roll, the squaring of that end included. Its first entry is
// what the least length leaves, where nothing more can be cut.
// most_lost: by no length is this order worth less than the best plan for that
// length by more (for worth_less_time: net). Only known where no step is left
// out.
//
// Example: panels of 30 cm, no losses, a roll of 50 to 100 cm: first 1 length;
// goes on for 30 cm: 1 more; for 60 cm: 2 more.

#include "cloth/length_estimate.h"
#include "cloth/roll_estimate.h"
#include "job/length_steps.h"
#include "job/plan_roll.h"

namespace foldyard {

struct CountRange {
  std::int64_t least = 0;
  std::int64_t likely = 0;
  std::int64_t most = 0;
  bool operator==(const CountRange&) const = default;
};

struct YieldRange {
  int roll = 0;  // index into Job::rolls
  LengthEstimate estimate;
  Plan first;   // for the least length
  Plan likely;  // for the likely length
  LengthSteps steps;
  LengthSteps further;
  std::vector<CountRange> yield;  // by panel, over the plans of all steps listed
  std::optional<Worth> most_lost;
  bool proved = false;  // every plan of the whole roll is
  bool operator==(const YieldRange&) const = default;
};

inline constexpr int kMostSteps = 16;
inline constexpr int kMostFurther = 12;

// The job as it is for what lies on the roll beyond the lengths of a plan: its
// free end is squared already, so it gets that much back; flaws and repeats keep
// their places on the cloth; what may be cut `at_most` is less by the plan; the
// roll is not unrolled a second time. `length`: of the whole roll.
Job rest_of_roll(const Job& job, const Plan& plan, Length length);

// Refused where the roll is not estimated, where the measure is refused, or where
// the plan for the least length is.
// REQUIRES the invariants of Job.
Result<YieldRange> yield_range(const Job& job, int roll, const FoldWay& way, Aim aim,
                               const SearchBudget& budget = {});

}  // namespace foldyard
