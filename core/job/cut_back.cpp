#include "job/cut_back.h"

#include <algorithm>
#include <map>

#include "cutting/tree_builder.h"
#include "job/write_pattern.h"
#include "measure/index.h"

namespace foldyard {

std::vector<std::int64_t> copies_in(const Pattern& pattern, std::size_t panels) {
  std::vector<std::int64_t> copies(panels, 0);
  for (const PlacedPanel& p : pattern.panels) ++copies[ix(p.panel)];
  return copies;
}

std::vector<std::int64_t> limits_of(const Job& job) {
  std::vector<std::int64_t> most;
  for (const Panel& p : job.panels) most.push_back(p.at_most.value_or(kNoLimit));
  return most;
}

bool is_within(const std::vector<std::int64_t>& copies, const std::vector<std::int64_t>& most) {
  return std::equal(copies.begin(), copies.end(), most.begin(), [](auto a, auto b) { return a <= b; });
}

namespace {

class CutBack {
 public:
  CutBack(const CutTree& tree, std::vector<bool> kept) : tree_(tree), kept_(std::move(kept)) {}

  CutTree write() {
    copy(0, builder_.add(tree_.nodes[0].rect));
    return builder_.take_tree();
  }
  bool gives(int index) const {
    const CutNode& node = tree_.nodes[ix(index)];
    if (node.kind == NodeKind::cut) return gives(node.first) || gives(node.second);
    return node.kind == NodeKind::take && kept_[ix(index)];
  }

 private:
  void copy(int from, int to) {
    const CutNode& node = tree_.nodes[ix(from)];
    if (!gives(from)) return;
    if (node.kind == NodeKind::take) return builder_.take(to, node.panel, node.turned);
    const auto [first, second] = builder_.cut(to, node.direction, node.at);
    copy(node.first, first);
    copy(node.second, second);
  }

  const CutTree& tree_;
  std::vector<bool> kept_;
  TreeBuilder builder_;
};

// How many panels each take gives, by the rectangle it is taken from.
std::map<Rect, std::int64_t> copies_by_place(const Pattern& pattern) {
  std::map<Rect, std::int64_t> copies;
  for (const PlacedPanel& p : pattern.panels) ++copies[p.folded];
  return copies;
}

std::vector<bool> kept_takes(const Pattern& pattern, std::vector<std::int64_t> left) {
  const std::map<Rect, std::int64_t> copies = copies_by_place(pattern);
  const auto copies_at = [&](std::size_t node) {
    const auto found = copies.find(pattern.tree.nodes[node].rect);
    return found == copies.end() ? 0 : found->second;
  };
  std::vector<std::size_t> takes;
  for (std::size_t i = 0; i < pattern.tree.nodes.size(); ++i)
    if (pattern.tree.nodes[i].kind == NodeKind::take) takes.push_back(i);
  std::stable_sort(takes.begin(), takes.end(), [&](std::size_t a, std::size_t b) { return copies_at(a) > copies_at(b); });
  std::vector<bool> kept(pattern.tree.nodes.size(), false);
  for (const std::size_t take : takes) {
    std::int64_t& room = left[ix(pattern.tree.nodes[take].panel)];
    if (copies_at(take) == 0 || copies_at(take) > room) continue;
    kept[take] = true;
    if (room != kNoLimit) room -= copies_at(take);
  }
  return kept;
}

}  // namespace

std::optional<Pattern> cut_back(const Job& job, const Roll& roll, const Pattern& pattern,
                                const std::vector<std::int64_t>& most) {
  CutBack writer(pattern.tree, kept_takes(pattern, most));
  if (!writer.gives(0)) return std::nullopt;
  return write_pattern(job, roll, pattern.fold, pattern.length, writer.write());
}

}  // namespace foldyard
