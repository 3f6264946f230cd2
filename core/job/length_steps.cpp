#include "job/length_steps.h"

#include <algorithm>

#include "measure/wide.h"

namespace foldyard {

namespace {

constexpr Length kUnit = Length::units(1);
constexpr int kFewSteps = 6;  // too few to foresee how many there are

class Descent {
 public:
  Descent(const PlanAt& plan_at, Length least, Length most, int most_steps)
      : plan_at_(plan_at), least_(least), most_(most), most_steps_(most_steps) {}

  // stride: how far below a step the next is looked for; at one unit none is left
  // out. False where there are more steps than may be listed.
  bool run(Length stride) {
    stride_ = stride;
    found_.clear();
    for (LengthStep at = step_at(most_); at.from > least_;) {
      LengthStep below = step_at(at.from - kUnit);
      if (value_of(below.plan) < value_of(at.plan)) {
        found_.push_back(at);
        if (is_too_many(at.from)) return false;
        if (stride > kUnit) below = step_at(std::max(least_, at.from - stride));
      }
      at = std::move(below);
    }
    return true;
  }

  std::vector<LengthStep> upwards(LengthStep first) && {
    found_.push_back(std::move(first));
    std::reverse(found_.begin(), found_.end());
    return std::move(found_);
  }

 private:
  // There are more already, or will be twice as many at this rate.
  bool is_too_many(Length at) const {
    const int found = static_cast<int>(found_.size());
    if (found > most_steps_) return true;
    if (stride_ > kUnit || found < kFewSteps) return false;
    return Wide((most_ - least_).units()) * found > Wide(2 * most_steps_) * (most_ - at).units();
  }

  LengthStep step_at(Length length) const {
    std::optional<Plan> plan = plan_at_(length);
    const Length from = plan ? length - plan->remnant.size() : least_;
    return {std::max(least_, from), std::move(plan)};
  }

  const PlanAt& plan_at_;
  Length least_;
  Length most_;
  int most_steps_;
  Length stride_;
  std::vector<LengthStep> found_;
};

}  // namespace

Worth value_of(const std::optional<Plan>& plan) {
  if (!plan) return Worth();
  return plan->aim == Aim::most_worth ? plan->worth : plan->net;
}

LengthSteps length_steps(const PlanAt& plan_at, Length least, Length most, int most_steps) {
  LengthSteps result;
  Descent descent(plan_at, least, most, most_steps);
  result.is_all = descent.run(kUnit);
  if (!result.is_all) descent.run((most - least) / most_steps + kUnit);
  result.steps = std::move(descent).upwards({least, plan_at(least)});
  return result;
}

}  // namespace foldyard
