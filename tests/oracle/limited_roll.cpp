#include "oracle/limited_roll.h"

#include <algorithm>
#include <array>
#include <map>

#include "oracle/fold_positions.h"

namespace foldyard::test {

namespace {

// For every number of copies of the limited panels (as one index), the most
// worth of all panels; −1 where it cannot be cut.
using Worths = std::vector<std::int64_t>;

class Counts {
 public:
  explicit Counts(const QuantaJob& job) {
    for (const QuantaPanel& p : job.panels) {
      radix_.push_back(p.at_most >= 0 ? p.at_most + 1 : 1);
      total_ *= radix_.back();
    }
    sums_.resize(static_cast<std::size_t>(total_) * static_cast<std::size_t>(total_));
    for (int a = 0; a < total_; ++a)
      for (int b = 0; b < total_; ++b) sums_[at(a, b)] = added(a, b);
  }

  Worths none() const {
    Worths w(static_cast<std::size_t>(total_), -1);
    w[0] = 0;
    return w;
  }
  // −1 where the limit does not allow so many.
  int index(const QuantaJob& job, std::size_t panel, int copies) const {
    if (job.panels[panel].at_most < 0) return 0;
    if (copies > job.panels[panel].at_most) return -1;
    int step = 1;
    for (std::size_t p = 0; p < panel; ++p) step *= radix_[p];
    return copies * step;
  }
  void merge(Worths& into, const Worths& a, const Worths& b) const {
    for (int i = 0; i < total_; ++i) {
      if (a[static_cast<std::size_t>(i)] < 0) continue;
      for (int j = 0; j < total_; ++j) {
        const int sum = sums_[at(i, j)];
        if (b[static_cast<std::size_t>(j)] < 0 || sum < 0) continue;
        std::int64_t& there = into[static_cast<std::size_t>(sum)];
        there = std::max(there, a[static_cast<std::size_t>(i)] + b[static_cast<std::size_t>(j)]);
      }
    }
  }

 private:
  std::size_t at(int a, int b) const { return static_cast<std::size_t>(a) * static_cast<std::size_t>(total_) + static_cast<std::size_t>(b); }
  int added(int a, int b) const {
    int sum = 0, step = 1;
    for (const int r : radix_) {
      const int digit = a / step % r + b / step % r;
      if (digit >= r) return -1;
      sum += digit * step;
      step *= r;
    }
    return sum;
  }

  std::vector<int> radix_;
  int total_ = 1;
  std::vector<int> sums_;
};

// A stack of rectangles cut together; axis 0 is across, joined as in roll_model.
struct Stack {
  std::array<bool, 2> joined{};
  std::array<int, 2> size{};
  int plies = 1;
  auto operator<=>(const Stack&) const = default;
};

class LimitedModel {
 public:
  LimitedModel(const QuantaJob& job, const FoldWay& way) : job_(job), way_(way), counts_(job) {}

  std::int64_t solve() { return most_from(0); }
  // Of all numbers of copies from this one on.
  std::int64_t most_from(int copies) {
    const Worths all = all_worths();
    return *std::max_element(all.begin() + copies, all.end());
  }
  const Counts& counts() const { return counts_; }

 private:
  Worths all_worths() {
    const std::vector<Strips> choices = all_strips_of(job_, way_);
    const int room = job_.roll - 2 * job_.squaring;
    std::vector<Worths> of_height(static_cast<std::size_t>(job_.table + 1));
    for (int h = 1; h <= job_.table; ++h) of_height[static_cast<std::size_t>(h)] = length(choices, h);
    std::vector<Worths> of_room(static_cast<std::size_t>(room + 1), counts_.none());
    for (int r = 1; r <= room; ++r) {
      Worths& here = of_room[static_cast<std::size_t>(r)];
      here = of_room[static_cast<std::size_t>(r - 1)];
      for (int h = 1; h <= job_.table; ++h) {
        const int size = h * (way_.end_to_end ? 2 : 1) + job_.allowance;
        if (size <= r) counts_.merge(here, of_room[static_cast<std::size_t>(r - size)], of_height[static_cast<std::size_t>(h)]);
      }
    }
    return of_room.back();
  }

  Worths length(const std::vector<Strips>& choices, int height) {
    Worths all = counts_.none();
    for (const Strips& s : choices) {
      const Worths left = strip({{true, way_.end_to_end}, {s.left, height}, s.left_pairs});
      const Worths middle = strip({{false, way_.end_to_end}, {s.middle, height}, s.plies});
      const Worths right = strip({{true, way_.end_to_end}, {s.right, height}, s.right_pairs});
      Worths two = counts_.none();
      counts_.merge(two, left, middle);
      counts_.merge(all, two, right);
    }
    return all;
  }

  Worths strip(const Stack& stack) { return stack.plies > 0 ? worths(stack) : counts_.none(); }

  // Loose cloth needs whole panels only, and those are even.
  const Worths& worths(Stack stack) {
    for (const std::size_t axis : {0, 1})
      if (!stack.joined[axis]) stack.size[axis] -= stack.size[axis] % 2;
    const auto known = known_.find(stack);
    if (known != known_.end()) return known->second;
    Worths all = counts_.none();
    if (stack.size[0] > 0 && stack.size[1] > 0) {
      take(all, stack);
      for (const std::size_t axis : {0, 1}) cut(all, stack, axis);
    }
    return known_.emplace(stack, std::move(all)).first->second;
  }

  void take(Worths& all, const Stack& stack) {
    for (std::size_t p = 0; p < job_.panels.size(); ++p) {
      const QuantaPanel& panel = job_.panels[p];
      const int index = counts_.index(job_, p, stack.plies);
      const bool lies = is_size(stack, panel, panel.across, panel.along) ||
                        (panel.may_turn && !job_.one_way && is_size(stack, panel, panel.along, panel.across));
      if (!lies || index < 0) continue;
      std::int64_t& there = all[static_cast<std::size_t>(index)];
      there = std::max<std::int64_t>(there, panel.worth * stack.plies);
    }
  }

  bool is_size(const Stack& stack, const QuantaPanel& panel, int across, int along) const {
    for (const std::size_t axis : {0, 1}) {
      const int size = axis == 0 ? across : along;
      if (stack.size[axis] * (stack.joined[axis] ? 2 : 1) != size) return false;
      if (stack.joined[axis] && (!panel.on_fold || stack.size[axis] < job_.trim)) return false;
    }
    return true;
  }

  void cut(Worths& all, const Stack& stack, std::size_t axis) {
    const bool joined = stack.joined[axis];
    for (int at = joined ? job_.trim : 2; at < stack.size[axis]; at += joined ? 1 : 2) {
      Stack near = stack, beyond = stack;
      near.size[axis] = at;
      beyond.size[axis] -= at;
      beyond.joined[axis] = false;
      if (joined) beyond.plies *= 2;
      const Worths low = worths(near);
      counts_.merge(all, low, worths(beyond));
    }
  }

  const QuantaJob& job_;
  const FoldWay& way_;
  Counts counts_;
  std::map<Stack, Worths> known_;
};

}  // namespace

std::int64_t limited_worth(const QuantaJob& job, const FoldWay& way) {
  return LimitedModel(job, way).solve();
}

std::int64_t worth_with_at_least(const QuantaJob& job, const FoldWay& way, std::size_t panel, int least) {
  LimitedModel model(job, way);
  const int from = model.counts().index(job, panel, least);
  return from < 0 ? -1 : model.most_from(from);
}

}  // namespace foldyard::test
