// What must hold between plans of a roll with flaws and of the same roll
// without them, or with them elsewhere.

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

#include "core/support/fold_ways.h"
#include "inspect/inspect_plan.h"
#include "job/plan_roll.h"
#include "laws/any_job.h"

namespace foldyard {
namespace {

using test::any_job;
using test::any_size;
using test::kOpen;
using test::kStep;

// Within the roll, of up to 20 × 20 steps.
rc::Gen<Flaw> any_flaw(const Roll& roll) {
  return rc::gen::exec([roll] {
    const int along = static_cast<int>(roll.length / kStep) - 1;
    const int across = static_cast<int>(roll.fabric.width / kStep) - 1;
    const Length from = *any_size(0, along), left = *any_size(0, across);
    return Flaw{{from, std::min(roll.length, from + *any_size(1, 20))},
                {left, std::min(roll.fabric.width, left + *any_size(1, 20))},
                "stain"};
  });
}

std::int64_t worth_of(const Job& job, const FoldWay& way) {
  const Result<Plan> plan = plan_roll(job, 0, way, Aim::most_worth);
  if (plan) RC_ASSERT(inspect_plan(job, *plan).empty());
  return plan ? plan->worth.parts() : 0;
}

RC_GTEST_PROP(Flaws, NeverGain, ()) {
  const Job clean = *any_job();
  Job flawed = clean;
  flawed.rolls[0].flaws = {*any_flaw(clean.rolls[0])};
  for (const FoldWay& way : all_ways(3)) RC_ASSERT(worth_of(flawed, way) <= worth_of(clean, way));
}

RC_GTEST_PROP(Flaws, CostNothingInASelvedge, ()) {
  Job clean = *any_job();
  Fabric& fabric = clean.rolls[0].fabric;
  fabric.selvedge = std::max(fabric.selvedge, kStep);
  Job flawed = clean;
  const Span along{Length(), clean.rolls[0].length};
  flawed.rolls[0].flaws = {{along, {Length(), fabric.selvedge}, "slub"},
                           {along, {fabric.width - fabric.selvedge, fabric.width}, "slub"}};
  for (const FoldWay& way : all_ways(3)) RC_ASSERT(worth_of(flawed, way) == worth_of(clean, way));
}

RC_GTEST_PROP(Flaws, CostTheSameMirroredOnOpenCloth, ()) {
  Job job = *any_job();
  const Flaw flaw = *any_flaw(job.rolls[0]);
  const Length width = job.rolls[0].fabric.width;
  job.rolls[0].flaws = {flaw};
  Job mirrored = job;
  mirrored.rolls[0].flaws[0].across = {width - flaw.across.to, width - flaw.across.from};
  RC_ASSERT(worth_of(job, kOpen) == worth_of(mirrored, kOpen));
}

RC_GTEST_PROP(Flaws, CostNoLessWhereOneMoreIsFound, ()) {
  Job job = *any_job();
  job.rolls[0].flaws = {*any_flaw(job.rolls[0])};
  const Result<Plan> one = plan_roll(job, 0, kOpen, Aim::most_worth);
  RC_PRE(static_cast<bool>(one));
  job.rolls[0].flaws.push_back(*any_flaw(job.rolls[0]));
  std::sort(job.rolls[0].flaws.begin(), job.rolls[0].flaws.end(),
            [](const Flaw& a, const Flaw& b) { return a.along.from < b.along.from; });
  RC_ASSERT(worth_of(job, kOpen) <= one->proof.bound.parts());
}

}  // namespace
}  // namespace foldyard
