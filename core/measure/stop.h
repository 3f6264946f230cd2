#pragma once

// A flag that another thread sets to end a search; null: never set. It orders nothing else:
// what the other thread wrote before need not be seen with it.
//
// Example: const std::atomic<bool> stopped = true; is_set(&stopped) is true, is_set(nullptr) false.

#include <atomic>

namespace foldyard {

using Stop = const std::atomic<bool>*;

inline bool is_set(Stop stop) { return stop && stop->load(std::memory_order_relaxed); }

}  // namespace foldyard
