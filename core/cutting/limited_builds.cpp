#include "cutting/limited_builds.h"

#include <algorithm>
#include <bit>

#include "cutting/tree_builder.h"

namespace foldyard::limited {

Counting::Counting(const std::vector<std::int64_t>& limits) {
  for (std::int64_t limit : limits) place(limit, false);
}

Counting::Counting(const Cloth& cloth) {
  const bool even = cloth.has_even_gains();
  std::vector<std::int64_t> uses(cloth.limits.size(), 1);
  for (const UnitShape& s : cloth.shapes) uses[s.panel] = s.uses;
  for (int p = 0; p < static_cast<int>(cloth.limits.size()); ++p) {
    const bool clips = even && cloth.may_clip(p);
    place(clips ? cloth.limits[p] / uses[p] * uses[p] : cloth.limits[p], clips);
  }
}

void Counting::place(std::int64_t limit, bool clips) {
  const int bits = std::bit_width(static_cast<std::uint64_t>(limit));
  Field f{0, 0, bits};
  if (!fields_.empty()) {
    const Field& last = fields_.back();
    f = {last.word, last.shift + last.bits + 1, bits};
    if (f.shift + bits + 1 > 64) f = {last.word + 1, 0, bits};
  }
  fits_ = fits_ && f.word < kWords && bits < 40;
  if (!fits_) return;
  words_ = f.word + 1;
  fields_.push_back(f);
  clips_.push_back(clips);
  limits_.push_back(static_cast<std::uint64_t>(limit));
  panel_at_.resize(64 * kWords, -1);
  panel_at_[static_cast<std::size_t>(f.word) * 64 + f.shift + bits] = panels() - 1;
  const std::uint64_t guard = std::uint64_t{1} << (f.shift + bits);
  guards_[f.word] |= guard;
  full_[f.word] |= (static_cast<std::uint64_t>(limit) << f.shift) | guard;
  if (!clips) strict_[f.word] |= guard | (guard - (std::uint64_t{1} << f.shift));
}

Copies Counting::one(int panel, int uses) const {
  Copies copies{};
  copies[fields_[panel].word] = static_cast<std::uint64_t>(uses) << fields_[panel].shift;
  return copies;
}

std::int64_t Counting::of(const Copies& copies, int panel) const {
  const Field& f = fields_[panel];
  return static_cast<std::int64_t>(copies[f.word] >> f.shift & ((std::uint64_t{2} << f.bits) - 1));
}

namespace {

Build joined(const Builds& builds, int first, int second, Made made) {
  const Build &a = builds[first], &b = builds[second];
  Build sum;
  sum.rim = a.rim;
  sum.made = made;
  sum.first = first;
  sum.second = second;
  sum.gain = a.gain + b.gain;
  sum.priced = a.priced + b.priced;
  sum.copies = a.copies + b.copies;
  return sum;
}

class TreeWriter {
 public:
  TreeWriter(const Builds& builds, const Cloth& cloth, const LimitedProblem& problem)
      : builds_(builds), cloth_(cloth), problem_(problem), left_(problem.limits) {}

  CutTree write(int root) {
    place(tree_.add({{Length(), problem_.width}, {Length(), problem_.height}}), root);
    return tree_.take_tree();
  }

 private:
  Length length(int units) const { return Length::units(units * cloth_.unit); }

  std::pair<int, int> cut(int node, Direction direction, int size) {
    const Rect& rect = tree_.rect(node);
    const Length from = direction == Direction::along ? rect.across.from : rect.along.from;
    return tree_.cut(node, direction, from + length(size));
  }

  // Whether anything of a build is still to be cut.
  bool is_wanted(int index) const {
    const Build& b = builds_[index];
    if (b.made == Made::panel) {
      const LimitedShape& shape = problem_.shapes[cloth_.source[b.first]];
      return left_[shape.panel] >= shape.uses;
    }
    return is_wanted(b.first) || (b.second >= 0 && is_wanted(b.second));
  }

  // Trims the node to the build's size, then parts it as the build was made.
  void place(int node, int index) {
    if (!is_wanted(index)) return;
    const Build& b = builds_[index];
    if (tree_.rect(node).across.size() > length(b.width)) node = cut(node, Direction::along, b.width).first;
    if (tree_.rect(node).along.size() > length(b.height)) node = cut(node, Direction::across, b.height).first;
    switch (b.made) {
      case Made::panel: {
        const LimitedShape& shape = problem_.shapes[cloth_.source[b.first]];
        left_[shape.panel] -= shape.uses;
        return tree_.take(node, shape.panel, shape.turned);
      }
      case Made::opened: return place(cut(node, Direction::along, cloth_.fold_trim).second, b.first);
      case Made::beside: return place_two(cut(node, Direction::along, builds_[b.first].width), b);
      case Made::above: return place_two(cut(node, Direction::across, builds_[b.first].height), b);
    }
  }

  void place_two(std::pair<int, int> nodes, const Build& b) {
    place(nodes.first, b.first);
    place(nodes.second, b.second);
  }

  const Builds& builds_;
  const Cloth& cloth_;
  const LimitedProblem& problem_;
  std::vector<std::int64_t> left_;  // of each limit
  TreeBuilder tree_;
};

}  // namespace

Build panel_build(const Cloth& cloth, const Counting& counting, int shape) {
  const UnitShape& s = cloth.shapes[shape];
  Build b;
  b.width = s.across;
  b.height = s.along;
  b.rim = s.rim;
  b.first = shape;
  b.gain = s.gain;
  b.copies = counting.one(s.panel, s.uses);
  return b;
}

Build opened(const Builds& builds, int loose, const Cloth& cloth) {
  Build b = builds[loose];
  b.made = Made::opened;
  b.first = loose;
  b.second = -1;
  b.rim = kJoint;
  b.width += cloth.fold_trim;
  return b;
}

Build beside(const Builds& builds, int left, int right) {
  Build sum = joined(builds, left, right, Made::beside);
  sum.width = builds[left].width + builds[right].width;
  sum.height = std::max(builds[left].height, builds[right].height);
  return sum;
}

Build above(const Builds& builds, int lower, int upper) {
  Build sum = joined(builds, lower, upper, Made::above);
  sum.width = std::max(builds[lower].width, builds[upper].width);
  sum.height = builds[lower].height + builds[upper].height;
  return sum;
}

CutTree tree_of(const Builds& builds, int root, const Cloth& cloth, const LimitedProblem& problem) {
  return TreeWriter(builds, cloth, problem).write(root);
}

}  // namespace foldyard::limited
