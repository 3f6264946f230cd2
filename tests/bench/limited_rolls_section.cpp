#include <algorithm>
#include <string>

#include "bench/apart.h"
#include "bench/markdown.h"
#include "bench/sections.h"
#include "bench/workshop_job.h"
#include "core/support/fold_ways.h"
#include "job/plan_roll.h"

namespace foldyard::bench {

namespace {

// A roll of so many metres of which of the first goods no more than `most` are
// wanted; of the other half as many as fit.
Job limited_job(int metres, std::int64_t most) {
  Job job = workshop_job();
  job.rolls[0].length = Length::mm(1000) * metres;
  for (std::size_t p = 0; p < job.panels.size() / 2; ++p) job.panels[p].at_most = most;
  return job;
}

struct Case {
  int metres;
  std::int64_t most;
  FoldWay way;
};

Numbers measured(const Case& c) {
  const Job job = limited_job(c.metres, c.most);
  Numbers numbers;
  const Spent spent = spent_on([&] {
    const auto plan = plan_roll(job, 0, c.way, Aim::most_worth);
    if (plan) numbers = {plan->worth.parts(), plan->proof.bound.parts(), plan->proof.proved};
  });
  if (numbers.empty()) numbers = {0, 0, 0};
  numbers.push_back(static_cast<std::int64_t>(spent.elapsed * 1e9));
  return numbers;
}

void add_row(Table& table, const Case& c) {
  const Outcome outcome = run_apart([&] { return measured(c); });
  const auto worth = static_cast<double>(outcome.numbers[0]), bound = static_cast<double>(outcome.numbers[1]);
  table.add({std::to_string(c.metres) + " m, at most " + std::to_string(c.most), way_name(c.way),
             outcome.numbers[2] ? "proved" : percent(bound / std::max(worth, 1.0) - 1),
             milliseconds(static_cast<double>(outcome.numbers[3]) * 1e-9), fixed(outcome.megabytes, 0)});
}

}  // namespace

std::string limited_rolls_section(bool quick) {
  Table table({"roll and limit", "way", "gap", "ms", "MB at most"});
  for (const int metres : {5, 20, 50})
    for (const std::int64_t most : {2, 10, 40})
      for (const FoldWay& way : {test::kOpen, test::kHalf})
        if (!quick || metres == 5) add_row(table, {metres, most, way});
  return "## Limited rolls\n\n"
         "The same eight goods; of four of them no more than so many are wanted. The gap is what the "
         "bound\nleaves above the plan's worth.\n\n" +
         table.text();
}

}  // namespace foldyard::bench
