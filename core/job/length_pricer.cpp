#include "job/length_pricer.h"

#include <numeric>

#include "job/cloth_to_cut.h"
#include "job/write_pattern.h"
#include "measure/index.h"
#include "measure/stop.h"

namespace foldyard {

namespace {

// Lengths of a batch are laid without regard to the pattern.
bool must_match_on(const Roll& cloth, const Panel& panel) {
  return cloth.fabric.repeat.is_any() && panel.match != Match::none;
}

constexpr std::int64_t kMostPanelsALength = 10'000;

// The longest that holds so many of the smallest panel; each panel lies on it.
Length longest_of(const std::vector<Panel>& panels, Length width) {
  Area smallest = panels.front().area();
  Length largest;
  for (const Panel& p : panels) {
    smallest = std::min(smallest, p.area());
    largest = std::max({largest, p.along, p.may_turn ? p.across : Length()});
  }
  const Wide most = Wide(kMostPanelsALength) * smallest.square_units() / width.units();
  return std::max(largest, most < kLongest.units() ? Length::units(static_cast<std::int64_t>(most)) : kLongest);
}

Roll bare(Roll cloth) {
  cloth.flaws.clear();
  return cloth;
}

}  // namespace

std::vector<std::int64_t> prices_by_area(const Job& job) {
  constexpr std::int64_t kSquareMm25 = 25 * Length::kUnitsPerMm * Length::kUnitsPerMm;
  std::vector<std::int64_t> prices;
  for (const Panel& p : job.panels) prices.push_back(1 + p.area().square_units() / kSquareMm25);
  return prices;
}

LengthPricer::LengthPricer(const Job& job, const Roll& cloth, const std::vector<std::int64_t>& prices,
                           std::int64_t steps, const std::atomic<bool>* cancelled)
    : job_(job), cloth_(cloth), sold_(job), cancelled_(cancelled) {
  sold_.rolls = {bare(cloth)};
  sold_.panels.clear();
  for (std::size_t p = 0; p < prices.size(); ++p) {
    if (prices[p] <= 0 || must_match_on(cloth, job.panels[p])) continue;
    sold_.panels.push_back(job.panels[p]);
    sold_.panels.back().worth = Worth::parts(prices[p]);
    sold_.panels.back().at_most.reset();
    panels_.push_back(static_cast<int>(p));
  }
  if (panels_.empty()) return;
  const Length longest = longest_of(sold_.panels, cloth.fabric.usable_width());
  is_shortened_ = longest < std::min(job.table.length, cloth_to_cut(cloth, job.losses).size() - job.losses.allowance);
  sold_.table.length = std::min(job.table.length, longest);
  SearchBudget budget{steps, cancelled};
  budget.bytes = kMostBytes;
  planner_ = std::make_unique<RollPlanner>(sold_, 0, Aim::most_worth, budget);
}

bool LengthPricer::is_whole() const {
  if (!planner_) return true;
  return !is_set(cancelled_) && !is_shortened_ && !planner_->tables().is_thinned();
}

Wide LengthPricer::most_by_area(Length length) const {
  Wide value = 0, area = 1;
  for (const Panel& p : sold_.panels)
    if (p.worth.parts() * area > value * p.area().square_units()) {
      value = p.worth.parts();
      area = p.area().square_units();
    }
  return value * (cloth_.fabric.usable_width() * length).square_units() / area + 1;
}

std::vector<PricedLength> LengthPricer::priced(const Searched& searched, int way, bool end_to_end) {
  std::vector<PricedLength> lengths;
  const Grid& along = planner_->tables().along(end_to_end);
  const Length longest = cloth_to_cut(cloth_, job_.losses).size() - job_.losses.allowance;
  const std::vector<Cell>& cells = searched.search->cells();
  for (int v = 0; v < std::ssize(cells); ++v) {
    const Length flat = along[v] * (end_to_end ? 2 : 1);
    if (cells[ix(v)].gain > 0 && flat <= longest)
      lengths.push_back({way, v, flat, cells[ix(v)].gain});
  }
  return lengths;
}

const LengthPricer::Searched& LengthPricer::searched(const FoldWay& way) {
  const auto [found, is_new] = searched_.try_emplace(way);
  if (is_new) {
    found->second.layouts = planner_->layouts_for(way);
    found->second.search =
        std::make_unique<StripSearch>(planner_->tables(), found->second.layouts, way.end_to_end, 1);
  }
  return found->second;
}

bool LengthPricer::may_cut(const FoldWay& way) const {
  return planner_ && planner_->refusal(way).empty() && !planner_->layouts_for(way).empty();
}

std::vector<PricedLength> LengthPricer::lengths(const std::vector<FoldWay>& ways) {
  std::vector<int> all(ways.size());
  std::iota(all.begin(), all.end(), 0);
  return lengths(all, ways);
}

std::vector<PricedLength> LengthPricer::lengths(const std::vector<int>& asked, const std::vector<FoldWay>& ways) {
  std::vector<PricedLength> all;
  for (const int w : asked) {
    const FoldWay& way = ways[ix(w)];
    if (!planner_ || !may_cut(way)) continue;
    const auto of_way = priced(searched(way), w, way.end_to_end);
    all.insert(all.end(), of_way.begin(), of_way.end());
  }
  return all;
}

std::vector<PricedLength> LengthPricer::bounding(bool end_to_end) {
  if (!planner_) return {};
  TableSet& tables = planner_->tables();
  Searched open;
  open.layouts = layouts_of(FoldWay{}, cloth_.fabric, {tables.fold_trim(), tables.least_flap(), kLongest});
  open.search = std::make_unique<StripSearch>(tables, open.layouts, end_to_end, 1);
  return priced(open, 0, end_to_end);
}

Pattern LengthPricer::pattern(const PricedLength& length, const std::vector<FoldWay>& ways) {
  const FoldWay& way = ways[ix(length.way)];
  const StripChoice choice = searched(way).search->choice(length.place);
  const FoldPlan fold{way, choice.layout->lines(choice.left.size, choice.right.size), levels_of(way)};
  CutTree tree = strip_tree(planner_->tables(), choice, way.end_to_end, 1, length.place);
  for (CutNode& node : tree.nodes)
    if (node.panel >= 0) node.panel = panels_[ix(node.panel)];
  return write_pattern(job_, cloth_, fold, length.length, std::move(tree));
}

}  // namespace foldyard
