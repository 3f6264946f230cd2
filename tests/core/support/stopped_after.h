#pragma once

// A search that is stopped from another thread, at moments spread over the time that it
// takes as a whole.

#include <atomic>
#include <chrono>
#include <thread>

namespace foldyard::test {

// search: called with the flag that stops it; expect: with what it gave, stopped, and what it
// gives as a whole.
template <class Search, class Expect>
void stop_at_moments(int moments, Search search, Expect expect) {
  using Clock = std::chrono::steady_clock;
  std::atomic<bool> stopped = false;
  const auto begun = Clock::now();
  const auto whole = search(&stopped);
  const auto takes = Clock::now() - begun;
  for (int i = 0; i < moments; ++i) {
    stopped = false;
    std::thread stopper([&] {
      std::this_thread::sleep_for(takes * i / moments);
      stopped = true;
    });
    const auto found = search(&stopped);
    stopper.join();
    expect(found, whole);
  }
}

}  // namespace foldyard::test
