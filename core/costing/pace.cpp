#include "costing/pace.h"

#include "measure/wide.h"

namespace foldyard {
namespace {

Duration basic_time(const Work& work, const Pace& pace) {
  return pace.unroll + pace.cross_cut * work.lengths + pace.fold * work.folds +
         pace.lift * work.lifts + pace.mark * work.cuts + pace.handle * work.panels +
         travel_time(work.cut_travel + work.cross_cut_travel, pace.ms_per_metre);
}

std::int64_t floor_divide(Wide a, std::int64_t b) {
  const Wide down = a / b - (a % b < 0 ? 1 : 0);
  return static_cast<std::int64_t>(down);
}

}  // namespace

Duration time_of(const Work& work, const Pace& pace) {
  const Duration basic = basic_time(work, pace);
  return basic + Duration::ticks(floor_divide(Wide{basic.ticks()} * pace.allowance_percent, 100));
}

Worth cost_of(Duration time, const Pace& pace) {
  return Worth::parts(floor_divide(Wide{time.ticks()} * pace.rate.parts(), Duration::kTicksPerHour));
}

}  // namespace foldyard
