#include "goods/sewing_time.h"

#include <algorithm>

#include "measure/wide.h"

namespace foldyard {

bool is_assumed(const SewingOrder& order) {
  return std::any_of(order.steps.begin(), order.steps.end(), [](const SewingStep& step) { return is_assumed(step); });
}

Duration basic_time(const SewingStep& step) {
  if (is_assumed(step)) return step.usual;
  std::vector<Duration> times = step.timed;
  std::sort(times.begin(), times.end());
  const Duration upper = times[times.size() / 2];
  if (times.size() % 2 == 1) return upper;
  return Duration::ticks((times[times.size() / 2 - 1].ticks() + upper.ticks()) / 2);
}

Duration basic_time(const SewingOrder& order) {
  Duration time;
  for (const SewingStep& step : order.steps) time += basic_time(step);
  return time;
}

Duration with_allowance(Duration basic, int percent) {
  return Duration::ticks(static_cast<std::int64_t>(Wide{basic.ticks()} * (100 + percent) / 100));
}

}  // namespace foldyard
