#include <algorithm>
#include <optional>

#include "bench/apart.h"
#include "bench/markdown.h"
#include "bench/sections.h"
#include "cutting/limited_search.h"
#include "support/instance_problems.h"

namespace foldyard::bench {

namespace {

struct Run {
  test::Instance instance;
  bool turned = false;
  std::optional<std::int64_t> published;
  Outcome outcome;

  std::int64_t gain() const { return outcome.numbers[0]; }
  std::int64_t bound() const { return outcome.numbers[1]; }
  bool proved() const { return outcome.finished && outcome.numbers[2] == 1; }
  bool agrees() const { return published && proved() && gain() == *published; }
};

Numbers search(const LimitedProblem& problem, bool quick) {
  LimitedBudget budget;
  if (!quick) budget.steps *= 20;
  if (!quick) budget.builds *= 5;
  const LimitedAnswer answer = best_limited(problem, budget);
  return {answer.gain, answer.bound, answer.proved, answer.steps};
}

void add_runs(const std::string& name, std::vector<Run>& runs) {
  const test::Instance instance = test::read_instance(name);
  if (!instance.is_limited() && !instance.single) return;
  runs.push_back(
      {instance, false, instance.is_limited() ? instance.straight : instance.single, {}});
  runs.push_back({instance, true, instance.is_limited() ? instance.turned : std::nullopt, {}});
}

std::vector<Run> all_runs(bool quick) {
  std::vector<Run> runs;
  for (const std::string& name : test::instance_names()) add_runs(name, runs);
  for (Run& run : runs) {
    const LimitedProblem problem = test::limited_problem(run.instance, run.turned);
    run.outcome = run_apart([&] { return search(problem, quick); });
  }
  return runs;
}

std::string agreement(const Run& run) {
  if (!run.published) return "none";
  return run.agrees() ? "equal" : std::to_string(*run.published);
}

double median_seconds(const std::vector<Run>& runs) {
  std::vector<double> seconds;
  for (const Run& run : runs) seconds.push_back(run.outcome.seconds);
  std::nth_element(seconds.begin(), seconds.begin() + std::ssize(seconds) / 2, seconds.end());
  return std::max(seconds[seconds.size() / 2], 0.001);
}

std::vector<std::string> row_of(const Run& run, double median) {
  const std::string name = run.instance.name + (run.instance.is_limited() ? "" : ", one of each") +
                           (run.turned ? ", turned" : "");
  if (!run.outcome.finished)
    return {name, "–", "–", "–", "not finished", "–", "–", milliseconds(run.outcome.seconds), "–"};
  const double gap =
      static_cast<double>(run.bound() - run.gain()) / static_cast<double>(run.bound());
  return {name,
          times(run.outcome.seconds / median),
          std::to_string(run.gain()),
          agreement(run),
          run.proved() ? "proved" : "gap " + fixed(gap * 100, 2) + " %",
          std::to_string(run.bound()),
          fixed(static_cast<double>(run.outcome.numbers[3]) / 1e6, 1),
          milliseconds(run.outcome.seconds),
          fixed(run.outcome.megabytes, 0)};
}

template <class Holds>
std::string count(const std::vector<Run>& runs, Holds holds) {
  return std::to_string(std::count_if(runs.begin(), runs.end(), holds));
}

std::string summary(const std::vector<Run>& runs) {
  const auto within = [](double seconds) {
    return [seconds](const Run& r) { return r.proved() && r.outcome.seconds < seconds; };
  };
  return "Of " + std::to_string(runs.size()) + " runs " +
         count(runs, [](const Run& r) { return r.proved(); }) + " are proved, " +
         count(runs, within(1)) + " within a second, " + count(runs, within(10)) +
         " within ten. For " + count(runs, [](const Run& r) { return r.published.has_value(); }) +
         " the best value is known from outside; " +
         count(runs, [](const Run& r) { return r.agrees(); }) + " agree.\n\n";
}

}  // namespace

std::string limited_section(bool quick) {
  const std::vector<Run> runs = all_runs(quick);
  const double median = median_seconds(runs);
  Table table({"instance", "of the median time", "gain", "known best", "state", "bound",
               "million steps", "ms", "MB at most"});
  for (const Run& run : runs) table.add(row_of(run, median));
  return "## Limited copies\n\n" + summary(runs) + table.text();
}

}  // namespace foldyard::bench
