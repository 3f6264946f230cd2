#include "job/limited_bound.h"

#include <algorithm>

#include "measure/wide.h"

namespace foldyard {

namespace {

// No plan has more panels.
std::int64_t most_panels(const LimitedCase& c) {
  Area least = c.job.panels.front().area();
  Wide wanted = 0;
  for (std::size_t p = 0; p < c.most.size(); ++p) {
    least = std::min(least, c.job.panels[p].area());
    wanted += c.most[p];
  }
  const Area cloth = c.cloth().fabric.usable_width() * c.capacity;
  return static_cast<std::int64_t>(std::min<Wide>(wanted, cloth.square_units() / least.square_units()));
}

}  // namespace

Worth bound_in_worth(const LimitedCase& c, std::int64_t bound) {
  if (c.worth_first) return Worth::parts(bound / c.scale);
  const Pace& pace = c.job.pace;
  const std::int64_t hour = Duration::seconds(3600).ticks();
  const Wide net = ((Wide(bound) + most_panels(c)) << c.costs.shift) - pace.unroll.ticks();
  const Wide in_parts = net * pace.rate.parts() * (100 + pace.allowance_percent) / (Wide(hour) * 100);
  return Worth::parts(static_cast<std::int64_t>(in_parts + pace.rate.parts() / hour + 2));
}

}  // namespace foldyard
