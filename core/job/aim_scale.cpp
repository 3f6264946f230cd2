#include "job/aim_scale.h"

#include <algorithm>

#include "measure/wide.h"

namespace foldyard {

namespace {

// Ticks of basic time that a worth buys.
Wide ticks_for(Worth worth, const Pace& pace) {
  return Wide(worth.parts()) * Duration::kTicksPerHour * 100 / pace.rate.parts() /
         (100 + pace.allowance_percent);
}

// How far to shift so that all panels of the largest lay, or of the roll, stay
// below 2^61.
int shift_for(const Job& job, const Roll& roll) {
  Wide most = 1;
  const std::int64_t cloth = std::max((roll.fabric.width * roll.length).square_units(),
                                      (roll.fabric.width * job.table.length * 2).square_units() *
                                          job.cutter.most_plies);
  for (const Panel& p : job.panels)
    most = std::max(most, ticks_for(p.worth, job.pace) * (cloth / p.area().square_units() + 1));
  int shift = 0;
  while (most >> shift >= Wide(1) << 61) ++shift;
  return shift;
}

AimScale worth_scale(const Job& job, const Roll& roll) {
  AimScale scale;
  scale.shapes = shapes_of(job.panels, roll.fabric);
  for (Shape& s : scale.shapes) s.gain = job.panels[s.panel].worth.parts();
  for (const Panel& p : job.panels) scale.lost.push_back(p.worth.parts());
  scale.per_length = scale.objective.cut(roll.fabric.width.units());
  return scale;
}

AimScale time_scale(const Job& job, const Roll& roll, const FoldWay& way) {
  const Pace& pace = job.pace;
  const int shift = shift_for(job, roll);
  AimScale scale;
  scale.shift = shift;
  scale.shapes = shapes_of(job.panels, roll.fabric);
  for (Shape& s : scale.shapes)
    s.gain = static_cast<std::int64_t>(
        (ticks_for(job.panels[s.panel].worth, pace) - pace.handle.ticks()) >> shift);
  for (const Panel& p : job.panels)
    scale.lost.push_back(static_cast<std::int64_t>(ticks_for(p.worth, pace) >> shift));
  scale.objective = {false, pace.mark.ticks() >> shift, pace.ms_per_metre >> shift};
  const Duration across = pace.cross_cut + travel_time(roll.fabric.width, pace.ms_per_metre);
  scale.per_length = (across + pace.fold * folds_made(way)).ticks() >> shift;
  scale.per_lay = pace.lift.ticks() >> shift;
  return scale;
}

}  // namespace

AimScale aim_scale(const Job& job, const Roll& roll, const FoldWay& way, Aim aim) {
  return aim == Aim::most_worth || job.pace.rate.parts() <= 0 ? worth_scale(job, roll)
                                                              : time_scale(job, roll, way);
}

AimScale priced(AimScale scale, const Prices& prices) {
  for (Shape& s : scale.shapes) {
    s.gain *= prices.scale;
    if (!prices.panel.empty()) s.gain -= prices.panel[s.panel];
  }
  return scale;
}

}  // namespace foldyard
