#include "job/write_pattern.h"

#include <algorithm>

#include "cutting/shape.h"
#include "fold/fold_map.h"

namespace foldyard {

namespace {

// The most legs that lie on one place: it is reached where some leg begins.
int most_legs(const AxisMap& axis) {
  int most = 0;
  for (const Leg& leg : axis.legs()) {
    const Span start{leg.folded.from, leg.folded.from + Length::units(1)};
    most = std::max(most, static_cast<int>(std::count_if(
                              axis.legs().begin(), axis.legs().end(),
                              [&](const Leg& other) { return other.folded.covers(start); })));
  }
  return most;
}

class PatternWriter {
 public:
  PatternWriter(const Job& job, const Roll& roll, Pattern& pattern)
      : job_(job), fabric_(roll.fabric), pattern_(pattern),
        map_(fold_map(pattern.fold, roll.fabric.width, pattern.length)) {}

  void write() {
    pattern_.folded_across = map_.across.folded_size();
    pattern_.folded_along = map_.along.folded_size();
    pattern_.plies = most_legs(map_.across) * most_legs(map_.along);
    visit(0);
  }

 private:
  void visit(int index) {
    const CutNode& node = pattern_.tree.nodes[index];
    switch (node.kind) {
      case NodeKind::cut:
        add_cut(node);
        visit(node.first);
        visit(node.second);
        return;
      case NodeKind::take: return take(node);
      case NodeKind::leave: return leave(node.rect);
    }
  }

  void add_cut(const CutNode& node) {
    const Span over = node.direction == Direction::along ? node.rect.along : node.rect.across;
    pattern_.cuts.push_back({node.direction, node.at, over});
    pattern_.travel += over.size();
  }

  template <class Visit>
  void for_each_piece(const Rect& folded, Visit piece) const {
    for (const Span& across : map_.across.places_of(folded.across))
      for (const Span& along : map_.along.places_of(folded.along)) piece(Rect{across, along});
  }

  void take(const CutNode& node) {
    const Panel& panel = job_.panels[node.panel];
    const SizeOnCloth size = size_on_cloth(panel, fabric_, node.turned);
    for_each_piece(node.rect, [&](const Rect& flat) {
      if (flat.across.size() != size.across || flat.along.size() != size.along ||
          !fabric_.usable().covers(flat.across))
        return add_rests(flat);
      const bool creased = map_.across.is_creased(flat.across) || map_.along.is_creased(flat.along);
      pattern_.panels.push_back({node.panel, node.turned, creased, flat, node.rect});
      pattern_.worth += panel.worth;
    });
  }

  void leave(const Rect& folded) {
    for_each_piece(folded, [&](const Rect& flat) { add_rests(flat); });
  }

  void add_rests(const Rect& flat) {
    const Span left{Length(), fabric_.selvedge};
    const Span right{fabric_.width - fabric_.selvedge, fabric_.width};
    add_rest({intersection(flat.across, left), flat.along}, true);
    add_rest({intersection(flat.across, fabric_.usable()), flat.along}, false);
    add_rest({intersection(flat.across, right), flat.along}, true);
  }

  void add_rest(const Rect& flat, bool selvedge) {
    if (flat.is_empty()) return;
    const bool kept = flat.across.size() >= job_.losses.keep_across &&
                      flat.along.size() >= job_.losses.keep_along;
    pattern_.rests.push_back(
        {selvedge ? RestKind::selvedge : kept ? RestKind::remnant : RestKind::offcut, flat});
  }

  const Job& job_;
  const Fabric& fabric_;
  Pattern& pattern_;
  FoldMap map_;
};

}  // namespace

Pattern write_pattern(const Job& job, const Roll& roll, const FoldPlan& fold, Length length,
                      CutTree tree) {
  Pattern pattern;
  pattern.length = length;
  pattern.fold = fold;
  pattern.tree = std::move(tree);
  PatternWriter(job, roll, pattern).write();
  return pattern;
}

CutTree with_rest_beyond(CutTree tree, Length folded_length) {
  const Rect used = tree.nodes[0].rect;
  if (used.along.to == folded_length) return tree;
  CutTree longer;
  longer.nodes.resize(1);
  CutNode& root = longer.nodes[0];
  root.rect = {used.across, {Length(), folded_length}};
  root.kind = NodeKind::cut;
  root.direction = Direction::across;
  root.at = used.along.to;
  for (CutNode node : tree.nodes) {
    if (node.first >= 0) ++node.first;
    if (node.second >= 0) ++node.second;
    longer.nodes.push_back(node);
  }
  CutNode rest;
  rest.rect = {used.across, {used.along.to, folded_length}};
  longer.nodes[0].first = 1;
  longer.nodes[0].second = static_cast<int>(longer.nodes.size());
  longer.nodes.push_back(rest);
  return longer;
}

}  // namespace foldyard
