#include "batch/left_out.h"

namespace foldyard {

RollsIn without_rolls(const Job& job, const RollNames& left_out) {
  RollsIn in{job, {}};
  in.job.rolls.clear();
  for (std::size_t i = 0; i < job.rolls.size(); ++i) {
    if (left_out.contains(job.rolls[i].name)) continue;
    in.job.rolls.push_back(job.rolls[i]);
    in.places.push_back(static_cast<int>(i));
  }
  return in;
}

BatchPlan in_whole_job(BatchPlan plan, const std::vector<int>& places) {
  for (Plan& roll : plan.rolls) roll.roll = places[static_cast<std::size_t>(roll.roll)];
  return plan;
}

}  // namespace foldyard
