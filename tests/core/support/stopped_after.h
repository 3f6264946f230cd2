#pragma once

// A search that is stopped from another thread, at moments spread over the time that it
// takes as a whole.

#include <atomic>
#include <chrono>
#include <thread>

#include "job/plan_roll.h"

namespace foldyard::test {

// search: called with the budget to use, of so many steps; expect: with what it gave,
// stopped, and what it gives as a whole.
template <class Search, class Expect>
void stop_at_moments(int moments, std::int64_t steps, Search search, Expect expect) {
  using Clock = std::chrono::steady_clock;
  SearchBudget budget;
  budget.steps = steps;
  const auto begun = Clock::now();
  const auto whole = search(budget);
  const auto takes = Clock::now() - begun;
  for (int i = 0; i < moments; ++i) {
    std::atomic<bool> stopped = false;
    budget.cancelled = &stopped;
    std::thread stopper([&] {
      std::this_thread::sleep_for(takes * i / moments);
      stopped = true;
    });
    const auto found = search(budget);
    stopper.join();
    expect(found, whole);
  }
}

}  // namespace foldyard::test
