#include "oracle/searched_worth.h"

#include <algorithm>

#include "batch/series.h"
#include "cutting/strip_search.h"
#include "job/plan_roll.h"

namespace foldyard::test {

namespace {

Length room_of(const Job& job) { return job.rolls[0].length - job.losses.squaring * 2; }

TableSet tables_of(const Job& job) {
  std::vector<Shape> shapes = shapes_of(job.panels, job.rolls[0].fabric);
  for (Shape& s : shapes) s.gain = job.panels[static_cast<std::size_t>(s.panel)].worth.parts();
  return TableSet(shapes, {},
                  {job.rolls[0].fabric.usable_width(),
                   std::min(job.table.length, room_of(job) - job.losses.allowance),
                   job.losses.fold_trim});
}

}  // namespace

std::int64_t searched_worth(const QuantaJob& small, const FoldWay& way) {
  const Job job = job_of(small);
  TableSet tables = tables_of(job);
  const Length depth = deepest_fold(job.table);
  Layouts layouts = layouts_of(way, job.rolls[0].fabric,
                               {tables.fold_trim(), tables.least_flap(), depth});
  std::erase_if(layouts, [&](const auto& l) { return l->is_fixed() && l->folded({}, {}) > depth; });
  const auto choices = strip_choices(tables, layouts, way.end_to_end, 1);
  std::vector<SeriesEntry> entries;
  for (std::size_t v = 0; v < choices.size(); ++v) {
    const Length length = tables.along(way.end_to_end)[static_cast<int>(v)] * (way.end_to_end ? 2 : 1);
    if (choices[v].layout)
      entries.push_back({length + job.losses.allowance, choices[v].cell.gain, 0});
  }
  return best_series(entries, room_of(job), SearchBudget().steps).gain;
}

std::int64_t planned_worth(const QuantaJob& small, const FoldWay& way) {
  const auto plan = plan_roll(job_of(small), 0, way, Aim::most_worth);
  return plan ? plan->worth.parts() : 0;
}

bool gives_by_the_way(const FoldWay& way) { return way.legs > 2 || way.kind == FoldKind::off_centre; }

}  // namespace foldyard::test
