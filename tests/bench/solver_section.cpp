#include "bench/apart.h"
#include "bench/markdown.h"
#include "bench/plate_model.h"
#include "bench/sections.h"
#include "cutting/limited_search.h"
#include "oracle/roll_model.h"
#include "oracle/searched_worth.h"
#include "support/instance_problems.h"

namespace foldyard::bench {

namespace {

std::string milliseconds_or_more(const Outcome& outcome) {
  return (outcome.finished ? "" : "not in ") + milliseconds(outcome.seconds);
}

std::string ratio(const Outcome& solver, double search_seconds) {
  const std::string least = solver.finished ? "" : "more than ";
  return least + times(solver.seconds / search_seconds);
}

// The same small jobs for both, seeds 1, 2, 3 …
struct Rolls {
  FoldWay way;
  int jobs = 0;
  Numbers by_search() const {
    return worths([&](const test::QuantaJob& job) { return test::searched_worth(job, way); });
  }
  Numbers by_solver() const {
    return worths([&](const test::QuantaJob& job) { return test::roll_worth(job, way); });
  }

 private:
  template <class Find>
  Numbers worths(Find find) const {
    Numbers all;
    for (unsigned seed = 1; seed <= static_cast<unsigned>(jobs); ++seed)
      all.push_back(find(test::throw_job(seed, way)));
    return all;
  }
};

void add_rolls(Table& table, const FoldWay& way, int jobs) {
  const Rolls rolls{way, jobs};
  Numbers found;
  const double search = spent_on([&] { found = rolls.by_search(); }).processor;
  const Outcome solver = run_apart([&] { return rolls.by_solver(); });
  int equal = 0;
  for (std::size_t i = 0; i < solver.numbers.size(); ++i) equal += solver.numbers[i] == found[i];
  table.add({way_name(way), ratio(solver, search),
             std::to_string(equal) + " of " + std::to_string(jobs), milliseconds(search),
             milliseconds_or_more(solver)});
}

std::string rolls_table(bool quick) {
  Table table({"fold way", "solver's time to ours", "equal", "ours, ms", "solver, ms"});
  for (const FoldWay& way : all_ways(5)) add_rolls(table, way, quick ? 2 : 10);
  return "Small random rolls, planned under one fold way with fold positions:\n\n" + table.text();
}

void add_instance(Table& table, const std::string& name, bool turned, int most_seconds) {
  const test::Instance instance = test::read_instance(name);
  const LimitedProblem problem = test::limited_problem(instance, turned);
  LimitedAnswer answer;
  const double search = spent_on([&] { answer = best_limited(problem); }, 3).processor;
  const Outcome solver =
      run_apart([&]() -> Numbers { return {worth_by_solver(instance, turned)}; }, most_seconds);
  const bool equal = solver.finished && solver.numbers[0] == answer.gain;
  table.add({name + (turned ? ", turned" : ""), ratio(solver, search),
             solver.finished ? (equal ? "equal" : std::to_string(solver.numbers[0])) : "–",
             milliseconds(search), milliseconds_or_more(solver)});
}

std::string instances_table(bool quick) {
  Table table({"instance", "solver's time to ours", "worth", "ours, ms", "solver, ms"});
  for (const char* name : {"cgcut1", "CHL5", "OF1", "OF2", "cgcut2"})
    for (const bool turned : {false, true}) add_instance(table, name, turned, quick ? 5 : 30);
  return "Published instances with limited copies, as plates and cuts:\n\n" + table.text();
}

}  // namespace

std::string solver_section(bool quick) {
  return "## Beside a general solver\n\nGLPK solves a whole-number model of the same problem.\n\n" +
         rolls_table(quick) + instances_table(quick);
}

}  // namespace foldyard::bench
