#include <algorithm>
#include <atomic>
#include <chrono>
#include <functional>
#include <thread>

#include "bench/apart.h"
#include "bench/markdown.h"
#include "bench/sections.h"
#include "bench/workshop_job.h"
#include "cutting/limited_search.h"
#include "job/plan_roll.h"
#include "support/instance_problems.h"

namespace foldyard::bench {

namespace {

using Clock = std::chrono::steady_clock;
using Flag = std::atomic<bool>;

constexpr double kGoal = 0.1;
constexpr double kSpread = 3;  // seconds of a search at most that are tried
constexpr int kMoments = 24;

// What a stopped search answered: its value and its bound.
struct Answered {
  std::int64_t value = 0;
  std::int64_t bound = 0;
};

struct Search {
  std::string name;
  std::function<Answered(const Flag&)> run;
};

double seconds_since(Clock::time_point from) {
  return std::chrono::duration<double>(Clock::now() - from).count();
}

SearchBudget usual(const Flag& flag) {
  SearchBudget budget;
  budget.cancelled = &flag;
  return budget;
}

SearchBudget raised(const Flag& flag) {
  SearchBudget budget = usual(flag);
  budget.steps = 40'000'000'000;
  return budget;
}

Answered of(const Plan& plan) {
  const Worth value = plan.aim == Aim::most_worth ? plan.worth : plan.net;
  return {value.parts(), plan.proof.bound.parts()};
}

Search roll_search(const std::string& name, Job job) {
  return {name, [job = std::move(job)](const Flag& flag) -> Answered {
            const auto plan = plan_roll(job, 0, FoldWay{}, Aim::most_worth, raised(flag));
            return plan ? of(*plan) : Answered{};
          }};
}

Search comparison_search(const std::string& name, Job job, Aim aim) {
  return {name, [job = std::move(job), aim](const Flag& flag) -> Answered {
            const Comparison c = compare_ways(job, 0, aim, usual(flag));
            return c.ranking.empty() ? Answered{}
                                     : of(*c.ways[static_cast<std::size_t>(c.ranking.front())].plan);
          }};
}

Search limited_search(const std::string& name, bool turned) {
  const LimitedProblem problem = test::limited_problem(test::read_instance(name), turned);
  return {name + (turned ? ", turned" : "") + ", limited", [problem](const Flag& flag) -> Answered {
            const LimitedAnswer answer =
                best_limited(problem, {20 * LimitedBudget{}.steps, 5 * LimitedBudget{}.builds, &flag});
            return {answer.gain, answer.bound};
          }};
}

// Sizes and a table so that all sums share no more than 1/320 mm.
Job odd_sizes() {
  Job job = workshop_job(16);
  int odd = 1;
  for (Panel& p : job.panels) {
    p.across += Length::units(odd += 2);
    p.along += Length::units(odd += 4);
  }
  return job;
}

std::vector<Search> searches() {
  const test::Instance gcut13 = test::read_instance("gcut13");
  return {comparison_search("all ways, most worth", workshop_job(), Aim::most_worth),
          comparison_search("all ways, worth less time", workshop_job(), Aim::worth_less_time),
          comparison_search("all ways, 16 goods, most worth", workshop_job(16), Aim::most_worth),
          comparison_search("all ways, sizes that share no unit", odd_sizes(), Aim::most_worth),
          roll_search("gcut13", test::unlimited_job(gcut13, false)),
          roll_search("gcut13, turned", test::unlimited_job(gcut13, true)),
          limited_search("APT31", false),
          limited_search("APT31", true),
          limited_search("APT34", false),
          limited_search("Hchl8s", true)};
}

// How long the search lasts, as far as it is tried.
double lasts(const Search& search) {
  Flag flag = false;
  std::atomic<bool> over = false;
  std::thread stopper([&] {
    for (double waited = 0; waited < kSpread && !over; waited += 0.005)
      std::this_thread::sleep_for(std::chrono::milliseconds(5));
    flag = true;
  });
  const auto from = Clock::now();
  search.run(flag);
  const double seconds = seconds_since(from);
  over = true;
  stopper.join();
  return std::min(seconds, kSpread);
}

// The time to the answer in nanoseconds, by moment, and then whether each had
// a plan.
Numbers measured(const Search& search) {
  const double whole = lasts(search);
  Numbers times, plans;
  for (int i = 0; i < kMoments; ++i) {
    Flag flag = false;
    Clock::time_point stopped = Clock::now();
    std::thread stopper([&] {
      std::this_thread::sleep_for(std::chrono::duration<double>(whole * i / kMoments));
      stopped = Clock::now();
      flag = true;
    });
    const Answered answered = search.run(flag);
    const auto now = Clock::now();
    stopper.join();
    times.push_back(std::max<std::int64_t>(std::chrono::nanoseconds(now - stopped).count(), 0));
    plans.push_back(answered.value > 0 && answered.value <= answered.bound);
  }
  times.insert(times.end(), plans.begin(), plans.end());
  times.push_back(static_cast<std::int64_t>(whole * 1e9));
  return times;
}

}  // namespace

std::string cancel_section(bool quick) {
  Table table({"search", "longest answer to the goal", "within the goal", "with a plan and its bound",
               "longest, ms", "spread over, ms"});
  for (const Search& search : searches()) {
    if (quick && search.name.starts_with("gcut13")) continue;
    const Outcome outcome = run_apart([&] { return measured(search); });
    if (!outcome.finished) {
      table.add({search.name, "–", "–", "–", "–", "–"});
      continue;
    }
    const auto first = outcome.numbers.begin(), plans = first + kMoments;
    const auto in_time = std::count_if(first, plans, [](std::int64_t ns) {
      return static_cast<double>(ns) * 1e-9 <= kGoal;
    });
    const double longest = static_cast<double>(*std::max_element(first, plans)) * 1e-9;
    const auto of_all = [](std::int64_t n) { return std::to_string(n) + " of " + std::to_string(kMoments); };
    table.add({search.name, times(longest / kGoal), of_all(in_time),
               of_all(std::count(plans, plans + kMoments, 1)), milliseconds(longest),
               milliseconds(static_cast<double>(outcome.numbers.back()) * 1e-9)});
  }
  return "## Stopping a search\n\nEach search is stopped at " + std::to_string(kMoments) +
         " moments spread over its first 3 s; the goal is an answer\nwithin 100 ms. The comparisons have "
         "the usual budget, the published instances a raised one.\n\n" + table.text();
}

}  // namespace foldyard::bench
