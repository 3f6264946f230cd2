#include "inspect/checks.h"
#include "measure/index.h"

namespace foldyard::inspection {

int folds_by_hand(const FoldWay& way) {
  const int along = way.end_to_end ? 1 : 0;
  switch (way.kind) {
    case FoldKind::open:
      return along;
    case FoldKind::selvedge_to_selvedge:
    case FoldKind::off_centre:
      return 1 + along;
    case FoldKind::both_edges_in:
    case FoldKind::quarters:
      return 2 + along;
    case FoldKind::fan:
      return way.legs - 1 + along;
  }
  return along;
}

namespace {

// Wide enough for a time in ticks times a rate.
__extension__ using Wide = __int128;

// Everything that is counted over the roll, from the patterns up.
struct Sums {
  std::vector<std::int64_t> yield;
  Worth worth;
  Area used;
  std::int64_t panels = 0;  // cut, lost ones included
  std::int64_t cuts = 0;
  std::int64_t folds = 0;
  Length travel;
};

void add_panels(Sums& sums, const Job& job, const Pattern& pattern, std::int64_t times) {
  for (const PlacedPanel& placed : pattern.panels) {
    const auto index = static_cast<std::size_t>(placed.panel);
    sums.yield[index] += times;
    sums.worth += job.panels[index].worth * times;
    sums.used += placed.flat.area() * times;
    sums.panels += times;
  }
}

// Lost panels have been cut all the same.
void take_off_lost(Sums& sums, const Job& job, const Plan& plan) {
  for (const LostPanel& lost : find_lost_panels(job, plan)) {
    const LengthOnRoll& length = plan.lengths[ix(lost.length)];
    const Pattern& pattern = pattern_of(plan, length);
    const PlacedPanel& placed = pattern.panels[ix(lost.panel)];
    const auto index = static_cast<std::size_t>(placed.panel);
    --sums.yield[index];
    sums.worth = sums.worth - job.panels[index].worth;
    sums.used -= placed.flat.area();
  }
}

Sums add_up(const Job& job, const Plan& plan) {
  Sums sums;
  sums.yield.resize(job.panels.size());
  for (const Lay& lay : plan.lays) {
    const Pattern& pattern = pattern_of(plan, lay);
    add_panels(sums, job, pattern, lay.lengths);
    sums.cuts += static_cast<std::int64_t>(pattern.cuts.size());
    sums.travel += pattern.travel;
    sums.folds += std::int64_t{folds_by_hand(pattern.fold.way)} * lay.lengths;
  }
  take_off_lost(sums, job, plan);
  return sums;
}

Duration time_of_plan(const Job& job, const Plan& plan, const Sums& sums) {
  const Pace& pace = job.pace;
  const auto lengths = static_cast<std::int64_t>(plan.lengths.size());
  const auto lifts = static_cast<std::int64_t>(plan.lays.size());
  const Length width = job.rolls[ix(plan.roll)].fabric.width;
  const Duration basic = pace.unroll + pace.cross_cut * lengths + pace.fold * sums.folds +
                         pace.lift * lifts + pace.mark * sums.cuts + pace.handle * sums.panels +
                         travel_time(sums.travel + width * lengths, pace.ms_per_metre);
  const Wide with_allowance = Wide{basic.ticks()} * (100 + pace.allowance_percent) / 100;
  return Duration::ticks(static_cast<std::int64_t>(with_allowance));
}

Worth cost_of_time(Duration time, const Pace& pace) {
  const std::int64_t hour = Duration::seconds(3600).ticks();
  return Worth::parts(static_cast<std::int64_t>(Wide{time.ticks()} * pace.rate.parts() / hour));
}

void inspect_pattern_worths(const Job& job, const Plan& plan, Findings& findings) {
  for (std::size_t i = 0; i < plan.patterns.size(); ++i) {
    Worth worth;
    for (const PlacedPanel& placed : plan.patterns[i].panels) {
      worth += job.panels[ix(placed.panel)].worth;
    }
    findings.agree(plan.patterns[i].worth, worth, "Pattern ", i + 1, ": its worth");
  }
}

void inspect_yield(const Job& job, const Plan& plan, const Sums& sums, Findings& findings) {
  if (!findings.agree(plan.yield.size(), job.panels.size(), "The number of panels in the yield"))
    return;
  for (std::size_t i = 0; i < sums.yield.size(); ++i) {
    findings.agree(plan.yield[i], sums.yield[i], "The yield of ", job.panels[i].name);
  }
}

void inspect_cloth_and_cuts(const Job& job, const Plan& plan, const Sums& sums,
                            Findings& findings) {
  const Roll& roll = job.rolls[ix(plan.roll)];
  findings.agree(plan.used, sums.used, "The area used");
  findings.agree(plan.cloth, roll.fabric.width * roll.length, "The area of the roll");
  findings.agree(plan.cuts, sums.cuts, "The number of cuts");
  findings.agree(plan.cross_cuts, static_cast<std::int64_t>(plan.lengths.size()),
                 "The number of cross-cuts");
  findings.agree(plan.travel, sums.travel, "The travel of the cutter");
}

void inspect_worth(const Job& job, const Plan& plan, const Sums& sums, Findings& findings) {
  const Duration time = time_of_plan(job, plan, sums);
  const Worth net = sums.worth - cost_of_time(time, job.pace);
  findings.agree(plan.worth, sums.worth, "The worth");
  findings.agree(plan.time, time, "The time");
  findings.agree(plan.net, net, "The net worth");
  const bool by_net = plan.aim == Aim::worth_less_time;
  findings.require((by_net ? net : sums.worth) <= plan.proof.bound, "The bound of ",
                   plan.proof.bound, " lies below the ", by_net ? "net worth" : "worth",
                   " reached");
}

}  // namespace

void inspect_sums(const Job& job, const Plan& plan, Findings& findings) {
  const Sums sums = add_up(job, plan);
  inspect_pattern_worths(job, plan, findings);
  inspect_yield(job, plan, sums, findings);
  inspect_cloth_and_cuts(job, plan, sums, findings);
  inspect_worth(job, plan, sums, findings);
}

}  // namespace foldyard::inspection
