#include "job/last_length.h"

#include <algorithm>

#include "cutting/fold_layout.h"
#include "cutting/grid.h"
#include "cutting/limited_search.h"
#include "cutting/shape.h"
#include "cutting/tree_builder.h"
#include "job/cut_back.h"
#include "job/write_pattern.h"
#include "measure/index.h"

namespace foldyard {

namespace {

constexpr int kMostTries = 10;
constexpr std::int64_t kMostPanels = 30;  // more are not searched for in one length
constexpr std::int64_t kTableSteps = 3'000'000;  // at prices
constexpr int kMostPrices = 3;
constexpr int kMostLooks = 4;  // at lengths, at the same prices

// How a way lies in the search's rectangle, whose joint is on its left: end to end the
// rectangle lies on its side, so that the joint is the fold across the roll.
struct Lie {
  bool is_served = false;
  bool joint = false;
  bool on_its_side = false;
  int plies = 1;
};

Lie lie_of(const FoldWay& way) {
  if (way == FoldWay{}) return {true, false, false, 1};
  if (way == FoldWay{FoldKind::open, 1, true, true}) return {true, true, true, 2};
  if (way == FoldWay{FoldKind::selvedge_to_selvedge, 2, false, true}) return {true, true, false, 2};
  return {};
}

// The tree of the usable cloth, put where it lies on the folded cloth, with the
// selvedges slit off first.
class WholeTree {
 public:
  WholeTree(const Fabric& fabric, const Lie& lie, Length folded, const CutTree& inner)
      : lie_(lie), from_(lie.joint && !lie.on_its_side ? Length() : fabric.selvedge), inner_(inner) {
    const Length width = lie.joint && !lie.on_its_side ? fabric.width / 2 : fabric.width;
    const Length usable = lie.joint && !lie.on_its_side ? fabric.usable_width() / 2 : fabric.usable_width();
    int node = builder_.add({{Length(), width}, {Length(), folded}});
    if (from_ > Length()) node = builder_.cut(node, Direction::along, from_).second;
    if (from_ + usable < width) node = builder_.cut(node, Direction::along, from_ + usable).first;
    copy(0, node);
  }
  CutTree take_tree() { return builder_.take_tree(); }

 private:
  void copy(int from, int to) {
    const CutNode& node = inner_.nodes[ix(from)];
    if (node.kind == NodeKind::take) builder_.take(to, node.panel, node.turned);
    if (node.kind != NodeKind::cut) return;
    const bool along = (node.direction == Direction::along) != lie_.on_its_side;
    const auto [first, second] =
        builder_.cut(to, along ? Direction::along : Direction::across, along ? node.at + from_ : node.at);
    copy(node.first, first);
    copy(node.second, second);
  }

  const Lie& lie_;
  Length from_;
  const CutTree& inner_;
  TreeBuilder builder_;
};

struct Wanted {
  LimitedProblem problem;  // the size along the roll is open
  std::int64_t all = 0;    // gain of all panels
  Length by_area;          // folded; none shorter holds them
  Grid places;             // folded lengths worth trying
};

class WantedWriter {
 public:
  WantedWriter(const Job& job, const Fabric& fabric, const Lie& lie, const std::vector<std::int64_t>& needs)
      : lie_(lie), needs_(needs), usable_(lie.joint && !lie.on_its_side ? fabric.usable_width() / 2 : fabric.usable_width()) {
    wanted_.problem.limits = needs;
    wanted_.problem.joint = lie.joint;
    wanted_.problem.fold_trim = std::max(job.losses.fold_trim, Length::units(1));
    Wide area = 0;
    for (std::size_t p = 0; p < needs.size(); ++p) area += Wide(job.panels[p].area().square_units()) * needs[p];
    unit_ = area / (1 << 24) + 1;
    joint_.push_back(wanted_.problem.fold_trim);
    for (const Shape& s : shapes_of(job.panels, fabric)) add(s, job.panels[ix(s.panel)].area());
    for (std::size_t p = 0; p < needs.size(); ++p) wanted_.all += gain_of(job.panels[p].area()) * needs[p];
    wanted_.by_area = Length::units(static_cast<std::int64_t>(area / usable_.units() / lie.plies));
  }

  Wanted write(Length most) {
    if (!normal_.empty())
      wanted_.places = lie_.on_its_side ? places_after(joint_, normal_, most, 4000).with(normal_places(normal_, most, 4000).places())
                                        : normal_places(normal_, most, 4000);
    return std::move(wanted_);
  }

 private:
  // In a unit that keeps their sum within the search's range.
  std::int64_t gain_of(Area area) const {
    return std::max<std::int64_t>(1, static_cast<std::int64_t>(area.square_units() / unit_));
  }

  void add(const Shape& s, Area area) {
    if (needs_[ix(s.panel)] == 0) return;
    const Length across = lie_.on_its_side ? s.along : s.across, along = lie_.on_its_side ? s.across : s.along;
    const std::int64_t gain = gain_of(area);
    wanted_.problem.shapes.push_back({across, along, s.panel, s.turned, false, lie_.plies, gain * lie_.plies});
    normal_.push_back(s.along);
    if (!lie_.joint || !s.on_fold || !across.is_even()) return;
    wanted_.problem.shapes.push_back({across / 2, along, s.panel, s.turned, true, 1, gain});
    joint_.push_back(s.along / 2);
  }

  Lie lie_;
  const std::vector<std::int64_t>& needs_;
  Length usable_;
  Wide unit_ = 1;
  std::vector<Length> normal_, joint_;
  Wanted wanted_;
};

}  // namespace

std::optional<int> LastLengthFinder::operator()(int kind, int way, const std::vector<std::int64_t>& needs, Length most) {
  if (case_.kinds[ix(kind)].cloth.fabric.repeat.is_any())
    for (std::size_t p = 0; p < needs.size(); ++p)
      if (needs[p] > 0 && job_.panels[p].match != Match::none) return std::nullopt;
  Known& known = known_[{kind, way, needs}];
  if (!known.length && known.tried < most) search(kind, way, needs, most, known);
  if (known.length && lengths_.pool()[ix(*known.length)].size > most) return std::nullopt;
  return known.length;
}

int LastLengthFinder::added(int kind, int way, Length folded, const CutTree& inner) {
  const BatchKind& of = case_.kinds[ix(kind)];
  const FoldWay& as = of.ways[ix(way)];
  const Lie lie = lie_of(as);
  FoldPlan fold{as, {}, levels_of(as)};
  if (lie.joint && !lie.on_its_side) fold.lines = {of.cloth.fabric.width / 2};
  WholeTree tree(of.cloth.fabric, lie, folded, inner);
  return lengths_.add(kind, way, write_pattern(job_, of.cloth, fold, folded * (as.end_to_end ? 2 : 1), tree.take_tree()));
}

void LastLengthFinder::search(int kind, int way, const std::vector<std::int64_t>& needs, Length most, Known& known) {
  const BatchKind& of = case_.kinds[ix(kind)];
  const Lie lie = lie_of(of.ways[ix(way)]);
  known.tried = most;
  std::int64_t panels = 0;
  for (const std::int64_t n : needs) panels += n;
  if (!lie.is_served) return search_by_prices(kind, way, needs, most, known);
  if (panels > kMostPanels) return;
  const Length longest = std::min((most - job_.losses.allowance) / (lie.on_its_side ? 2 : 1), job_.table.length);
  if (longest <= Length()) return;
  Wanted wanted = WantedWriter(job_, of.cloth.fabric, lie, needs).write(longest);
  LimitedProblem& problem = wanted.problem;
  (lie.on_its_side ? problem.height : problem.width) =
      lie.joint && !lie.on_its_side ? of.cloth.fabric.usable_width() / 2 : of.cloth.fabric.usable_width();
  // Longer and longer until all find room, then halving what lies between.
  int low = wanted.places.floor_index(wanted.by_area), high = wanted.places.size(), place = low + 1;
  for (int tries = 0; tries < kMostTries && low < place && place < high; ++tries) {
    (lie.on_its_side ? problem.width : problem.height) = wanted.places[place];
    const LimitedAnswer answer = best_limited(problem, {steps_, 100'000, cancelled_});
    if (!answer.searched) return;
    if (answer.gain >= wanted.all) {
      known.length = added(kind, way, wanted.places[place], answer.tree);
      high = place;
    } else {
      low = place;
    }
    // As much longer as what surely does not fit needs, or a part of what did not.
    const Wide missing = Wide(wanted.by_area.units()) * (wanted.all - std::min(answer.bound, wanted.all)) / wanted.all;
    const Wide lacking = Wide(wanted.by_area.units()) * (wanted.all - answer.gain) / wanted.all / 4;
    const Length next = (low < 0 ? Length() : wanted.places[low]) + Length::units(static_cast<std::int64_t>(std::max(missing, lacking)));
    place = known.length ? (low + high) / 2 : std::max(low + 1, wanted.places.floor_index(next));
  }
}

void LastLengthFinder::search_by_prices(int kind, int way, const std::vector<std::int64_t>& needs, Length most, Known& known) {
  const BatchKind& of = case_.kinds[ix(kind)];
  std::vector<std::int64_t> prices = prices_by_area(job_);
  for (std::size_t p = 0; p < needs.size(); ++p)
    if (needs[p] == 0) prices[p] = 0;
  for (int round = 0; round < kMostPrices && !known.length; ++round)
    if (std::optional<Pattern> found = at_prices(of, way, needs, most, prices))
      known.length = lengths_.add(kind, way, *found);
}

// Of the lengths that sell for no less than the needs the first that holds them; where none
// does, what lacks in the last of them becomes dearer.
std::optional<Pattern> LastLengthFinder::at_prices(const BatchKind& of, int way, const std::vector<std::int64_t>& needs,
                                                   Length most, std::vector<std::int64_t>& prices) {
  if (!pricer_ || priced_ != std::pair(&of, prices)) {
    pricer_ = std::make_unique<LengthPricer>(job_, of.cloth, prices, kTableSteps, cancelled_);
    priced_ = {&of, prices};
  }
  std::int64_t all = 0;
  for (std::size_t p = 0; p < needs.size(); ++p) all += needs[p] * prices[p];
  std::vector<bool> lacks(needs.size(), false);
  int looks = 0;
  for (const PricedLength& length : pricer_->lengths(std::vector<int>{way}, of.ways)) {
    if (length.value < all) continue;
    if (length.length + job_.losses.allowance > most || looks++ == kMostLooks) break;
    Pattern pattern = pricer_->pattern(length, of.ways);
    const std::vector<std::int64_t> copies = copies_in(pattern, needs.size());
    for (std::size_t p = 0; p < needs.size(); ++p) lacks[p] = copies[p] < needs[p];
    if (std::none_of(lacks.begin(), lacks.end(), [](bool l) { return l; })) return pattern;
  }
  for (std::size_t p = 0; p < needs.size(); ++p)
    if (lacks[p]) prices[p] += prices[p] / 4 + 1;
  return std::nullopt;
}

}  // namespace foldyard
