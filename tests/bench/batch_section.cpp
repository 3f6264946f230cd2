#include <algorithm>
#include <chrono>
#include <string>

#include "bench/apart.h"
#include "bench/markdown.h"
#include "bench/sections.h"
#include "bench/workshop_order.h"
#include "job/plan_batch.h"

namespace foldyard::bench {

namespace {

struct Case {
  int rolls;
  int goods;
  int pieces;
};

double seconds_since(std::chrono::steady_clock::time_point start) {
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

// filled and its bound, cost and its bound, lifts; nanoseconds to the first plan, to
// one within a hundredth of the last, and to the end.
Numbers measured(const Case& c, int rounds) {
  const Job job = workshop_order(c.rolls, c.goods, c.pieces);
  const auto start = std::chrono::steady_clock::now();
  std::vector<std::pair<double, BatchPlan>> found;
  BatchBudget budget;
  budget.rounds = rounds;
  budget.found = [&](const BatchPlan& plan) { found.push_back({seconds_since(start), plan}); };
  const Result<BatchPlan> plan = plan_batch(job, budget);
  if (!plan || found.empty()) return {0, 0, 0, 0, 0, 0, 0, 0};
  const auto near = std::find_if(found.begin(), found.end(), [&](const auto& f) {
    return f.second.filled == plan->filled && f.second.cost.parts() * 100 <= plan->cost.parts() * 101;
  });
  const auto ns = [](double seconds) { return static_cast<std::int64_t>(seconds * 1e9); };
  return {plan->filled.parts(), plan->filled_bound.parts(), plan->cost.parts(), plan->cost_bound.parts(), plan->lifts,
          ns(found.front().first), ns(near == found.end() ? seconds_since(start) : near->first), ns(seconds_since(start))};
}

void add_row(Table& table, const Case& c, int rounds) {
  const Outcome outcome = run_apart([&] { return measured(c, rounds); });
  const auto at = [&](std::size_t i) { return static_cast<double>(outcome.numbers[i]); };
  const auto time = [&](std::size_t i) { return milliseconds(at(i) * 1e-9); };
  table.add({std::to_string(c.rolls), std::to_string(c.goods), std::to_string(c.pieces),
             percent(at(0) / std::max(at(1), 1.0)), fixed((at(2) / std::max(at(3), 1.0) - 1) * 100, 1) + " %",
             std::to_string(outcome.numbers[4]), time(5), time(6), time(7), fixed(outcome.megabytes, 0)});
}

}  // namespace

std::string batch_section(bool quick) {
  Table table({"rolls", "goods", "pieces", "of the most that can be made", "cost above its bound", "lifts", "first plan, ms",
               "within 1 % of the last, ms", "ms", "MB at most"});
  for (const Case& c : {Case{6, 4, 60}, Case{16, 8, 240}, Case{40, 12, 600}})
    if (!quick || c.rolls <= 16) add_row(table, c, quick ? 40 : 200);
  return "## An order over many rolls\n\n"
         "Rolls of eight cloths in two widths, goods of one panel or of three, some lines from marked cloth, some\n"
         "with a least number of each cloth.\n\n" +
         table.text();
}

}  // namespace foldyard::bench
