#pragma once

// Duration: working time as a whole number of 1/320 µs, so that a pace in
// whole milliseconds per metre times a Length (1/320 mm) is exact:
// 1 ms/m × 1/320 mm = 1/320 µs. 1 s = 320 000 000 ticks; 1 h fits 8 million
// times into 64 bits.
//
// Example: travel_time(Length::mm(1500), 20000 ms/m) == Duration::seconds(30).

#include <compare>
#include <cstdint>

#include "measure/length.h"

namespace foldyard {

class Duration {
 public:
  static constexpr std::int64_t kTicksPerMs = 320'000;
  static constexpr std::int64_t kTicksPerHour = 3600 * 1000 * kTicksPerMs;
  constexpr Duration() = default;
  static constexpr Duration ticks(std::int64_t n) { return Duration(n); }
  static constexpr Duration ms(std::int64_t n) { return Duration(n * kTicksPerMs); }
  static constexpr Duration seconds(std::int64_t n) { return ms(n * 1000); }

  constexpr std::int64_t ticks() const { return ticks_; }
  constexpr double in_minutes() const { return static_cast<double>(ticks_) / (60e3 * kTicksPerMs); }

  constexpr auto operator<=>(const Duration&) const = default;
  constexpr Duration& operator+=(Duration b) { ticks_ += b.ticks_; return *this; }
  friend constexpr Duration operator+(Duration a, Duration b) { return Duration(a.ticks_ + b.ticks_); }
  friend constexpr Duration operator-(Duration a, Duration b) { return Duration(a.ticks_ - b.ticks_); }
  friend constexpr Duration operator*(Duration a, std::int64_t n) { return Duration(a.ticks_ * n); }

 private:
  constexpr explicit Duration(std::int64_t n) : ticks_(n) {}
  std::int64_t ticks_ = 0;
};

constexpr Duration travel_time(Length travel, std::int64_t ms_per_metre) {
  return Duration::ticks(travel.units() * ms_per_metre);
}

}  // namespace foldyard
