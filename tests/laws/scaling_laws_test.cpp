// A job with all its lengths times a factor has the same plan, its lengths times
// that factor.

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "job/plan_roll.h"
#include "laws/any_job.h"

namespace foldyard {
namespace {

Job scaled(Job job, int factor) {
  for (Roll& roll : job.rolls)
    for (Length* l : {&roll.fabric.width, &roll.fabric.selvedge, &roll.fabric.thickness, &roll.length})
      *l = *l * factor;
  for (Panel& p : job.panels)
    for (Length* l : {&p.across, &p.along}) *l = *l * factor;
  for (Length* l : {&job.table.length, &job.table.depth, &job.table.reach, &job.cutter.height,
                    &job.losses.squaring, &job.losses.allowance, &job.losses.fold_trim,
                    &job.losses.keep_across, &job.losses.keep_along})
    *l = *l * factor;
  return job;
}

Span scaled(Span span, int factor) { return {span.from * factor, span.to * factor}; }

Rect scaled(Rect rect, int factor) {
  return {scaled(rect.across, factor), scaled(rect.along, factor)};
}

void expect_scaled_pattern(const Pattern& a, const Pattern& b, int factor) {
  RC_ASSERT(a.length * factor == b.length);
  RC_ASSERT(a.travel * factor == b.travel);
  RC_ASSERT(a.worth == b.worth);
  RC_ASSERT(a.fold.lines.size() == b.fold.lines.size());
  for (std::size_t i = 0; i < a.fold.lines.size(); ++i)
    RC_ASSERT(a.fold.lines[i] * factor == b.fold.lines[i]);
  RC_ASSERT(a.cuts.size() == b.cuts.size());
  for (std::size_t i = 0; i < a.cuts.size(); ++i) {
    RC_ASSERT(a.cuts[i].direction == b.cuts[i].direction);
    RC_ASSERT(a.cuts[i].at * factor == b.cuts[i].at);
    RC_ASSERT(scaled(a.cuts[i].over, factor) == b.cuts[i].over);
  }
  RC_ASSERT(a.panels.size() == b.panels.size());
  for (std::size_t i = 0; i < a.panels.size(); ++i) {
    RC_ASSERT(a.panels[i].panel == b.panels[i].panel);
    RC_ASSERT(scaled(a.panels[i].flat, factor) == b.panels[i].flat);
  }
}

void expect_scaled_plan(const Plan& a, const Plan& b, int factor) {
  RC_ASSERT(a.worth == b.worth);
  RC_ASSERT(a.yield == b.yield);
  RC_ASSERT(a.cuts == b.cuts);
  RC_ASSERT(a.cross_cuts == b.cross_cuts);
  RC_ASSERT(a.lays == b.lays);
  RC_ASSERT(scaled(a.remnant, factor) == b.remnant);
  RC_ASSERT(a.patterns.size() == b.patterns.size());
  for (std::size_t i = 0; i < a.patterns.size(); ++i)
    expect_scaled_pattern(a.patterns[i], b.patterns[i], factor);
}

RC_GTEST_PROP(Scaling, ScalesThePlan, ()) {
  const Job job = *test::any_job();
  const int factor = *rc::gen::inRange(2, 8);
  const Comparison one = compare_ways(job, 0, Aim::most_worth);
  const Comparison large = compare_ways(scaled(job, factor), 0, Aim::most_worth);
  for (std::size_t i = 0; i < one.ways.size(); ++i) {
    RC_LOG() << way_key(one.ways[i].way) << "\n";
    RC_ASSERT(one.ways[i].plan.has_value() == large.ways[i].plan.has_value());
    if (one.ways[i].plan) expect_scaled_plan(*one.ways[i].plan, *large.ways[i].plan, factor);
  }
}

}  // namespace
}  // namespace foldyard
