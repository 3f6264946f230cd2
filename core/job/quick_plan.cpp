#include "job/quick_plan.h"

#include <algorithm>

#include "measure/wide.h"

namespace foldyard {

namespace {

constexpr std::int64_t kQuickSteps = 6'000;
constexpr int kDensest = 2;
constexpr int kPlies = 12;
constexpr Length kTable = Length::mm(1'500);

bool is_denser(const Panel& a, const Panel& b) {
  return Wide(a.worth.parts()) * b.area().square_units() > Wide(b.worth.parts()) * a.area().square_units();
}

bool fits(const Panel& p, Length width, Length length) {
  return (p.across <= width && p.along <= length) || (p.may_turn && p.along <= width && p.across <= length);
}

void keep(std::vector<int>& kept, int panel) {
  if (std::find(kept.begin(), kept.end(), panel) == kept.end()) kept.push_back(panel);
}

// Of equals the one named first.
std::vector<int> few_of(const std::vector<Panel>& panels, Length width, Length length) {
  std::vector<int> all, kept;
  for (int i = 0; i < static_cast<int>(panels.size()); ++i)
    if (fits(panels[i], width, length)) all.push_back(i);
  if (all.empty()) return {0};
  std::stable_sort(all.begin(), all.end(), [&](int a, int b) { return is_denser(panels[a], panels[b]); });
  for (int i = 0; i < std::min(kDensest, static_cast<int>(all.size())); ++i) keep(kept, all[i]);
  for (Length Panel::*size : {&Panel::across, &Panel::along})
    keep(kept, *std::min_element(all.begin(), all.end(), [&](int a, int b) {
      return panels[a].*size < panels[b].*size;
    }));
  return kept;
}

}  // namespace

void QuickPlanner::prepare() {
  const Fabric& fabric = job_.rolls[roll_].fabric;
  kept_ = few_of(job_.panels, fabric.usable_width(), job_.table.length);
  small_ = job_;
  small_.panels.clear();
  Length longest = kTable;
  for (int i : kept_) {
    small_.panels.push_back(job_.panels[i]);
    longest = std::max(longest, job_.panels[i].along);
  }
  small_.table.length = std::min(job_.table.length, longest);
  small_.cutter.most_plies = std::min(job_.cutter.most_plies, kPlies);
  SearchBudget budget;
  budget.steps = kQuickSteps;
  planner_.emplace(small_, roll_, aim_, budget);
}

Result<Plan> QuickPlanner::plan(const FoldWay& way) {
  std::call_once(prepared_, [this] { prepare(); });
  Result<Plan> plan = planner_->plan(way, false);
  if (!plan) return plan;
  return of_whole_job(std::move(plan).value());
}

Plan QuickPlanner::of_whole_job(Plan plan) const {
  for (Pattern& pattern : plan.patterns) {
    for (PlacedPanel& p : pattern.panels) p.panel = kept_[p.panel];
    for (CutNode& node : pattern.tree.nodes)
      if (node.kind == NodeKind::take) node.panel = kept_[node.panel];
  }
  const std::vector<std::int64_t> yield = std::move(plan.yield);
  plan.yield.assign(job_.panels.size(), 0);
  for (std::size_t i = 0; i < yield.size(); ++i) plan.yield[kept_[i]] = yield[i];
  plan.proof = {};
  return plan;
}

}  // namespace foldyard
