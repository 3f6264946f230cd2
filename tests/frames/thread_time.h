#pragma once

// Processor time of the thread that asks, in seconds: what other programs take of
// the machine meanwhile does not count.

#include <ctime>

namespace foldyard::frames {

inline double thread_seconds() {
  timespec now{};
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
  return static_cast<double>(now.tv_sec) + static_cast<double>(now.tv_nsec) * 1e-9;
}

}  // namespace foldyard::frames
