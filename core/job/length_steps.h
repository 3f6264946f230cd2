#pragma once

// At which lengths of a roll its best plan gets better.
//
// The best that a roll gives only rises with its length: what can be cut from a
// shorter one can be cut from a longer one. So it rises in steps, and the plan
// for a length says by its remnant down to which length it could still be cut.
// From the longest length downwards every plan either jumps to the next step or
// finds it: no length in between is left out.
//
// `better` is by the aim of the plans: worth, or what is left after the time.
//
// Example: one panel of 30 cm, no losses, from 50 to 100 cm: {50, 1 panel},
// {60, 2 panels}, {90, 3 panels}.

#include <functional>
#include <optional>
#include <vector>

#include "job/plan.h"

namespace foldyard {

// From this length on the plan can be cut, and none better up to the next step.
// plan: none only where nothing can be cut yet.
struct LengthStep {
  Length from;
  std::optional<Plan> plan;
  bool operator==(const LengthStep&) const = default;
};

// steps: by length; the first is at `least`, and each is better than the one before.
// is_all: no step between least and most is left out.
struct LengthSteps {
  std::vector<LengthStep> steps;
  bool is_all = true;
  bool operator==(const LengthSteps&) const = default;
};

// plan_at: the best plan for a roll of that length, none where none can be cut.
using PlanAt = std::function<std::optional<Plan>(Length)>;

// What a plan is worth by its aim; nothing for no plan.
Worth value_of(const std::optional<Plan>& plan);

// Lists at most `most_steps` steps above the first. Where there are more, or the
// first few foretell twice as many, it lists some that lie about evenly, each of
// them exact: the least length for its plan.
// REQUIRES least ≤ most, most_steps ≥ 1.
LengthSteps length_steps(const PlanAt& plan_at, Length least, Length most, int most_steps);

}  // namespace foldyard
