#include <algorithm>
#include <functional>

#include "bench/apart.h"
#include "bench/markdown.h"
#include "bench/sections.h"
#include "bench/workshop_job.h"
#include "job/plan_roll.h"

namespace foldyard::bench {

namespace {

struct Growth {
  const char* name;
  Job job;
};

Job changed(const std::function<void(Job&)>& change) {
  Job job = workshop_job();
  change(job);
  return job;
}

std::vector<Growth> growths() {
  return {{"roll ten times as long",
           changed([](Job& j) { j.rolls[0].length = j.rolls[0].length * 10; })},
          {"twice as many goods", workshop_job(16)},
          {"cloth twice as wide, and the table twice as deep", changed([](Job& j) {
             j.rolls[0].fabric.width = j.rolls[0].fabric.width * 2;
             j.table.depth = j.table.depth * 2;
             j.table.reach = j.table.reach * 2;
           })},
          {"table twice as long", changed([](Job& j) { j.table.length = j.table.length * 2; })},
          {"twice as many plies under the cutter", changed([](Job& j) {
             j.cutter.height = j.cutter.height * 2;
             j.cutter.most_plies *= 2;
           })}};
}

struct Cost {
  double seconds = 0;
  double megabytes = 0;
  std::int64_t plans = 0;
  std::int64_t proved = 0;
};

Cost cost_of(const Job& job, Aim aim, int runs) {
  const Outcome outcome = run_apart([&]() -> Numbers {
    Comparison comparison;
    const double seconds =
        spent_on([&] { comparison = compare_ways(job, 0, aim); }, runs).processor;
    const std::int64_t proved = std::count_if(
        comparison.ways.begin(), comparison.ways.end(),
        [](const WayResult& result) { return result.plan && result.plan->proof.proved; });
    return {static_cast<std::int64_t>(seconds * 1e9), std::ssize(comparison.ranking), proved};
  });
  if (!outcome.finished) return {0, outcome.megabytes, 0, 0};
  return {static_cast<double>(outcome.numbers[0]) * 1e-9, outcome.megabytes, outcome.numbers[1],
          outcome.numbers[2]};
}

std::string in_words(const Cost& cost) {
  return std::to_string(cost.proved) + " of " + std::to_string(cost.plans);
}

}  // namespace

std::string growth_section(bool quick) {
  const int runs = quick ? 1 : 2;
  const Job base = workshop_job();
  const Cost worth = cost_of(base, Aim::most_worth, runs);
  const Cost net = cost_of(base, Aim::worth_less_time, runs);
  Table table({"what grows", "most worth: time", "memory", "proved", "worth less time: time",
               "memory", "proved"});
  for (const Growth& growth : growths()) {
    const Cost w = cost_of(growth.job, Aim::most_worth, runs);
    const Cost n = cost_of(growth.job, Aim::worth_less_time, runs);
    table.add({growth.name, times(w.seconds / worth.seconds), times(w.megabytes / worth.megabytes),
               in_words(w), times(n.seconds / net.seconds), times(n.megabytes / net.megabytes),
               in_words(n)});
  }
  return "## Growth\n\nThe same comparison with one thing changed, as ratios to it as it is;\nof "
         "processor time.\n\n" +
         table.text();
}

}  // namespace foldyard::bench
