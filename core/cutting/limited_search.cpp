#include "cutting/limited_search.h"

#include <algorithm>
#include <optional>
#include <queue>

#include "cutting/limited_fill.h"
#include "cutting/limited_grown.h"
#include "cutting/limited_known.h"
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
      : problem_(problem), cloth_(cloth), budget_(budget), counting_(cloth),
        filler_(cloth, counting_, builds_, budget.cancelled) {}

  LimitedAnswer run() {
    if (!counting_.fits()) return out_of_range();
    const Priced priced = find_prices(cloth_, [this](const InsideTable& inside, const Prices& prices) {
      try_fills(inside, prices, -1);
      return best_gain_;
    }, budget_.cancelled);
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
  // Of a panel that may be clipped, what every take of it is.
  struct Take {
    std::int64_t uses = 1;
    std::int64_t gain = 0;
    std::int64_t priced = 0;
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
    if (!bound_by_tables()) return;
    known_.emplace(builds_, counting_);
    made_.emplace(cloth_, counting_);
    grown_.emplace(cloth_, counting_);
    takes_.resize(cloth_.limits.size());
    for (const UnitShape& s : cloth_.shapes) takes_[s.panel] = {s.uses, s.gain, prices_.priced(s)};
    for (int i = 0; i < static_cast<int>(cloth_.shapes.size()); ++i) add(priced_panel(i));
    while (!waiting_.empty()) {
      const Waiting top = waiting_.top();
      bound_ = std::min(bound_, top.bound / kScale);
      if (bound_ <= best_gain_) break;
      if (steps_ > budget_.steps || std::ssize(builds_) > budget_.builds || is_cancelled()) return;
      waiting_.pop();
      if (is_beaten(top.build)) continue;
      if (++turns_ % kFillEvery == 0) try_fills(*inside_, prices_, top.build);
      join_with_all(top.build);
    }
    bound_ = best_gain_;
  }

  // False where the search is stopped before its tables are there.
  bool bound_by_tables() {
    inside_.emplace(cloth_, prices_, budget_.cancelled);
    if (inside_->is_finished()) around_.emplace(cloth_, *inside_, budget_.cancelled);
    given_back_ = prices_.given_back(cloth_);
    free_prices_ = {std::vector<std::int64_t>(cloth_.limits.size(), 0)};
    if (prices_.panel != free_prices_.panel) {
      free_inside_.emplace(cloth_, free_prices_, budget_.cancelled);
      if (free_inside_->is_finished()) free_around_.emplace(cloth_, *free_inside_, budget_.cancelled);
    }
    return !is_cancelled();
  }

  Build priced_panel(int shape) const {
    Build b = panel_build(cloth_, counting_, shape);
    b.priced = prices_.priced(cloth_.shapes[shape]);
    return b;
  }

  std::int64_t bound_of(const Build& b) const {
    return b.priced + around_->most(b.rim, b.width, b.height) + given_back_;
  }

  // A size that is no sum within the limits comes of copies that are left
  // lying; the next place holds all that could be beside it.
  bool move_to_place(Build& b) const {
    if (b.width > cloth_.width || b.height > cloth_.height) return false;
    const int x = cloth_.across[b.rim].ceil(b.width), y = cloth_.along.ceil(b.height);
    if (x < 0 || y < 0) return false;
    b.width = cloth_.across[b.rim].list[x];
    b.height = cloth_.along.list[y];
    return true;
  }

  bool is_beaten(int build) { return known_->is_given_up(build) || made_->is_covered(builds_[build]); }

  // Without prices, what the build gains and all cloth around it: this bounds
  // better where prices leave little of any gain.
  bool is_free_bound_low(int width, int height, Rim rim, std::int64_t gain) const {
    return free_around_ && gain * kScale + free_around_->most(rim, width, height) < enough();
  }
  // The least scaled bound that is more than the best gain so far.
  std::int64_t enough() const { return (best_gain_ + 1) * kScale; }

  void add(const Build& b) {
    const std::int64_t bound = bound_of(b);
    const bool is_best = b.rim == cloth_.root && b.gain > best_gain_;
    if (!is_best && (bound < enough() || is_free_bound_low(b.width, b.height, b.rim, b.gain))) return;
    if (known_->has_as_good(b)) return;
    if (!is_best && made_->is_covered(b)) return;
    builds_.push_back(b);
    const int index = static_cast<int>(builds_.size()) - 1;
    if (is_best) keep(index);
    known_->add(index);
    made_->add(b, index);
    waiting_.push({bound, index});
    if (b.rim == cloth_.root) return;
    Build moved = opened(builds_, index, cloth_);
    if (move_to_place(moved)) add(moved);
  }

  void join_with_all(int index) {
    const Build b = builds_[index];
    grown_->add(b, index);
    const std::int64_t need = enough() - given_back_ - b.priced;
    for (const bool side_by_side : {false, true}) {
      const auto visit = [&](int k) {
        join_class(b, index, grown_->at(k), side_by_side);
        return !is_cancelled();
      };
      steps_ += (side_by_side ? grown_->beside(b, *around_, need, visit) : grown_->above(b, *around_, need, visit)) / 64;
    }
  }

  // A join of two builds of these sizes, as yet without what they hold.
  Build sum_of(const Build& b, const SizeClass& k, bool side_by_side) const {
    Build sum;
    sum.width = side_by_side ? b.width + k.width : std::max(b.width, k.width);
    sum.height = side_by_side ? std::max(b.height, k.height) : b.height + k.height;
    sum.rim = b.rim == kJoint || k.rim == kJoint ? kJoint : kLoose;
    sum.made = side_by_side ? Made::beside : Made::above;
    return sum;
  }

  // All of a class have one size, so one bound on what goes around the join.
  void join_class(const Build& b, int index, const SizeClass& k, bool side_by_side) {
    Build sum = sum_of(b, k, side_by_side);
    if (!move_to_place(sum)) return;
    if (is_free_bound_low(sum.width, sum.height, sum.rim, b.gain + k.most_gain)) return;
    const std::int64_t around = around_->most(sum.rim, sum.width, sum.height) + given_back_;
    // The build at the joint is the left one.
    const bool other_first = side_by_side && k.rim == kJoint;
    const std::uint64_t* copies = k.copies.data();
    for (std::size_t i = 0; i < k.builds.size(); ++i, copies += counting_.words()) {
      const SizeClass::Entry& e = k.builds[i];
      if (++steps_ % kStepsBetweenLooks == 0 && is_cancelled()) return;
      sum.priced = b.priced + e.priced;
      if (sum.priced + around < enough()) return;
      sum.gain = b.gain + e.gain;
      sum.copies = plus(b.copies, copies);
      if (counting_.passes(b.copies.data(), copies) && !clip(sum, b, copies)) continue;
      sum.first = other_first ? e.build : index;
      sum.second = other_first ? index : e.build;
      if (sum.priced + around >= enough()) add(sum);
    }
  }

  // False where the sum may not be, or holds no more than one of the two.
  bool clip(Build& sum, const Build& b, const std::uint64_t* copies) const {
    const bool may_be = counting_.clip(sum.copies, [&](int panel, std::int64_t more) {
      const std::int64_t takes = more / takes_[panel].uses;
      sum.gain -= takes * takes_[panel].gain;
      sum.priced -= takes * takes_[panel].priced;
    });
    return may_be && sum.copies != b.copies && !std::equal(copies, copies + counting_.words(), sum.copies.begin());
  }

  Copies plus(const Copies& a, const std::uint64_t* b) const {
    Copies sum{};
    for (int i = 0; i < counting_.words(); ++i) sum[i] = a[i] + b[i];
    return sum;
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
  static constexpr std::int64_t kStepsBetweenLooks = 4096;

  const LimitedProblem& problem_;
  const Cloth& cloth_;
  const LimitedBudget& budget_;
  Counting counting_;
  Builds builds_;
  Filler filler_;
  Prices prices_;
  std::optional<InsideTable> inside_;
  std::optional<AroundTable> around_;
  Prices free_prices_;
  std::optional<InsideTable> free_inside_;  // without prices
  std::optional<AroundTable> free_around_;
  std::int64_t given_back_ = 0;
  std::int64_t bound_ = 0;
  std::int64_t best_gain_ = 0;
  CutTree best_tree_;
  std::priority_queue<Waiting> waiting_;
  std::optional<KnownBuilds> known_;
  std::optional<GrownBuilds> made_;   // all builds
  std::optional<GrownBuilds> grown_;  // those that others are joined with
  std::vector<Take> takes_;  // by panel
  std::int64_t steps_ = 0;
  std::int64_t turns_ = 0;
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
