#include "batch/stopwatch.h"

#include <chrono>

namespace foldyard {
namespace {

std::int64_t system_ms() {
  return std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

}  // namespace

Stopwatch::Stopwatch(Clock clock) : clock_(clock ? std::move(clock) : Clock(system_ms)) {}

Duration Stopwatch::elapsed() const { return since_ ? Duration::ms(clock_() - *since_) : Duration(); }

Duration Stopwatch::lap() {
  const std::int64_t now = clock_();
  const Duration taken = Duration::ms(now - *since_);
  since_ = now;
  return taken;
}

}  // namespace foldyard
