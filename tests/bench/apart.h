#pragma once

// Measured work. Processor time adds up what every processor did; elapsed time
// is what a person waits. What a machine is worth in itself cancels out in
// ratios.

#include <cstdint>
#include <functional>
#include <vector>

namespace foldyard::bench {

struct Spent {
  double processor = 0;  // seconds
  double elapsed = 0;
};

// The least of each in so many runs.
Spent spent_on(const std::function<void()>& work, int runs = 1);

using Numbers = std::vector<std::int64_t>;

// Of work done in a process of its own: so its peak of memory is its own, and
// it can be stopped. finished: false where it took more than its seconds.
struct Outcome {
  bool finished = false;
  Numbers numbers;  // what the work gave
  double seconds = 0;  // of processor time
  double megabytes = 0;
};

Outcome run_apart(const std::function<Numbers()>& work, int most_seconds = 600);

}  // namespace foldyard::bench
