#include "job/kept_length.h"

#include <algorithm>

#include "cutting/fold_layout.h"
#include "cutting/tree_builder.h"
#include "fold/fold_map.h"
#include "inspect/inspect_plan.h"
#include "job/area_bound.h"
#include "job/check_fold.h"
#include "job/cloth_to_cut.h"
#include "job/roll_of.h"
#include "job/sum_up.h"
#include "job/write_pattern.h"
#include "measure/index.h"

namespace foldyard {

namespace {

void add_steps(const CutTree& tree, int index, std::vector<KeptStep>& steps) {
  const CutNode& node = tree.nodes[ix(index)];
  steps.push_back({node.kind, node.direction, node.at, node.panel, node.turned});
  if (node.kind != NodeKind::cut) return;
  add_steps(tree, node.first, steps);
  add_steps(tree, node.second, steps);
}

std::vector<KeptStep> steps_of(const CutTree& tree) {
  std::vector<KeptStep> steps;
  add_steps(tree, 0, steps);
  for (KeptStep& step : steps) {
    if (step.kind != NodeKind::cut) step.at = Length();
    if (step.kind != NodeKind::cut) step.direction = Direction::along;
    if (step.kind != NodeKind::take) step.panel = -1, step.turned = false;
  }
  return steps;
}

class Rebuild {
 public:
  Rebuild(const std::vector<KeptStep>& steps, Rect whole) : steps_(steps) { builder_.add(whole); }

  // False where the steps do not part their cloth.
  bool run() { return part(0) && next_ == steps_.size(); }
  CutTree take_tree() { return builder_.take_tree(); }

 private:
  bool part(int node) {
    if (next_ == steps_.size()) return false;
    const KeptStep& step = steps_[next_++];
    if (step.kind == NodeKind::take) builder_.take(node, step.panel, step.turned);
    if (step.kind != NodeKind::cut) return true;
    const Rect rect = builder_.rect(node);
    const Span over = step.direction == Direction::along ? rect.across : rect.along;
    if (step.at <= over.from || step.at >= over.to) return false;
    const auto [first, second] = builder_.cut(node, step.direction, step.at);
    return part(first) && part(second);
  }

  const std::vector<KeptStep>& steps_;
  std::size_t next_ = 0;
  TreeBuilder builder_;
};

Problem of_kept(const KeptLength& kept, const Words& why) {
  return {"order.kept", say("the length kept on \"%1\" can no longer be cut so: %2", kept.roll, why), say("let it go and plan again")};
}

// Every rectangle that is taken gives a panel.
bool gives_all(const Pattern& pattern) {
  return std::all_of(pattern.tree.nodes.begin(), pattern.tree.nodes.end(), [&](const CutNode& node) {
    return node.kind != NodeKind::take || std::any_of(pattern.panels.begin(), pattern.panels.end(), [&](const PlacedPanel& p) {
             return p.folded == node.rect && p.panel == node.panel;
           });
  });
}

// What the inspector finds in a plan of this one length, on cloth without flaws.
std::string first_finding(Job job, int roll, const Pattern& pattern) {
  job.rolls[ix(roll)].flaws.clear();
  for (Panel& panel : job.panels) panel.at_most.reset();
  Plan plan;
  plan.roll = roll;
  plan.way = pattern.fold.way;
  plan.patterns = {pattern};
  plan.lays = {{0, 1}};
  const Length from = cloth_to_cut(job.rolls[ix(roll)], job.losses).from;
  const Length to = from + pattern.length + job.losses.allowance;
  plan.lengths = {{0, {from, to}}};
  set_remnant(job, to, plan);
  sum_up(job, plan);
  plan.proof = {std::max(area_bound(job, job.rolls[ix(roll)]), plan.worth), false, ""};
  const auto findings = inspect_plan(job, plan);
  return findings.empty() ? std::string() : findings.front().substr(0, findings.front().size() - 1);
}

}  // namespace

int roll_named(const Job& job, const std::string& name) {
  const auto found = std::find_if(job.rolls.begin(), job.rolls.end(), [&](const Roll& roll) { return roll.name == name; });
  return found == job.rolls.end() ? -1 : static_cast<int>(found - job.rolls.begin());
}

KeptLength kept_length(const Job& job, const Plan& plan, int length, std::int64_t count) {
  const Lay& lay = plan.lays[ix(plan.lengths[ix(length)].lay)];
  const Pattern& pattern = plan.patterns[ix(lay.pattern)];
  return {roll_of(job, plan).name, count, pattern.length, pattern.fold.way, pattern.fold.lines, steps_of(pattern.tree)};
}

bool is_cut_as(const KeptLength& kept, const Pattern& pattern) {
  return kept.length == pattern.length && kept.way == pattern.fold.way && kept.lines == pattern.fold.lines &&
         kept.steps == steps_of(pattern.tree);
}

Result<Pattern> kept_pattern(const Job& job, const KeptLength& kept) {
  const int index = roll_named(job, kept.roll);
  const Roll& roll = job.rolls[ix(index)];
  const FoldPlan fold{kept.way, kept.lines, levels_of(kept.way)};
  if (const Words why = why_no_such_fold(fold, roll.fabric, kLongest, job.unit); !why.empty())
    return of_kept(kept, why);
  if (kept.way.end_to_end && !kept.length.is_even()) return of_kept(kept, say("its ends cannot meet"));
  if (kept.length + job.losses.allowance > cloth_to_cut(roll, job.losses).size())
    return of_kept(kept, say("the roll is too short for it"));
  const FoldMap map = fold_map(fold, roll.fabric.width, kept.length);
  Rebuild rebuild(kept.steps, {{Length(), map.across.folded_size()}, {Length(), map.along.folded_size()}});
  if (!rebuild.run()) return of_kept(kept, say("a cut lies outside its cloth"));
  const Pattern pattern = write_pattern(job, roll, fold, kept.length, rebuild.take_tree());
  if (!gives_all(pattern)) return of_kept(kept, say("a panel has another size now"));
  if (const std::string why = first_finding(job, index, pattern); !why.empty()) return of_kept(kept, why);
  return pattern;
}

void rename_in_order(Job& job, const std::string& roll, const std::string& to) {
  for (OrderLine& line : job.order.lines)
    if (line.roll == roll) line.roll = to;
  for (KeptLength& kept : job.order.kept)
    if (kept.roll == roll) kept.roll = to;
}

void forget_in_order(Job& job, const std::string& roll) {
  for (OrderLine& line : job.order.lines)
    if (line.roll == roll) line.roll.clear();
  std::erase_if(job.order.kept, [&](const KeptLength& kept) { return kept.roll == roll; });
}

}  // namespace foldyard
