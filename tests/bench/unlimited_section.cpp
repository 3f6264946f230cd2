#include "bench/apart.h"
#include "bench/markdown.h"
#include "bench/sections.h"
#include "job/plan_roll.h"
#include "support/instance_problems.h"

namespace foldyard::bench {

namespace {

constexpr double kGoal = 0.3;  // for the whole set both ways
constexpr const char* kLargest = "gcut13";

// The default budget is what a person waits for at each edit.
SearchBudget budget(bool quick) {
  return quick ? SearchBudget{} : SearchBudget{std::int64_t{40'000'000'000}};
}

Outcome plan_apart(const test::Instance& instance, bool turned, bool quick) {
  return run_apart([&]() -> Numbers {
    const auto plan = plan_roll(test::unlimited_job(instance, turned), 0, FoldWay{},
                                Aim::most_worth, budget(quick));
    if (!plan) return {};
    return {plan->worth.parts(), plan->proof.bound.parts(), plan->proof.proved};
  });
}

std::string state(const Outcome& outcome, std::int64_t published) {
  if (!outcome.finished || outcome.numbers.empty()) return "not finished";
  const std::string agreement = outcome.numbers[0] == published ? "equal" : "not equal";
  return agreement + (outcome.numbers[2] == 1 ? ", proved" : ", not proved");
}

std::string share(double seconds, double all) { return percent(seconds / all); }

}  // namespace

std::string unlimited_section(bool quick) {
  struct Row {
    std::string name;
    std::int64_t published;
    Outcome outcome;
  };
  std::vector<Row> rows;
  double all = 0, largest = 0;
  for (const std::string& name : test::instance_names()) {
    const test::Instance instance = test::read_instance(name);
    if (instance.is_limited()) continue;
    for (const bool turned : {false, true}) {
      rows.push_back({name + (turned ? ", turned" : ""),
                      turned ? *instance.turned : *instance.straight,
                      plan_apart(instance, turned, quick)});
      all += rows.back().outcome.seconds;
      if (name == kLargest) largest += rows.back().outcome.seconds;
    }
  }
  Table table({"instance", "of the set's time", "published best", "state", "ms", "MB at most"});
  for (const Row& row : rows)
    table.add({row.name, share(row.outcome.seconds, all), std::to_string(row.published),
               state(row.outcome, row.published), milliseconds(row.outcome.seconds),
               fixed(row.outcome.megabytes, 0)});
  return "## Any number of copies\n\nEach as a roll, through the same door as any job, with cuts "
         "and travel made least too.\nThe whole set both ways takes " +
         times(all / kGoal) + " of the goal of 0.3 s, without " + kLargest + " " +
         times((all - largest) / kGoal) + ".\n\n" + table.text();
}

}  // namespace foldyard::bench
