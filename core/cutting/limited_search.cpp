#include "cutting/limited_search.h"

#include <algorithm>
#include <optional>
#include <queue>
#include <unordered_map>

#include "cutting/limited_fill.h"
#include "cutting/limited_prices.h"

namespace foldyard {

namespace limited {
namespace {

CutTree uncut(const LimitedProblem& problem) {
  CutNode whole;
  whole.rect = {{Length(), problem.width}, {Length(), problem.height}};
  return {{whole}};
}

class Search {
 public:
  Search(const LimitedProblem& problem, const Cloth& cloth, const LimitedBudget& budget)
      : problem_(problem), cloth_(cloth), budget_(budget), counting_(cloth.limits),
        filler_(cloth, counting_, builds_) {}

  LimitedAnswer run() {
    if (!counting_.fits()) return out_of_range();
    const Priced priced = find_prices(cloth_, [this](const InsideTable& inside, const Prices& prices) {
      try_fills(inside, prices, -1);
      return best_gain_;
    });
    prices_ = priced.prices;
    bound_ = priced.bound / kScale;
    if (best_gain_ < bound_ && !is_cancelled()) grow();
    return answer();
  }

 private:
  struct Waiting {
    std::int64_t bound;
    int build;
    bool operator<(const Waiting& o) const { return bound != o.bound ? bound < o.bound : build > o.build; }
  };
  // Grown builds of one size, the greatest priced gain first.
  struct SizeClass {
    int width;
    int height;
    Rim rim;
    std::vector<std::pair<std::int64_t, int>> builds;
  };

  bool is_cancelled() const { return budget_.cancelled && budget_.cancelled->load(); }

  LimitedAnswer out_of_range() const {
    LimitedAnswer answer;
    answer.searched = false;
    answer.bound = cloth_.total_gain();
    answer.tree = uncut(problem_);
    return answer;
  }

  void try_fills(const InsideTable& inside, const Prices& prices, int corner) {
    for (bool true_gains : {false, true}) {
      const std::size_t before = builds_.size();
      const int filled = filler_.fill(inside, prices, corner, true_gains);
      if (filled >= 0 && builds_[filled].gain > best_gain_)
        keep(filled);
      else
        builds_.resize(before);
    }
  }

  void keep(int build) {
    best_gain_ = builds_[build].gain;
    best_tree_ = tree_of(builds_, build, cloth_, problem_);
  }

  void grow() {
    builds_.clear();
    inside_.emplace(cloth_, prices_);
    around_.emplace(cloth_, *inside_);
    given_back_ = prices_.given_back(cloth_);
    for (int i = 0; i < static_cast<int>(cloth_.shapes.size()); ++i) add(priced_panel(i));
    while (!waiting_.empty()) {
      const Waiting top = waiting_.top();
      bound_ = std::min(bound_, top.bound / kScale);
      if (bound_ <= best_gain_) break;
      if (steps_ > budget_.steps || std::ssize(builds_) > budget_.builds || is_cancelled()) return;
      waiting_.pop();
      if (is_beaten(top.build)) continue;
      if (++grown_ % kFillEvery == 0) try_fills(*inside_, prices_, top.build);
      join_with_all(top.build);
    }
    bound_ = best_gain_;
  }

  Build priced_panel(int shape) const {
    Build b = panel_build(cloth_, counting_, shape);
    b.priced = prices_.priced(cloth_.shapes[shape]);
    return b;
  }

  std::int64_t bound_of(const Build& b) const {
    return b.priced + around_->most(b.rim, b.width, b.height) + given_back_;
  }

  bool is_place(const Build& b) const {
    return b.width <= cloth_.width && b.height <= cloth_.height &&
           cloth_.across[b.rim].index[b.width] >= 0 && cloth_.along.index[b.height] >= 0;
  }

  // Builds of the same panels in the same or less cloth make this one useless.
  bool is_known(const Build& b) {
    auto& sizes = known_[b.rim][b.copies];
    for (const auto& [width, height] : sizes)
      if (width <= b.width && height <= b.height) return true;
    std::erase_if(sizes, [&](const auto& s) { return b.width <= s.first && b.height <= s.second; });
    sizes.push_back({b.width, b.height});
    return false;
  }

  bool is_beaten(int build) {
    const Build& b = builds_[build];
    const auto& sizes = known_[b.rim][b.copies];
    return std::find(sizes.begin(), sizes.end(), std::pair{b.width, b.height}) == sizes.end();
  }

  void add(const Build& b) {
    if (!is_place(b)) return;
    const std::int64_t bound = bound_of(b);
    const bool is_best = b.rim == cloth_.root && b.gain > best_gain_;
    if (!is_best && bound / kScale <= best_gain_) return;
    if (is_known(b)) return;
    builds_.push_back(b);
    const int index = static_cast<int>(builds_.size()) - 1;
    if (is_best) keep(index);
    waiting_.push({bound, index});
    if (b.rim != cloth_.root) add(opened(builds_, index, cloth_));
  }

  void join_with_all(int index) {
    add_to_class(index);
    for (std::size_t c = 0; c < classes_.size(); ++c) {
      const Rim mine = builds_[index].rim, theirs = classes_[c].rim;
      if (mine == theirs) join_class(index, c, false);
      if (mine == kLoose || theirs == kLoose) join_class(index, c, true);
    }
  }

  void add_to_class(int index) {
    const Build& b = builds_[index];
    const std::int64_t key = (static_cast<std::int64_t>(b.rim) << 40) + (static_cast<std::int64_t>(b.width) << 20) + b.height;
    const auto [found, is_new] = class_of_.try_emplace(key, classes_.size());
    if (is_new) classes_.push_back({b.width, b.height, b.rim, {}});
    auto& list = classes_[found->second].builds;
    const auto place = std::upper_bound(list.begin(), list.end(), b.priced,
                                        [](std::int64_t v, const auto& e) { return v > e.first; });
    list.insert(place, {b.priced, index});
  }

  // All of a class have one size, so one bound on what goes around the join.
  void join_class(int index, std::size_t c, bool side_by_side) {
    const SizeClass& k = classes_[c];
    const Build& b = builds_[index];
    const Rim rim = b.rim == kJoint || k.rim == kJoint ? kJoint : kLoose;
    const int width = side_by_side ? b.width + k.width : std::max(b.width, k.width);
    const int height = side_by_side ? std::max(b.height, k.height) : b.height + k.height;
    Build sum;
    sum.width = width;
    sum.height = height;
    sum.rim = rim;
    if (!is_place(sum)) return;
    const std::int64_t around = around_->most(rim, width, height) + given_back_ + b.priced;
    const Copies copies = b.copies;
    for (std::size_t i = 0; i < classes_[c].builds.size(); ++i) {
      const auto [priced, other] = classes_[c].builds[i];
      ++steps_;
      if ((priced + around) / kScale <= best_gain_) return;
      if (!counting_.within_limits(copies, builds_[other].copies)) continue;
      // The build at the joint is the left one.
      const bool other_first = side_by_side && classes_[c].rim == kJoint;
      const int first = other_first ? other : index, second = other_first ? index : other;
      add(side_by_side ? beside(builds_, first, second) : above(builds_, first, second));
    }
  }

  LimitedAnswer answer() {
    LimitedAnswer answer;
    answer.gain = best_gain_;
    answer.bound = std::max(bound_, best_gain_);
    answer.proved = answer.bound == answer.gain;
    answer.steps = steps_;
    answer.tree = std::move(best_tree_);
    if (answer.tree.nodes.empty()) answer.tree = uncut(problem_);
    return answer;
  }

  static constexpr std::int64_t kFillEvery = 16;

  const LimitedProblem& problem_;
  const Cloth& cloth_;
  const LimitedBudget& budget_;
  Counting counting_;
  Builds builds_;
  Filler filler_;
  Prices prices_;
  std::optional<InsideTable> inside_;
  std::optional<AroundTable> around_;
  std::int64_t given_back_ = 0;
  std::int64_t bound_ = 0;
  std::int64_t best_gain_ = 0;
  CutTree best_tree_;
  std::priority_queue<Waiting> waiting_;
  std::unordered_map<Copies, std::vector<std::pair<int, int>>, CopiesHash> known_[2];
  std::vector<SizeClass> classes_;
  std::unordered_map<std::int64_t, std::size_t> class_of_;
  std::int64_t steps_ = 0;
  std::int64_t grown_ = 0;
};

}  // namespace
}  // namespace limited

LimitedAnswer best_limited(const LimitedProblem& problem, const LimitedBudget& budget) {
  const limited::Cloth cloth(problem);
  if (!cloth.in_range) {
    LimitedAnswer answer;
    answer.searched = false;
    for (const LimitedShape& s : problem.shapes)
      answer.bound += s.gain * (problem.limits[s.panel] / s.uses);
    answer.tree = limited::uncut(problem);
    return answer;
  }
  if (cloth.shapes.empty()) {
    LimitedAnswer nothing;
    nothing.proved = true;
    nothing.tree = limited::uncut(problem);
    return nothing;
  }
  return limited::Search(problem, cloth, budget).run();
}

}  // namespace foldyard
