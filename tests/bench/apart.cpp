#include "bench/apart.h"

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <ctime>
#include <limits>
#include <stdexcept>

namespace foldyard::bench {

namespace {

double seconds_by(clockid_t clock) {
  timespec now{};
  clock_gettime(clock, &now);
  return static_cast<double>(now.tv_sec) + static_cast<double>(now.tv_nsec) * 1e-9;
}

}  // namespace

Spent spent_on(const std::function<void()>& work, int runs) {
  constexpr double kLong = std::numeric_limits<double>::infinity();
  Spent least{kLong, kLong};
  for (int run = 0; run < runs; ++run) {
    const double processor = seconds_by(CLOCK_PROCESS_CPUTIME_ID);
    const double elapsed = seconds_by(CLOCK_MONOTONIC);
    work();
    least.processor = std::min(least.processor, seconds_by(CLOCK_PROCESS_CPUTIME_ID) - processor);
    least.elapsed = std::min(least.elapsed, seconds_by(CLOCK_MONOTONIC) - elapsed);
  }
  return least;
}

namespace {

double seconds(const timeval& time) {
  return static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_usec) * 1e-6;
}

[[noreturn]] void work_and_leave(const std::function<Numbers()>& work, int most_seconds,
                                 int pipe_end) {
  const rlimit limit{static_cast<rlim_t>(most_seconds), static_cast<rlim_t>(most_seconds + 1)};
  setrlimit(RLIMIT_CPU, &limit);
  bool written = false;
  try {
    const Numbers numbers = work();
    const auto bytes = static_cast<ssize_t>(numbers.size() * sizeof(std::int64_t));
    written = write(pipe_end, numbers.data(), static_cast<std::size_t>(bytes)) == bytes;
  } catch (const std::exception&) {
  }
  _exit(written ? 0 : 1);
}

Numbers read_all(int pipe_end) {
  Numbers numbers;
  std::int64_t number = 0;
  while (read(pipe_end, &number, sizeof number) == sizeof number) numbers.push_back(number);
  return numbers;
}

}  // namespace

Outcome run_apart(const std::function<Numbers()>& work, int most_seconds) {
  int ends[2];
  if (pipe(ends) != 0) throw std::runtime_error("no pipe to a process");
  const pid_t child = fork();
  if (child < 0) throw std::runtime_error("no process to measure in");
  if (child == 0) work_and_leave(work, most_seconds, ends[1]);
  close(ends[1]);
  Outcome outcome;
  outcome.numbers = read_all(ends[0]);
  close(ends[0]);
  int status = 0;
  rusage usage{};
  while (wait4(child, &status, 0, &usage) < 0 && errno == EINTR) continue;
  outcome.finished = WIFEXITED(status) && WEXITSTATUS(status) == 0;
  outcome.seconds = seconds(usage.ru_utime) + seconds(usage.ru_stime);
  outcome.megabytes = static_cast<double>(usage.ru_maxrss) / 1024;  // Linux: in KiB
  return outcome;
}

}  // namespace foldyard::bench
