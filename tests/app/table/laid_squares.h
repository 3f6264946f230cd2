#pragma once

// A length made straight as a value, without planning: square cloth with a
// selvedge on both sides and n × n square panels between them.

#include "job/defaults.h"
#include "table/laid_cloth.h"

namespace foldyard::sample {

inline constexpr Length kSquaresSelvedge = Length::mm(10);
inline constexpr Length kSquaresUsable = Length::mm(1480);

inline std::shared_ptr<const Job> job_of_squares(Length side) {
  Job job = default_job();
  Roll roll;
  roll.name = "Olive";
  roll.fabric = default_fabric();
  roll.fabric.width = kSquaresUsable + kSquaresSelvedge * 2;
  roll.fabric.selvedge = kSquaresSelvedge;
  roll.length = kSquaresUsable;
  job.rolls = {roll};
  job.table.length = job.table.depth = Length::mm(1600);
  Panel panel;
  panel.name = "Patch";
  panel.across = panel.along = side;
  panel.worth = Worth::whole(1);
  job.panels = {panel};
  return std::make_shared<const Job>(job);
}

// Cuts off everything below `at` and goes on with what is above.
inline int cut_off(CutTree& tree, int node, Direction direction, Length at, int panel) {
  const auto here = [&]() -> CutNode& { return tree.nodes[static_cast<std::size_t>(node)]; };
  const Rect whole = here().rect;
  Rect below = whole, above = whole;
  (direction == Direction::along ? below.across : below.along).to = at;
  (direction == Direction::along ? above.across : above.along).from = at;
  here().kind = NodeKind::cut;
  here().direction = direction;
  here().at = at;
  here().first = static_cast<int>(tree.nodes.size());
  here().second = here().first + 1;
  CutNode first, second;
  first.rect = below;
  first.kind = panel < 0 ? NodeKind::leave : NodeKind::take;
  first.panel = panel;
  second.rect = above;
  tree.nodes.push_back(first);
  tree.nodes.push_back(second);
  return static_cast<int>(tree.nodes.size()) - 1;
}

inline void take(Pattern& pattern, int node) {
  CutNode& taken = pattern.tree.nodes[static_cast<std::size_t>(node)];
  taken.kind = NodeKind::take;
  taken.panel = 0;
}

inline void cut_strip(Pattern& pattern, int strip, int n, Length side) {
  for (int i = 1; i < n; ++i) strip = cut_off(pattern.tree, strip, Direction::across, side * i, 0);
  take(pattern, strip);
}

inline Pattern pattern_of_squares(int n, Length side) {
  Pattern pattern;
  pattern.length = pattern.folded_along = kSquaresUsable;
  pattern.folded_across = kSquaresUsable + kSquaresSelvedge * 2;
  CutNode root;
  root.rect = {{Length(), pattern.folded_across}, {Length(), pattern.folded_along}};
  pattern.tree.nodes = {root};
  int rest = cut_off(pattern.tree, 0, Direction::along, kSquaresSelvedge, -1);
  for (int i = 1; i <= n; ++i) {
    const int strip = static_cast<int>(pattern.tree.nodes.size());
    rest = cut_off(pattern.tree, rest, Direction::along, kSquaresSelvedge + side * i, -1);
    cut_strip(pattern, strip, n, side);
  }
  for (const CutNode& node : pattern.tree.nodes)
    if (node.kind == NodeKind::take) pattern.panels.push_back({0, false, false, node.rect, node.rect});
  return pattern;
}

// REQUIRES that n divides 1480 mm in units: 1, 2, 4, 5, 8, 10, 16, 20, 32, 37, 40, 50, 64, 80, 100 …
inline LaidClothPtr squares(int n) {
  const Length side = Length::units(kSquaresUsable.units() / n);
  Plan plan;
  plan.patterns = {pattern_of_squares(n, side)};
  plan.lays = {{0, 1}};
  plan.yield = {n * n};
  return lay_cloth(job_of_squares(side), std::make_shared<const Plan>(plan), 0);
}

}  // namespace foldyard::sample
