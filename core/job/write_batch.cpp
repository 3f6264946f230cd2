#include "job/write_batch.h"

#include <algorithm>
#include <numeric>

#include "goods/sewing_time.h"
#include "job/area_bound.h"
#include "job/roll_of.h"
#include "job/shortfalls.h"
#include "job/sum_up.h"
#include "lay/stack.h"
#include "measure/index.h"
#include "measure/wide.h"

namespace foldyard {

namespace {

// A roll's lengths in their order along it.
std::vector<StateLength> along_roll(const RollState& state, const BatchLengths& lengths) {
  std::vector<StateLength> along = state.lengths;
  std::stable_sort(along.begin(), along.end(), [&](const StateLength& a, const StateLength& b) {
    if (a.stretch != b.stretch) return a.stretch < b.stretch;
    const Length size_a = lengths.pool()[ix(a.length)].size, size_b = lengths.pool()[ix(b.length)].size;
    return size_a != size_b ? size_a > size_b : a.length < b.length;
  });
  return along;
}

class RollWriter {
 public:
  RollWriter(const Job& job, const BatchCase& c, const BatchLengths& lengths, int roll, const RollState& state)
      : job_(job), of_(c.order.rolls[ix(roll)]), lengths_(lengths), along_(along_roll(state, lengths)) {
    plan_.roll = c.rolls[ix(roll)];
    plan_.way = lengths.way(along_.front().length);
  }

  Plan write() {
    add_lays();
    lay_in_stretches();
    sum_up(job_, plan_);
    plan_.proof = {std::max(area_bound(job_, roll()), plan_.worth), false,
                   say("cut for an order; the bound counts every bit of usable cloth of this roll")};
    return std::move(plan_);
  }

 private:
  const Roll& roll() const { return job_.rolls[ix(plan_.roll)]; }

  // Lays of as many lengths as go under the cutter, in the order in which their
  // first length comes.
  void add_lays() {
    std::vector<std::pair<int, int>> open;  // length in the pool, its lay that has room
    for (const StateLength& l : along_) {
      const int plies = most_plies(lengths_.way(l.length));
      const std::int64_t most = std::max<std::int64_t>(1, lengths_per_lift(job_.cutter, roll().fabric.thickness, plies));
      auto found = std::find_if(open.begin(), open.end(), [&](const auto& o) { return o.first == l.length; });
      if (found == open.end()) {
        plan_.patterns.push_back(lengths_.pattern(l.length));
        plan_.lays.push_back({static_cast<int>(plan_.patterns.size()) - 1, 0});
        open.push_back({l.length, static_cast<int>(plan_.lays.size()) - 1});
        found = open.end() - 1;
      } else if (plan_.lays[ix(found->second)].lengths >= most) {
        plan_.lays.push_back({plan_.lays[ix(found->second)].pattern, 0});
        found->second = static_cast<int>(plan_.lays.size()) - 1;
      }
      ++plan_.lays[ix(found->second)].lengths;
      lay_of_.push_back(found->second);
    }
  }

  void lay_in_stretches() {
    Length at = of_.stretches.front().from;
    Length end = of_.squaring;
    int stretch = 0;
    for (std::size_t i = 0; i < along_.size(); ++i) {
      if (i == 0 || along_[i].stretch != stretch) at = of_.stretches[ix(stretch = along_[i].stretch)].from;
      if (at > end) plan_.cut_out.push_back({end, at});
      end = at + lengths_.pool()[ix(along_[i].length)].size;
      plan_.lengths.push_back({lay_of_[i], {at, end}});
      at = end;
    }
    set_remnant(job_, end, plan_);
  }

  const Job& job_;
  const CaseRoll& of_;
  const BatchLengths& lengths_;
  std::vector<StateLength> along_;
  std::vector<int> lay_of_;
  Plan plan_;
};

// All lengths that may lie in one lay.
struct EqualLengths {
  const Pattern* pattern;
  Length width, selvedge;
  std::vector<StackedLength> lengths;
  std::vector<Length> heights;
};

std::vector<EqualLengths> equal_lengths(const Job& job, const std::vector<Plan>& rolls) {
  std::vector<EqualLengths> all;
  for (int r = 0; r < std::ssize(rolls); ++r)
    for (int i = 0; i < std::ssize(rolls[ix(r)].lengths); ++i) {
      const Plan& plan = rolls[ix(r)];
      const Pattern& pattern = plan.patterns[ix(plan.lays[ix(plan.lengths[ix(i)].lay)].pattern)];
      const Fabric& fabric = roll_of(job, plan).fabric;
      auto found = std::find_if(all.begin(), all.end(), [&](const EqualLengths& e) {
        return e.width == fabric.width && e.selvedge == fabric.selvedge && *e.pattern == pattern;
      });
      if (found == all.end()) found = all.insert(all.end(), {&pattern, fabric.width, fabric.selvedge, {}, {}});
      found->lengths.push_back({r, i});
      found->heights.push_back(fabric.thickness * pattern.plies);
    }
  return all;
}

// Adds the lays, and their cuts to the work.
void add_lays(const Job& job, BatchPlan& plan, Work& work) {
  for (const EqualLengths& equal : equal_lengths(job, plan.rolls)) {
    const Stacks stacks = fewest_stacks(equal.heights, equal.pattern->plies, job.cutter);
    for (const std::vector<int>& stack : stacks.stacks) {
      BatchLay lay;
      for (const int i : stack) lay.lengths.push_back(equal.lengths[ix(i)]);
      plan.lays.push_back(std::move(lay));
      work.cuts += std::ssize(equal.pattern->cuts);
      work.cut_travel += equal.pattern->travel;
    }
  }
}

void sum_time(const Job& job, BatchPlan& plan, Work work) {
  for (const Plan& roll : plan.rolls) {
    work.lengths += std::ssize(roll.lengths);
    for (const LengthOnRoll& length : roll.lengths)
      work.folds += folds_made(roll.patterns[ix(roll.lays[ix(length.lay)].pattern)].fold.way);
    work.panels += std::accumulate(roll.yield.begin(), roll.yield.end(), std::int64_t{0}) + std::ssize(roll.lost);
    work.cross_cut_travel += job.rolls[ix(roll.roll)].fabric.width * std::ssize(roll.lengths);
  }
  work.lifts = std::ssize(plan.lays);
  Pace basic = job.pace;
  basic.allowance_percent = 0;
  const Duration unrolls = job.pace.unroll * (std::ssize(plan.rolls) - 1);
  plan.lifts = work.lifts;
  plan.time = with_allowance(time_of(work, basic) + unrolls, job.pace.allowance_percent);
}

}  // namespace

BatchPlan write_batch(const Job& job, const BatchCase& c, const BatchLengths& lengths, const OrderState& state) {
  BatchPlan plan;
  for (int r = 0; r < std::ssize(state.rolls); ++r)
    if (!state.rolls[ix(r)].lengths.empty())
      plan.rolls.push_back(RollWriter(job, c, lengths, r, state.rolls[ix(r)]).write());
  for (int l = 0; l < std::ssize(state.pieces); ++l)
    for (int cloth = 0; cloth < std::ssize(c.order.cloths); ++cloth)
      if (const std::int64_t n = state.pieces[ix(l)][ix(cloth)]; n > 0)
        plan.made.push_back({l, c.order.cloths[ix(cloth)], n});
  Work work;
  add_lays(job, plan, work);
  if (!plan.rolls.empty()) sum_time(job, plan, work);
  plan.shortfalls = shortfalls_of(c, lengths, state);
  const OrderScore score = score_of(c.order, state, lengths.pool());
  plan.filled = Worth::parts(score.filled);
  plan.cost = Worth::parts(score.cost);
  return plan;
}

}  // namespace foldyard
