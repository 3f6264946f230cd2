#pragma once

// BatchPlan: how an order is cut from many rolls.
//
// Each roll that is cut has a Plan of its own (job/plan.h), with its lengths in
// their order along the roll; its yield says what panels it gives. `made` says
// what pieces they are sewn into; panels left over are spare.
//
// lays: which lengths lie over each other under the cutter, in cutting order.
// The lengths of a lay, bottom to top, may come from several rolls; all have
// equal patterns (length, folds, cuts) on cloth of equal width and selvedge, so
// that one cut serves all. Every length of every roll lies in just one lay.
// (Plan::lays of the rolls are only how each roll alone would be stacked.)
//
// Cloth cut off a roll: from its free end to its remnant. cost: its worth at the
// roll's price by the metre (rolls without one: Job::cloth_price by the square
// metre), each roll rounded down, less the worth of the pieces beyond `must`.
//
// time: all rolls unrolled, every length cross-cut and folded, every lay lifted,
// marked and cut once, every panel handled, as costing/pace.h has it, with one
// allowance on the sum of all.
//
// shortfalls: where a line gets fewer than `must` pieces, or fewer of a cloth than
// it asks for, what it lacks; none for a line that is served.
//
// Bounds, proved by exact arithmetic: no plan fills more of what must be made,
// in worth, than filled_bound; none that fills as much as this one costs
// less than cost_bound. Every roll is cut as its Plan may be (docs/decisions/strips-first.md).
// proved: this plan reaches both.

#include <cstdint>
#include <string>
#include <vector>

#include "job/order.h"
#include "job/plan.h"
#include "measure/index.h"
#include "measure/words.h"

namespace foldyard {

// So many pieces of an order line from one cloth.
struct Made {
  int line = 0;
  std::string cloth;
  std::int64_t pieces = 0;
  bool operator==(const Made&) const = default;
};

// A length in a stack: index into BatchPlan::rolls, and into its Plan::lengths.
struct StackedLength {
  int roll = 0;
  int length = 0;
  bool operator==(const StackedLength&) const = default;
};

struct BatchLay {
  std::vector<StackedLength> lengths;  // bottom to top
  bool operator==(const BatchLay&) const = default;
};

// What an order line lacks, and what cloth would make it: so much, by the metre,
// of a roll as wide as the named cloth's, cut as well as can be (a guide: from
// the best yield of one length, not a plan).
struct Shortfall {
  int line = 0;
  std::int64_t pieces = 0;
  std::string cloth;
  Length needed;
  bool operator==(const Shortfall&) const = default;
};

struct BatchPlan {
  std::vector<Plan> rolls;  // in the order of Job::rolls; rolls not cut are left out
  std::vector<Made> made;   // by line, then by cloth as first met among the rolls
  std::vector<BatchLay> lays;
  std::vector<Shortfall> shortfalls;
  Worth filled;        // of pieces that must be made, at most `must` of each line
  Worth filled_bound;
  Worth cost;          // may be below zero
  Worth cost_bound;
  bool proved = false;
  Words note;          // how, in one sentence
  Duration time;       // at the cutting table, the lays as they are stacked
  std::int64_t lifts = 0;
  bool operator==(const BatchPlan&) const = default;
};

// The plan of the roll that a length comes from, and how the length is cut. REQUIRE a length of
// a lay of this plan.
inline const Plan& plan_of(const BatchPlan& plan, const StackedLength& length) { return plan.rolls[ix(length.roll)]; }
inline const Pattern& pattern_of(const BatchPlan& plan, const StackedLength& length) {
  const Plan& roll = plan_of(plan, length);
  return pattern_of(roll, roll.lengths[ix(length.length)]);
}

}  // namespace foldyard
