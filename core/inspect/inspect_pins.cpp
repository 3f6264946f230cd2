#include <algorithm>

#include "inspect/batch_checks.h"
#include "measure/index.h"

namespace foldyard::inspection {

namespace {

// Follows the steps through the tree, part by part; false where they part ways.
bool follows(const CutTree& tree, const std::vector<KeptStep>& steps) {
  std::vector<int> ahead{0};
  for (const KeptStep& step : steps) {
    if (ahead.empty()) return false;
    const CutNode& node = tree.nodes[ix(ahead.back())];
    ahead.pop_back();
    if (node.kind != step.kind) return false;
    if (node.kind == NodeKind::take && (node.panel != step.panel || node.turned != step.turned)) return false;
    if (node.kind != NodeKind::cut) continue;
    if (node.direction != step.direction || node.at != step.at) return false;
    ahead.push_back(node.second);
    ahead.push_back(node.first);
  }
  return ahead.empty();
}

bool is_cut_so(const Pattern& pattern, const KeptLength& kept) {
  return pattern.length == kept.length && pattern.fold.way == kept.way && pattern.fold.lines == kept.lines &&
         follows(pattern.tree, kept.steps);
}

class PinCheck {
 public:
  PinCheck(const Job& job, const BatchPlan& plan, Findings& findings) : job_(job), plan_(plan), findings_(findings) {}

  void run() {
    for (std::size_t r = 0; r < job_.rolls.size(); ++r) in_or_out(static_cast<int>(r));
    for (std::size_t p = 0; p < job_.panels.size(); ++p) limit(p);
    for (std::size_t i = 0; i < job_.order.kept.size(); ++i) kept(job_.order.kept[i]);
    for (std::size_t r = 0; r < job_.rolls.size(); ++r) lines_kept_on(static_cast<int>(r));
  }

 private:
  const Plan* plan_of(int roll) const {
    for (const Plan& plan : plan_.rolls)
      if (plan.roll == roll) return &plan;
    return nullptr;
  }

  void in_or_out(int r) {
    const Roll& roll = job_.rolls[ix(r)];
    const bool is_cut = plan_of(r) != nullptr;
    findings_.require(!is_cut || roll.in_batch != InBatch::never, roll.name, " is cut, but it is left out of batches");
    findings_.require(is_cut || roll.in_batch != InBatch::must, roll.name, " is not cut, but it must be");
  }

  // Of all rolls together.
  void limit(std::size_t p) {
    std::int64_t cut = 0;
    for (const Plan& plan : plan_.rolls) cut += plan.yield[p];
    const std::int64_t most = job_.panels[p].at_most.value_or(cut);
    findings_.require(cut <= most, "Of ", job_.panels[p].name, ", ", cut, " are cut from all rolls, but at most ", most, " are wanted");
  }

  std::int64_t times_cut(const Roll& roll, const KeptLength& kept) const {
    std::int64_t times = 0;
    for (const Plan& plan : plan_.rolls) {
      if (job_.rolls[ix(plan.roll)].name != roll.name) continue;
      for (const LengthOnRoll& length : plan.lengths) times += is_cut_so(pattern_of(plan, length), kept);
    }
    return times;
  }

  // Equal lengths that are kept more than once are asked for together.
  void kept(const KeptLength& asked) {
    std::int64_t count = 0;
    for (KeptLength other : job_.order.kept) {
      const std::int64_t of_it = other.count;
      other.count = asked.count;
      if (other == asked) count += of_it;
    }
    std::int64_t times = 0;
    for (const Roll& roll : job_.rolls)
      if (roll.name == asked.roll) times += times_cut(roll, asked);
    findings_.require(times >= count, asked.roll, ": a length that is kept ", count, " times is cut ", times, " times");
  }

  void lines_kept_on(int r) {
    const std::string& name = job_.rolls[ix(r)].name;
    std::vector<std::int64_t> taken(job_.panels.size());
    for (const Made& made : plan_.made) {
      const OrderLine& line = job_.order.lines[ix(made.line)];
      if (line.roll != name) continue;
      for (const PanelCount& use : job_.products[ix(line.product)].panels)
        if (use.from.empty()) taken[ix(use.panel)] += use.count * made.pieces;
    }
    const Plan* plan = plan_of(r);
    for (std::size_t p = 0; p < taken.size(); ++p) {
      const std::int64_t there = plan ? plan->yield[p] : 0;
      findings_.require(taken[p] <= there, name, ": ", taken[p] - there, " of ", job_.panels[p].name,
                        " are missing for what is kept on this roll");
    }
  }

  const Job& job_;
  const BatchPlan& plan_;
  Findings& findings_;
};

}  // namespace

void inspect_pins(const Job& job, const BatchPlan& plan, Findings& findings) { PinCheck(job, plan, findings).run(); }

}  // namespace foldyard::inspection
