#pragma once

// A stopwatch: how long since it was started, or since the last lap.
//
// Its clock gives milliseconds from any fixed time on; tests give their own.
// Example: started at 1000, asked at 3500: 2.5 s; a lap then gives 2.5 s and begins anew.

#include <cstdint>
#include <functional>
#include <optional>

#include "measure/duration.h"

namespace foldyard {

class Stopwatch {
 public:
  using Clock = std::function<std::int64_t()>;

  // Without a clock: one of the system that is never set back.
  explicit Stopwatch(Clock clock = {});

  bool is_running() const { return since_.has_value(); }
  // 0 while it does not run.
  Duration elapsed() const;
  void start() { since_ = clock_(); }
  void stop() { since_.reset(); }
  // REQUIRES that it runs.
  Duration lap();

 private:
  Clock clock_;
  std::optional<std::int64_t> since_;
};

}  // namespace foldyard
