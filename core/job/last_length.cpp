#include "job/last_length.h"

#include <algorithm>

#include "cutting/grid.h"
#include "cutting/limited_search.h"
#include "cutting/shape.h"
#include "cutting/tree_builder.h"
#include "job/write_pattern.h"

namespace foldyard {

namespace {

constexpr int kMostTries = 10;
constexpr std::int64_t kMostPanels = 60;  // more are not searched for in one length

// The tree of the usable cloth, moved over by the selvedge that is slit off first.
class OpenTree {
 public:
  OpenTree(const Fabric& fabric, Length length, const CutTree& inner) : fabric_(fabric), inner_(inner) {
    int node = builder_.add({{Length(), fabric.width}, {Length(), length}});
    if (!fabric.selvedge.is_zero()) {
      node = builder_.cut(node, Direction::along, fabric.selvedge).second;
      node = builder_.cut(node, Direction::along, fabric.width - fabric.selvedge).first;
    }
    copy(0, node);
  }
  CutTree take_tree() { return builder_.take_tree(); }

 private:
  void copy(int from, int to) {
    const CutNode& node = inner_.nodes[static_cast<std::size_t>(from)];
    if (node.kind == NodeKind::take) builder_.take(to, node.panel, node.turned);
    if (node.kind != NodeKind::cut) return;
    const Length at = node.at + (node.direction == Direction::along ? fabric_.selvedge : Length());
    const auto [first, second] = builder_.cut(to, node.direction, at);
    copy(node.first, first);
    copy(node.second, second);
  }

  const Fabric& fabric_;
  const CutTree& inner_;
  TreeBuilder builder_;
};

struct Wanted {
  LimitedProblem problem;   // its height open
  std::int64_t all = 0;     // gain of all panels
  Length by_area;           // no shorter length holds them
  Grid places;              // sums along
};

// Gains are areas, in a unit that keeps their sum within the search's range.
Wanted wanted_of(const Job& job, const Fabric& fabric, const std::vector<std::int64_t>& needs, Length most) {
  Wanted wanted;
  wanted.problem.width = fabric.usable_width();
  wanted.problem.limits = needs;
  Wide area = 0;
  std::vector<Length> along;
  Length least;
  for (const Shape& s : shapes_of(job.panels, fabric)) {
    const std::int64_t n = needs[static_cast<std::size_t>(s.panel)];
    if (n == 0 || s.across > fabric.usable_width()) continue;
    wanted.problem.shapes.push_back({s.across, s.along, s.panel, s.turned, false, 1, (s.across * s.along).square_units()});
    along.push_back(s.along);
  }
  std::vector<bool> counted(needs.size(), false);
  for (const LimitedShape& s : wanted.problem.shapes) {
    if (counted[static_cast<std::size_t>(s.panel)]) continue;
    counted[static_cast<std::size_t>(s.panel)] = true;
    area += Wide(s.gain) * needs[static_cast<std::size_t>(s.panel)];
  }
  const Wide unit = area / (1 << 24) + 1;
  for (LimitedShape& s : wanted.problem.shapes) s.gain = std::max<std::int64_t>(1, static_cast<std::int64_t>(s.gain / unit));
  std::fill(counted.begin(), counted.end(), false);
  for (const LimitedShape& s : wanted.problem.shapes) {
    if (counted[static_cast<std::size_t>(s.panel)]) continue;
    counted[static_cast<std::size_t>(s.panel)] = true;
    wanted.all += s.gain * needs[static_cast<std::size_t>(s.panel)];
  }
  wanted.by_area = Length::units(static_cast<std::int64_t>(area / fabric.usable_width().units()));
  if (!along.empty()) wanted.places = normal_places(along, most, 4000);
  return wanted;
}

}  // namespace

std::optional<int> LastLengthFinder::operator()(int kind, const std::vector<std::int64_t>& needs, Length most) {
  Known& known = known_[{kind, needs}];
  if (!known.length && known.tried < most) search(kind, needs, most, known);
  if (known.length && lengths_.pool()[static_cast<std::size_t>(*known.length)].size > most) return std::nullopt;
  return known.length;
}

void LastLengthFinder::search(int kind, const std::vector<std::int64_t>& needs, Length most, Known& known) {
  const ClothKind& of = case_.kinds[static_cast<std::size_t>(kind)];
  known.tried = most;
  std::int64_t panels = 0;
  for (const std::int64_t n : needs) panels += n;
  if (of.ways.empty() || of.ways.front() != FoldWay{} || panels > kMostPanels) return;
  const Length longest = std::min(most - job_.losses.allowance, job_.table.length);
  if (longest <= Length()) return;
  Wanted wanted = wanted_of(job_, of.cloth.fabric, needs, longest);
  int place = wanted.places.floor_index(wanted.by_area);
  for (int tries = 0; tries < kMostTries && ++place < wanted.places.size(); ++tries) {
    wanted.problem.height = wanted.places[place];
    const LimitedAnswer answer = best_limited(wanted.problem, {steps_, 100'000, cancelled_});
    if (!answer.searched) return;
    if (answer.gain >= wanted.all) {
      OpenTree tree(of.cloth.fabric, wanted.problem.height, answer.tree);
      known.length = lengths_.add(kind, 0, write_pattern(job_, of.cloth, FoldPlan{}, wanted.problem.height, tree.take_tree()));
      return;
    }
    // As much longer as half of what is missing needs, by area.
    const Wide missing = Wide(wanted.by_area.units()) * (wanted.all - std::min(answer.bound, wanted.all)) / wanted.all;
    const Wide lacking = Wide(wanted.by_area.units()) * (wanted.all - answer.gain) / wanted.all / 4;
    const Length next = wanted.places[place] + Length::units(static_cast<std::int64_t>(std::max(missing, lacking)));
    place = std::max(place, wanted.places.floor_index(next));
  }
}

}  // namespace foldyard
