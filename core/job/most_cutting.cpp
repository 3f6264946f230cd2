#include "job/most_cutting.h"

#include <algorithm>

#include "measure/wide.h"

namespace foldyard {

namespace {

struct Smallest {
  Area area;
  Length side;
};

Smallest smallest_of(const std::vector<Panel>& panels) {
  Smallest least{panels.front().area(), std::min(panels.front().across, panels.front().along)};
  for (const Panel& panel : panels) {
    least.area = std::min(least.area, panel.area());
    least.side = std::min({least.side, panel.across, panel.along});
  }
  return least;
}

Wide most_ticks(const Roll& roll, const Smallest& smallest, const Pace& pace) {
  const Wide cloth = (roll.fabric.width * roll.length).square_units();
  const Wide panels = cloth / smallest.area.square_units();
  const Wide lengths = roll.length.units() / smallest.side.units();
  const Wide travel = 4 * cloth / smallest.side.units() + lengths * roll.fabric.width.units();
  return pace.unroll.ticks() + panels * (pace.mark * 4 + pace.handle).ticks() +
         lengths * (pace.cross_cut + pace.fold * 12 + pace.lift).ticks() + travel * pace.ms_per_metre;
}

}  // namespace

std::int64_t most_cutting_hours(const Job& job) {
  const Smallest smallest = smallest_of(job.panels);
  Wide ticks = 0;
  for (const Roll& roll : job.rolls) ticks += most_ticks(roll, smallest, job.pace);
  const Wide whole = ticks * (100 + job.pace.allowance_percent);
  const Wide hour = Wide(100) * Duration::kTicksPerHour;
  return static_cast<std::int64_t>((whole + hour - 1) / hour);
}

}  // namespace foldyard
