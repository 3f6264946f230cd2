#include "inspect/batch_checks.h"
#include "measure/index.h"

namespace foldyard::inspection {

namespace {

const Fabric& fabric_of(const Job& job, const BatchPlan& plan, const StackedLength& length) {
  return job.rolls[ix(plan.rolls[ix(length.roll)].roll)].fabric;
}

bool is_named(const BatchPlan& plan, const StackedLength& length) {
  return 0 <= length.roll && length.roll < std::ssize(plan.rolls) && 0 <= length.length &&
         length.length < std::ssize(plan.rolls[ix(length.roll)].lengths);
}

// Cut by one course of the cutter.
bool are_equal(const Pattern& a, const Pattern& b) {
  return a.length == b.length && a.fold == b.fold && a.tree == b.tree && a.cuts == b.cuts;
}

bool all_named_once(const BatchPlan& plan, Findings& findings) {
  bool all = true;
  std::set<std::pair<int, int>> met;
  std::size_t lengths = 0;
  for (const Plan& roll : plan.rolls) lengths += roll.lengths.size();
  for (std::size_t i = 0; i < plan.lays.size(); ++i) {
    all &= findings.require(!plan.lays[i].lengths.empty(), "Lay ", i + 1, ": it holds no length");
    for (const StackedLength& length : plan.lays[i].lengths) {
      all &= findings.require(is_named(plan, length), "Lay ", i + 1, ": it holds a length that is not cut");
      all &= findings.require(met.insert({length.roll, length.length}).second, "Lay ", i + 1,
                              ": it holds a length that lies in a lay already");
    }
  }
  return findings.agree(met.size(), lengths, "The number of lengths in all lays") && all;
}

void inspect_stack(const Job& job, const BatchPlan& plan, const BatchLay& lay, const std::string& name,
                   Findings& findings) {
  const Pattern& first = pattern_of(plan, lay.lengths[0]);
  const Fabric& cloth = fabric_of(job, plan, lay.lengths[0]);
  Length height;
  std::int64_t plies = 0;
  for (const StackedLength& length : lay.lengths) {
    const Fabric& fabric = fabric_of(job, plan, length);
    findings.require(are_equal(first, pattern_of(plan, length)), name, "its lengths are not cut by one pattern");
    findings.require(fabric.width == cloth.width && fabric.selvedge == cloth.selvedge, name,
                     "its cloths differ in width or selvedge");
    height += fabric.thickness * pattern_of(plan, length).plies;
    plies += pattern_of(plan, length).plies;
  }
  findings.require(height <= job.cutter.height, name, "it is ", height, " high, but the cutter takes ",
                   job.cutter.height);
  findings.require(plies <= job.cutter.most_plies, name, plies, " plies lie over each other, but the cutter takes ",
                   job.cutter.most_plies);
}

}  // namespace

bool inspect_lays(const Job& job, const BatchPlan& plan, Findings& findings) {
  if (!all_named_once(plan, findings)) return false;
  for (std::size_t i = 0; i < plan.lays.size(); ++i) {
    inspect_stack(job, plan, plan.lays[i], "Lay " + std::to_string(i + 1) + ": ", findings);
  }
  return true;
}

}  // namespace foldyard::inspection
