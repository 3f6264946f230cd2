#include "job/sum_up.h"

#include "job/cloth_to_cut.h"
#include "job/lost_panels.h"
#include "job/roll_of.h"
#include "measure/index.h"

namespace foldyard {

namespace {

Work work_of(const Plan& plan, const Roll& roll) {
  Work work;
  work.lengths = static_cast<std::int64_t>(plan.lengths.size());
  for (const Lay& lay : plan.lays)
    work.folds += std::int64_t{lay.lengths} * folds_made(pattern_of(plan, lay).fold.way);
  work.lifts = static_cast<std::int64_t>(plan.lays.size());
  work.cuts = plan.cuts;
  for (std::int64_t n : plan.yield) work.panels += n;
  work.panels += std::ssize(plan.lost);
  work.cut_travel = plan.travel;
  work.cross_cut_travel = roll.fabric.width * work.lengths;
  return work;
}

void add_pattern(const Pattern& pattern, int lengths, Plan& plan) {
  for (const PlacedPanel& p : pattern.panels) {
    plan.yield[p.panel] += lengths;
    plan.used += p.flat.area() * lengths;
  }
  plan.worth += pattern.worth * lengths;
}

void take_off_lost(const Job& job, Plan& plan) {
  for (const LostPanel& lost : plan.lost) {
    const Lay& lay = plan.lays[plan.lengths[lost.length].lay];
    const PlacedPanel& placed = plan.patterns[lay.pattern].panels[lost.panel];
    --plan.yield[placed.panel];
    plan.used -= placed.flat.area();
    plan.worth = plan.worth - job.panels[placed.panel].worth;
  }
}

}  // namespace

void lay_along(const Job& job, Plan& plan) {
  Length at = cloth_to_cut(roll_of(job, plan), job.losses).from;
  for (int i = 0; i < static_cast<int>(plan.lays.size()); ++i) {
    const Length size = plan.patterns[plan.lays[i].pattern].length + job.losses.allowance;
    for (int n = 0; n < plan.lays[i].lengths; ++n, at += size)
      plan.lengths.push_back({i, {at, at + size}});
  }
  set_remnant(job, at, plan);
}

void set_remnant(const Job& job, Length last, Plan& plan) {
  const Roll& roll = job.rolls[plan.roll];
  plan.remnant = {last, cloth_to_cut(roll, job.losses).to};
  plan.remnant_kept = !plan.remnant.is_empty() && roll.fabric.width >= job.losses.keep_across &&
                      plan.remnant.size() >= job.losses.keep_along;
}

void sum_up(const Job& job, Plan& plan) {
  const Roll& roll = job.rolls[plan.roll];
  plan.yield.assign(job.panels.size(), 0);
  for (const Lay& lay : plan.lays) {
    const Pattern& pattern = plan.patterns[lay.pattern];
    add_pattern(pattern, lay.lengths, plan);
    plan.cuts += static_cast<std::int64_t>(pattern.cuts.size());
    plan.travel += pattern.travel;
  }
  plan.lost = lost_panels(job, plan);
  take_off_lost(job, plan);
  plan.cloth = roll.fabric.width * roll.length;
  plan.cross_cuts = static_cast<std::int64_t>(plan.lengths.size());
  plan.time = time_of(work_of(plan, roll), job.pace);
  plan.net = plan.worth - cost_of(plan.time, job.pace);
}

}  // namespace foldyard
