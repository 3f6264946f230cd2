#include <algorithm>

#include "inspect/batch_checks.h"
#include "inspect/checks.h"
#include "measure/index.h"

namespace foldyard::inspection {

namespace {

__extension__ using Wide = __int128;

constexpr std::int64_t kMetre = Length::mm(1000).units();

Worth worth_of_cloth(const Job& job, const Plan& plan) {
  const Roll& roll = job.rolls[ix(plan.roll)];
  const std::int64_t cut = plan.remnant.from.units();
  if (roll.price) return Worth::parts(static_cast<std::int64_t>(Wide{roll.price->parts()} * cut / kMetre));
  const Wide area = Wide{roll.fabric.width.units()} * cut;
  return Worth::parts(static_cast<std::int64_t>(area * job.cloth_price.parts() / kMetre / kMetre));
}

const Product& product_of(const Job& job, int line) {
  const OrderLine& order = job.order.lines[ix(line)];
  return job.products[ix(order.product)];
}

struct Value {
  Worth filled;
  Worth cost;
};

Value value_of(const Job& job, const BatchPlan& plan) {
  Value value;
  for (const Plan& roll : plan.rolls) value.cost += worth_of_cloth(job, roll);
  for (int line = 0; line < std::ssize(job.order.lines); ++line) {
    std::int64_t pieces = 0;
    for (const Made& made : plan.made) pieces += made.line == line ? made.pieces : 0;
    const std::int64_t must = std::min(pieces, job.order.lines[ix(line)].must);
    value.filled += product_of(job, line).worth * must;
    value.cost = value.cost - product_of(job, line).worth * (pieces - must);
  }
  return value;
}

// Of one roll, up to where its lengths lie in stacks.
Duration time_of_roll(const Job& job, const Plan& roll) {
  const Pace& pace = job.pace;
  const Length width = job.rolls[ix(roll.roll)].fabric.width;
  Duration time = pace.unroll;
  for (const LengthOnRoll& length : roll.lengths) {
    const Pattern& pattern = pattern_of(roll, length);
    time += pace.cross_cut + travel_time(width, pace.ms_per_metre) + pace.fold * folds_by_hand(pattern.fold.way) +
            pace.handle * std::ssize(pattern.panels);
  }
  return time;
}

Duration time_of_batch(const Job& job, const BatchPlan& plan) {
  const Pace& pace = job.pace;
  Duration basic;
  for (const Plan& roll : plan.rolls) basic += time_of_roll(job, roll);
  for (const BatchLay& lay : plan.lays) {
    const Plan& roll = plan.rolls[ix(lay.lengths[0].roll)];
    const Pattern& pattern = pattern_of(roll, roll.lengths[ix(lay.lengths[0].length)]);
    basic += pace.lift + pace.mark * std::ssize(pattern.cuts) + travel_time(pattern.travel, pace.ms_per_metre);
  }
  return Duration::ticks(static_cast<std::int64_t>(Wide{basic.ticks()} * (100 + pace.allowance_percent) / 100));
}

void inspect_bounds(const BatchPlan& plan, Findings& findings) {
  const bool is_filled = plan.filled == plan.filled_bound;
  findings.require(plan.filled <= plan.filled_bound, "More is filled than its bound of ", plan.filled_bound);
  findings.require(plan.cost_bound <= plan.cost, "The bound of the cost, ", plan.cost_bound,
                   ", lies above the cost reached");
  findings.require(!plan.proved || (is_filled && plan.cost == plan.cost_bound),
                   "The plan is said to be proved but does not reach its bounds");
}

}  // namespace

void inspect_batch_sums(const Job& job, const BatchPlan& plan, Findings& findings) {
  const Value value = value_of(job, plan);
  findings.agree(plan.filled, value.filled, "What is filled");
  findings.agree(plan.cost, value.cost, "The cost");
  findings.agree(plan.time, time_of_batch(job, plan), "The time");
  findings.agree(plan.lifts, std::int64_t{std::ssize(plan.lays)}, "The number of lifts");
  inspect_bounds(plan, findings);
}

}  // namespace foldyard::inspection
