#pragma once

// Cuts a rectangle as a cut tree says, and counts what comes out.

#include <string>
#include <vector>

#include "cutting/limited_problem.h"

namespace foldyard::test {

struct Replayed {
  std::int64_t gain = 0;
  std::vector<std::int64_t> copies;  // by panel
  std::string fault;                 // the first thing that cannot be; empty if none
};

class LimitedReplay {
 public:
  LimitedReplay(const LimitedProblem& problem, const CutTree& tree)
      : problem_(problem), tree_(tree) {
    out_.copies.assign(problem.limits.size(), 0);
    visit(0, {{Length(), problem.width}, {Length(), problem.height}});
    for (std::size_t p = 0; p < out_.copies.size(); ++p)
      check(out_.copies[p] <= problem.limits[p], "too many of panel " + std::to_string(p));
    check(visited_ == tree.nodes.size(), "a node is cut from nothing");
  }

  const Replayed& out() const { return out_; }

 private:
  void check(bool holds, const std::string& fault) {
    if (!holds && out_.fault.empty()) out_.fault = fault;
  }

  void visit(int index, const Rect& rect) {
    check(index >= 0 && index < std::ssize(tree_.nodes), "no such node");
    if (++visited_ > tree_.nodes.size()) check(false, "a node is cut twice");
    if (!out_.fault.empty()) return;
    const CutNode& node = tree_.nodes[static_cast<std::size_t>(index)];
    check(node.rect == rect, "a node is not the piece that was cut");
    if (node.kind == NodeKind::take) take(node);
    if (node.kind == NodeKind::cut) cut(node);
  }

  bool is_at_joint(const Rect& rect) const {
    return problem_.joint && rect.across.from.is_zero();
  }

  void cut(const CutNode& node) {
    Rect low = node.rect, high = node.rect;
    const bool along = node.direction == Direction::along;
    Span& before = along ? low.across : low.along;
    Span& after = along ? high.across : high.along;
    check(before.from < node.at && node.at < before.to, "a cut is not within its piece");
    check(!along || !is_at_joint(node.rect) || node.at >= problem_.fold_trim,
          "a cut is too near the fold edge");
    before.to = after.from = node.at;
    visit(node.first, low);
    visit(node.second, high);
  }

  void take(const CutNode& node) {
    for (const LimitedShape& s : problem_.shapes) {
      if (s.panel != node.panel || s.turned != node.turned ||
          s.at_joint != is_at_joint(node.rect) || s.across != node.rect.across.size() ||
          s.along != node.rect.along.size())
        continue;
      out_.gain += s.gain;
      out_.copies[static_cast<std::size_t>(s.panel)] += s.uses;
      return;
    }
    check(false, "a panel is taken that is not of the piece's size");
  }

  const LimitedProblem& problem_;
  const CutTree& tree_;
  Replayed out_;
  std::size_t visited_ = 0;
};

inline Replayed replay(const LimitedProblem& problem, const CutTree& tree) {
  return LimitedReplay(problem, tree).out();
}

}  // namespace foldyard::test
