#include <algorithm>
#include <string>

#include "batch/tight_entries.h"
#include "bench/apart.h"
#include "bench/markdown.h"
#include "bench/sections.h"
#include "bench/workshop_job.h"
#include "cutting/strip_search.h"
#include "inspect/inspect_plan.h"
#include "job/aim_scale.h"
#include "job/plan_roll.h"

namespace foldyard::bench {

namespace {

constexpr double kFrame = 0.016;

// The searches of a comparison one by one, as the planner runs them.
class Pieces {
 public:
  Pieces(const Job& job, Aim aim, const Comparison& comparison)
      : job_(job), roll_(job.rolls[0]), aim_(aim), comparison_(comparison),
        capacity_(roll_.length - job.losses.squaring * 2) {}

  double tables = 0, strips = 0, series = 0, inspection = 0;

  void measure() {
    const AimScale scale = aim_scale(job_, roll_, FoldWay{}, aim_);
    TableSet set(scale.shapes, scale.objective, limits());
    const auto run_all = [&] { for_all_ways([&](const FoldWay& way) { run_strips(set, way); }); };
    const double with_tables = spent_on(run_all).processor;
    strips = spent_on(run_all).processor;  // the tables are there
    tables = with_tables - strips;
    for_all_ways([&](const FoldWay& way) { run_series(set, way); });
    inspection = spent_on([&] {
                   for (const WayResult& result : comparison_.ways)
                     if (result.plan) inspect_plan(job_, *result.plan);
                 }).processor;
  }

 private:
  TableLimits limits() const {
    TableLimits limits;
    limits.widest = roll_.fabric.usable_width();
    limits.tallest = std::min(job_.table.length, capacity_ - job_.losses.allowance);
    limits.fold_trim = job_.losses.fold_trim;
    return limits;
  }

  template <class Work>
  void for_all_ways(Work work) const {
    for (const WayResult& result : comparison_.ways)
      if (result.plan) work(result.way);
  }

  std::int64_t most_copies(const FoldWay& way) const {
    return lengths_per_lift(job_.cutter, roll_.fabric.thickness, most_plies(way));
  }

  Layouts layouts(const TableSet& set, const FoldWay& way) const {
    const Length depth = deepest_fold(job_.table);
    Layouts all = layouts_of(way, roll_.fabric, {set.fold_trim(), set.least_flap(), depth});
    std::erase_if(all, [&](const auto& l) { return l->is_fixed() && l->folded({}, {}) > depth; });
    return all;
  }

  void run_strips(TableSet& set, const FoldWay& way) const {
    const std::int64_t most = set.aim().worth_first ? 1 : most_copies(way);
    const Layouts all = layouts(set, way);
    for (std::int64_t copies = 1; copies <= most; ++copies)
      StripSearch(set, all, way.end_to_end, copies);
  }

  std::vector<SeriesEntry> entries(TableSet& set, const FoldWay& way) const {
    const AimScale scale = aim_scale(job_, roll_, way, aim_);
    const Layouts all = layouts(set, way);
    std::vector<SeriesEntry> entries;
    for (std::int64_t copies = 1; copies <= most_copies(way); ++copies) {
      const bool worth_first = set.aim().worth_first;
      const StripSearch search(set, all, way.end_to_end, worth_first ? 1 : copies);
      for (const int v : set.lengths(way.end_to_end)) {
        const Cell& cell = search.cells()[static_cast<std::size_t>(v)];
        const Length length = set.along(way.end_to_end)[v] * (way.end_to_end ? 2 : 1);
        const Length size = (length + job_.losses.allowance) * copies;
        if (cell.gain <= 0 || size > capacity_) continue;
        const std::int64_t more = scale.per_length * copies + scale.per_lay;
        entries.push_back(worth_first ? SeriesEntry{size, cell.gain * copies, cell.cost + more}
                                      : SeriesEntry{size, cell.gain - more, 0});
      }
    }
    std::erase_if(entries, [](const SeriesEntry& e) { return e.gain <= 0; });
    return entries;
  }

  void run_series(TableSet& set, const FoldWay& way) {
    const std::vector<SeriesEntry> all = entries(set, way);
    series += spent_on([&] {
                std::vector<SeriesEntry> tight;
                for (const int i : tight_entries(all, capacity_))
                  tight.push_back(all[static_cast<std::size_t>(i)]);
                best_series(tight, capacity_, SearchBudget{}.steps);
              }).processor;
  }

  const Job& job_;
  const Roll& roll_;
  Aim aim_;
  const Comparison& comparison_;
  Length capacity_;
};

Numbers measured(Aim aim, int runs) {
  const Job job = workshop_job();
  Comparison comparison;
  const Spent whole = spent_on([&] { comparison = compare_ways(job, 0, aim); }, runs);
  Pieces pieces(job, aim, comparison);
  pieces.measure();
  Numbers numbers;
  for (const double seconds : {whole.elapsed, whole.processor, pieces.tables, pieces.strips,
                               pieces.series, pieces.inspection})
    numbers.push_back(static_cast<std::int64_t>(seconds * 1e9));
  std::int64_t proved = 0;
  for (const WayResult& result : comparison.ways)
    proved += result.plan && result.plan->proof.proved;
  numbers.insert(numbers.end(), {std::ssize(comparison.ranking), proved});
  return numbers;
}

void add_row(Table& table, const std::string& name, const Outcome& outcome) {
  const auto seconds = [&](std::size_t i) {
    return static_cast<double>(outcome.numbers[i]) * 1e-9;
  };
  const double elapsed = seconds(0), processor = seconds(1);
  double rest = processor;
  std::vector<std::string> row{name, times(elapsed / kFrame), fixed(processor / elapsed, 1)};
  for (std::size_t i = 2; i <= 5; ++i) {
    row.push_back(percent(seconds(i) / processor));
    rest -= seconds(i);
  }
  row.push_back(percent(std::max(rest, 0.0) / processor));
  row.push_back(std::to_string(outcome.numbers[7]) + " of " + std::to_string(outcome.numbers[6]));
  row.push_back(milliseconds(elapsed));
  row.push_back(fixed(outcome.megabytes, 0));
  table.add(row);
}

}  // namespace

std::string comparison_section(bool quick) {
  Table table({"aim", "of a frame (16 ms)", "processors busy", "tables", "strips", "series",
               "inspection", "the rest", "proved", "ms", "MB at most"});
  const int runs = quick ? 2 : 7;
  add_row(table, "most worth", run_apart([&] { return measured(Aim::most_worth, runs); }));
  add_row(table, "worth less time",
          run_apart([&] { return measured(Aim::worth_less_time, runs); }));
  return "## Comparing all fold ways of one roll\n\n"
         "A roll of 50 m, 150 cm wide, eight goods in steps of 5 mm, a table of 3 m. Shares are "
         "of\n"
         "processor time, each search run apart; the rest is writing the plans, and what is\n"
         "saved or lost by running together.\n\n" +
         table.text();
}

}  // namespace foldyard::bench
