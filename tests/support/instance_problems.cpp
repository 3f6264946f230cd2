#include "support/instance_problems.h"

#include <algorithm>

#include "job/defaults.h"

namespace foldyard::test {

LimitedProblem limited_problem(const Instance& instance, bool may_turn) {
  LimitedProblem problem;
  problem.width = Length::units(instance.width);
  problem.height = Length::units(instance.length);
  for (const InstancePanel& p : instance.panels) {
    LimitedShape shape;
    shape.across = Length::units(p.across);
    shape.along = Length::units(p.along);
    shape.panel = static_cast<int>(problem.limits.size());
    shape.gain = p.value;
    problem.shapes.push_back(shape);
    problem.limits.push_back(std::max<std::int64_t>(p.most, 1));
    if (!may_turn || p.across == p.along) continue;
    std::swap(shape.across, shape.along);
    shape.turned = true;
    problem.shapes.push_back(shape);
  }
  return problem;
}

Job unlimited_job(const Instance& instance, bool may_turn) {
  Job job = default_job();
  job.losses.squaring = job.losses.allowance = Length();
  job.table = {kLongest, kLongest, kLongest, true};
  const Fabric cloth{Length::mm(instance.width), Length(), Length::mm(1), Nap::none, ""};
  job.rolls = {{"cloth", cloth, Length::mm(instance.length)}};
  for (const InstancePanel& p : instance.panels)
    job.panels.push_back({std::to_string(job.panels.size()), Length::mm(p.across),
                          Length::mm(p.along), may_turn, true, Worth::parts(p.value)});
  return job;
}

}  // namespace foldyard::test
