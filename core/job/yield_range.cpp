#include "job/yield_range.h"

#include <algorithm>

#include "cloth/roll_estimate.h"
#include "job/cloth_to_cut.h"
#include "job/roll_of.h"
#include "measure/index.h"

namespace foldyard {

namespace {

const Roll& roll_at(const Job& job, int roll) { return job.rolls[ix(roll)]; }
Roll& roll_at(Job& job, int roll) { return job.rolls[ix(roll)]; }

// The last cross-cut, from the free end.
Length last_cut(const Plan& plan) { return plan.remnant.from; }

// Flaws that end before the new free end are gone with the lengths before it.
std::vector<Flaw> moved(const std::vector<Flaw>& flaws, Length by) {
  std::vector<Flaw> left;
  for (Flaw flaw : flaws) {
    flaw.along = {std::max(Length(), flaw.along.from - by), flaw.along.to - by};
    if (!flaw.along.is_empty()) left.push_back(flaw);
  }
  return left;
}

Repeat moved(Repeat repeat, Length by) {
  if (repeat.along <= Length()) return repeat;
  const std::int64_t size = repeat.along.units();
  const std::int64_t start = (repeat.start_along - by).units() % size;
  repeat.start_along = Length::units(start < 0 ? start + size : start);
  return repeat;
}

// Flaws past the end of a shorter roll are on no cloth.
Job with_length(const Job& job, int roll, Length length) {
  Job shorter = job;
  roll_at(shorter, roll).length = length;
  std::vector<Flaw>& flaws = roll_at(shorter, roll).flaws;
  for (Flaw& flaw : flaws) flaw.along.to = std::min(flaw.along.to, length);
  std::erase_if(flaws, [](const Flaw& flaw) { return flaw.along.is_empty(); });
  return shorter;
}

bool has_any_left(const Job& job) {
  return std::any_of(job.panels.begin(), job.panels.end(),
                     [](const Panel& p) { return !p.at_most || *p.at_most > 0; });
}

class Range {
 public:
  Range(const Job& job, int roll, const FoldWay& way, Aim aim, const SearchBudget& budget)
      : job_(job), roll_(roll), way_(way), aim_(aim), budget_(budget) {}

  Result<Plan> plan(const Job& job) const { return plan_roll(job, roll_, way_, aim_, budget_); }

  LengthSteps steps(const LengthEstimate& estimate) const {
    return length_steps([&](Length length) { return found(with_length(job_, roll_, length)); },
                        estimate.least, estimate.most, kMostSteps);
  }

  LengthSteps further(const LengthEstimate& estimate, const Plan& first) const {
    return length_steps(
        [&](Length length) {
          const Job rest = rest_of_roll(job_, first, length + last_cut(first));
          return has_any_left(rest) ? found(rest) : std::nullopt;
        },
        estimate.least - last_cut(first), estimate.most - last_cut(first), kMostFurther);
  }

 private:
  std::optional<Plan> found(const Job& job) const {
    const Result<Plan> result = plan(job);
    return result ? std::optional<Plan>(*result) : std::nullopt;
  }

  const Job& job_;
  int roll_;
  FoldWay way_;
  Aim aim_;
  SearchBudget budget_;
};

// What the last step at or below the length is worth.
Worth value_at(const LengthSteps& steps, Length length) {
  Worth value;
  for (const LengthStep& step : steps.steps)
    if (step.from <= length) value = value_of(step.plan);
  return value;
}

// Between two steps of the whole roll its best plan stays; the order of work only
// gains as the roll goes on. So it falls short most where a step begins.
Worth most_lost(const YieldRange& range) {
  Worth most;
  for (const LengthStep& step : range.steps.steps) {
    const Worth so = value_of(range.first) + value_at(range.further, step.from - last_cut(range.first));
    most = std::max(most, value_of(step.plan) - so);
  }
  return most;
}

std::vector<CountRange> yields(const YieldRange& range) {
  std::vector<CountRange> all;
  for (std::size_t i = 0; i < range.first.yield.size(); ++i) {
    CountRange count{range.likely.yield[i], range.likely.yield[i], range.likely.yield[i]};
    const auto take = [&](const Plan& plan) {
      count.least = std::min(count.least, plan.yield[i]);
      count.most = std::max(count.most, plan.yield[i]);
    };
    take(range.first);
    for (const LengthStep& step : range.steps.steps)
      if (step.plan) take(*step.plan);
    all.push_back(count);
  }
  return all;
}

bool all_proved(const YieldRange& range) {
  return range.first.proof.proved && range.likely.proof.proved &&
         std::all_of(range.steps.steps.begin(), range.steps.steps.end(),
                     [](const LengthStep& s) { return !s.plan || s.plan->proof.proved; });
}

}  // namespace

Job rest_of_roll(const Job& job, const Plan& plan, Length length) {
  const Roll& whole = roll_of(job, plan);
  const Length gone = last_cut(plan) - cloth_to_cut(whole, job.losses).from;
  Job rest = with_length(job, plan.roll, length);
  Roll& roll = roll_at(rest, plan.roll);
  roll.length = length - gone;
  roll.flaws = moved(roll.flaws, gone);
  roll.fabric.repeat = moved(roll.fabric.repeat, gone);
  rest.pace.unroll = Duration();
  for (std::size_t i = 0; i < rest.panels.size(); ++i)
    if (std::optional<std::int64_t>& most = rest.panels[i].at_most)
      most = std::max<std::int64_t>(0, *most - plan.yield[i]);
  return rest;
}

Result<YieldRange> yield_range(const Job& job, int roll, const FoldWay& way, Aim aim,
                               const SearchBudget& budget) {
  const Roll& cloth = roll_at(job, roll);
  if (!is_estimated(cloth))
    return Problem{cloth.name, say("the length of this roll is no estimate"), say("plan it as it is")};
  const Result<LengthEstimate> estimate = estimate_of(cloth);
  if (!estimate) return estimate.problem();
  const Range search(job, roll, way, aim, budget);
  const Result<Plan> first = search.plan(with_length(job, roll, estimate->least));
  if (!first) return first.problem();
  const Result<Plan> likely = search.plan(with_length(job, roll, estimate->likely));
  if (!likely) return likely.problem();
  YieldRange range{roll, *estimate, *first, *likely, search.steps(*estimate),
                   search.further(*estimate, *first), {}, {}, false};
  range.yield = yields(range);
  range.proved = all_proved(range);
  if (range.steps.is_all) range.most_lost = most_lost(range);
  if (budget.is_cancelled())
    return Problem{cloth.name, say("planning was stopped before all lengths were tried"), say("plan again")};
  return range;
}

}  // namespace foldyard
