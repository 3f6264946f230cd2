#include "batch/pin_edits.h"

#include <algorithm>
#include <map>

#include "job/kept_length.h"
#include "measure/index.h"

namespace foldyard {
namespace {

const Plan& plan_at(const BatchPlan& plan, int roll) { return plan.rolls[ix(roll)]; }

std::int64_t alike_in(const Plan& plan, const KeptLength& kept) {
  return std::count_if(plan.lengths.begin(), plan.lengths.end(),
                       [&](const LengthOnRoll& length) { return is_cut_as(kept, pattern_of(plan, length)); });
}

// Of the roll's lengths in the lay, which are all cut alike: one of them, and how many.
std::map<int, std::pair<int, std::int64_t>> by_roll(const BatchLay& lay) {
  std::map<int, std::pair<int, std::int64_t>> found;
  for (const StackedLength& length : lay.lengths) {
    auto& [first, count] = found[length.roll];
    first = length.length;
    ++count;
  }
  return found;
}

KeptLength* same_in(Job& job, const KeptLength& kept) {
  const auto found = std::find_if(job.order.kept.begin(), job.order.kept.end(), [&](KeptLength each) {
    each.count = kept.count;
    return each == kept;
  });
  return found == job.order.kept.end() ? nullptr : &*found;
}

}  // namespace

Job with_in_batch(Job job, int roll, InBatch how) {
  job.rolls[ix(roll)].in_batch = how;
  return job;
}

bool can_keep(const Job& job, const BatchPlan& plan, int lay) { return with_lay_kept(job, plan, lay) != job; }

Job with_lay_kept(Job job, const BatchPlan& plan, int lay) {
  for (const auto& [roll, lengths] : by_roll(plan.lays[ix(lay)])) {
    const Plan& of_roll = plan_at(plan, roll);
    KeptLength kept = kept_length(job, of_roll, lengths.first, lengths.second);
    if (KeptLength* before = same_in(job, kept)) before->count = std::min(before->count + kept.count, std::max(before->count, alike_in(of_roll, kept)));
    else job.order.kept.push_back(std::move(kept));
  }
  return job;
}

}  // namespace foldyard
