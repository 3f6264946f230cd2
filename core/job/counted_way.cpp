#include "job/counted_way.h"

#include <algorithm>

#include "job/hand_edit.h"
#include "job/limited_bound.h"
#include "job/limited_prices.h"
#include "measure/index.h"
#include "measure/wide.h"

namespace foldyard {

namespace {

constexpr std::size_t kMostPatternsKept = 600;
constexpr std::size_t kPatternsOfARound = 24;
constexpr std::int64_t kNone = std::int64_t{1} << 61;

}  // namespace

CountedWay::CountedWay(const Job& job, int roll, Aim aim, const FoldWay& way, const Hand& hand,
                       const SearchBudget& budget)
    : case_(job, roll, aim, way, budget), hand_(hand), least_(least_of(job, hand)), bound_(kNone) {
  for (int p = 0; p < std::ssize(least_); ++p)
    if (least_[ix(p)] > 0 || case_.most[ix(p)] != kNoLimit) panels_.push_back(p);
  best_prices_.assign(least_.size(), 0);
}

std::vector<std::int64_t> CountedWay::counted(const std::vector<std::int64_t>& by_panel) const {
  std::vector<std::int64_t> list;
  for (const int p : panels_) list.push_back(by_panel[ix(p)]);
  return list;
}

CountBounds CountedWay::bounds(const std::vector<std::int64_t>& prices) const {
  CountBounds bounds{counted(least_), counted(case_.most), counted(prices)};
  for (std::int64_t& most : bounds.most)
    if (most == kNoLimit) most = CountBounds::kNoMost;
  return bounds;
}

// As the gain of only one panel counts, the bound is how many there can be.
std::optional<Problem> CountedWay::find_most() {
  for (const int p : panels_) {
    const auto at = static_cast<std::size_t>(p);
    if (least_[at] == 0) continue;
    const Panel& panel = case_.job.panels[at];
    if (least_[at] > case_.most[at])
      return refused(case_.way, say("%1 of %2 are asked for, but the job wants at most %3", least_[at], panel.name,
                                    case_.most[at]));
    Job only = case_.job;
    for (Panel& other : only.panels) other.at_most.reset();
    Prices prices{1, {}};
    for (const Panel& other : only.panels) prices.panel.push_back(other.worth.parts());
    prices.panel[at] = panel.worth.parts() - 1;
    RollPlanner planner(only, case_.roll, Aim::most_worth, case_.budget, prices);
    const auto found = planner.search_within(case_.way, hand_, kPatternsOfARound);
    if (!found) return found.problem();
    keep(found->best.plan.patterns);
    keep(found->patterns);
    const std::int64_t most = std::max(found->best.bound, found->best.plan.yield[at]);
    if (found->best.is_whole && most < least_[at])
      return refused(case_.way, say("there is no way to get %1 of %2 from this roll: at most %3, proved", least_[at],
                                    panel.name, most));
  }
  return std::nullopt;
}

std::optional<Problem> CountedWay::round_at(const std::vector<std::int64_t>& prices, Round& round) {
  RollPlanner planner(case_.job, case_.roll, case_.aim, case_.budget, {case_.scale, prices});
  const auto found = planner.search_within(case_.way, hand_, kPatternsOfARound);
  if (!found) return found.problem();
  case_.most_lengths = std::max<std::int64_t>(1, planner.most_lengths(case_.way));
  area_bound_ = planner.area_bound();
  is_whole_ = is_whole_ && found->best.is_whole;
  keep(found->best.plan.patterns);
  keep(found->patterns);
  round.priced = found->best.bound;
  round.copies = counted(found->best.plan.yield);
  const CountBounds b = bounds(prices);
  const Wide whole = Wide(round.priced) + b.given_back(std::vector<std::int64_t>(panels_.size(), 0));
  if (whole < bound_) {
    bound_ = static_cast<std::int64_t>(whole);
    best_prices_ = prices;
  }
  return std::nullopt;
}

// With this, the panel is worth more for its cloth than any other.
std::int64_t CountedWay::dearest_bonus(int panel) const {
  const Wide area = case_.job.panels[ix(panel)].area().square_units();
  Wide bonus = 0;
  for (std::size_t p = 0; p < case_.gains.size(); ++p)
    if (case_.gains[p] > 0) bonus = std::max(bonus, Wide(case_.gains[p]) * area / case_.job.panels[p].area().square_units());
  return static_cast<std::int64_t>(2 * bonus + case_.scale);
}

// One panel asked for: between a bonus that gives too few and one that gives enough,
// the bonus at which both are worth the same is next. Where nothing lies above it
// there, no bonus gives a lower bound.
std::optional<Problem> CountedWay::close_in(int rounds) {
  const int p = panels_.front();
  const auto at = static_cast<std::size_t>(p);
  std::vector<std::int64_t> prices(least_.size(), 0);
  Round few, enough;
  if (auto problem = round_at(prices, few)) return problem;
  std::int64_t low = 0, high = dearest_bonus(p);
  prices[at] = -high;
  if (auto problem = round_at(prices, enough)) return problem;
  for (int round = 0; round < rounds && !case_.budget.is_cancelled(); ++round) {
    const std::int64_t more = enough.copies[0] - few.copies[0];
    if (few.copies[0] >= least_[at] || enough.copies[0] < least_[at] || more <= 0) return std::nullopt;
    const Wide own_few = Wide(few.priced) - Wide(low) * few.copies[0];
    const Wide own_enough = Wide(enough.priced) - Wide(high) * enough.copies[0];
    const std::int64_t next = static_cast<std::int64_t>((own_few - own_enough) / more);
    if (next <= low || next >= high) return std::nullopt;
    Round middle;
    prices[at] = -next;
    if (auto problem = round_at(prices, middle)) return problem;
    if (middle.priced <= own_few + Wide(next) * few.copies[0]) return std::nullopt;
    (middle.copies[0] < least_[at] ? few : enough) = middle;
    (middle.copies[0] < least_[at] ? low : high) = next;
  }
  return std::nullopt;
}

// Towards a bound somewhat lower, along the copies too many and too few, each in
// proportion to its panel's gain.
std::vector<std::int64_t> CountedWay::step_from(const std::vector<std::int64_t>& prices, const Round& round, int halvings) const {
  std::vector<std::int64_t> over(prices.size(), 0), next = prices;
  const std::int64_t dearest = std::max<std::int64_t>(1, *std::max_element(case_.gains.begin(), case_.gains.end()));
  int shift = 0;
  while (dearest >> shift >= std::int64_t{1} << 16) ++shift;
  const auto weight = [&](std::size_t p) { return std::max<std::int64_t>(1, case_.gains[p] >> shift); };
  Wide square = 0;
  for (std::size_t i = 0; i < panels_.size(); ++i) {
    const auto p = static_cast<std::size_t>(panels_[i]);
    const std::int64_t cut = round.copies[i], most = case_.most[p];
    if (prices[p] > 0 || (prices[p] == 0 && cut > most)) over[p] = cut - std::min<std::int64_t>(most, 1 << 20);
    else if (prices[p] < 0 || cut < least_[p]) over[p] = cut - least_[p];
    square += Wide(weight(p)) * over[p] * weight(p) * over[p];
  }
  if (square == 0) return prices;
  const Wide stride = std::max<std::int64_t>(1, std::abs(bound_) / 16 >> halvings);
  for (const int panel : panels_) {
    const auto p = static_cast<std::size_t>(panel);
    const Wide moved = prices[p] + stride * (Wide(weight(p)) * weight(p) * over[p]) / square;
    const Wide lowest = least_[p] > 0 && prices[p] <= 0 ? -dearest_bonus(panel) : 0;
    const Wide highest = case_.most[p] != kNoLimit && prices[p] >= 0 ? std::max<std::int64_t>(0, case_.gains[p]) : 0;
    next[p] = static_cast<std::int64_t>(std::clamp<Wide>(moved, lowest, highest));
  }
  return next;
}

std::optional<Problem> CountedWay::descend(int rounds) {
  std::vector<std::int64_t> prices(least_.size(), 0);
  int halvings = 0, waited = 0;
  for (int round = 0; round < rounds && halvings <= PriceSearch::kHalvings && !case_.budget.is_cancelled(); ++round) {
    Round at;
    const std::int64_t before = bound_;
    if (auto problem = round_at(prices, at)) return problem;
    if (bound_ < before) waited = 0;
    else if (++waited >= PriceSearch::kPatience) ++halvings, waited = 0;
    std::vector<std::int64_t> next = step_from(prices, at, halvings);
    if (next == prices) return std::nullopt;
    prices = std::move(next);
  }
  return std::nullopt;
}

std::optional<Problem> CountedWay::search_prices(int rounds) {
  const bool one = panels_.size() == 1 && case_.most[ix(panels_.front())] == kNoLimit;
  return one ? close_in(rounds) : descend(rounds);
}

void CountedWay::keep(const std::vector<Pattern>& patterns) {
  for (const Pattern& pattern : patterns) {
    if (kept_.size() >= kMostPatternsKept) return;
    if (std::any_of(kept_.begin(), kept_.end(), [&](const Kept& k) { return k.pattern == pattern; })) continue;
    const Objective& aim = case_.costs.objective;
    kept_.push_back({pattern, copies_in(pattern, least_.size()),
                     aim.per_cut * std::ssize(pattern.cuts) + aim.per_unit * pattern.travel.units()});
  }
}

// An aim that weighs time has an entry for each number of lengths in a lay.
void CountedWay::lay() {
  std::vector<LimitedEntry> entries;
  std::vector<std::pair<const Pattern*, std::int64_t>> of;
  for (const Kept& k : kept_)
    for (std::int64_t n = 1; n <= (case_.worth_first ? 1 : case_.most_lengths); ++n) {
      const Length size = (k.pattern.length + case_.job.losses.allowance) * n;
      if (size > case_.capacity) break;
      std::vector<std::int64_t> copies = counted(k.copies);
      for (std::int64_t& c : copies) c *= n;
      const std::int64_t cost = k.cost + case_.costs.per_length * n + case_.costs.per_lay;
      entries.push_back({size, case_.gain_of(k.copies) * n - (case_.worth_first ? 0 : cost), case_.worth_first ? cost : 0,
                         std::move(copies)});
      of.push_back({&k.pattern, n});
    }
  const CountedSeries series = best_counted_series(entries, case_.capacity, bounds(best_prices_),
                                                   {std::min<std::int64_t>(case_.budget.steps / 8, 5'000'000), 200'000, case_.budget.cancelled});
  std::vector<std::pair<Pattern, std::int64_t>> lengths;
  for (const int pick : series.picks) lengths.push_back({*of[ix(pick)].first, of[ix(pick)].second});
  consider(lengths);
}

bool CountedWay::is_enough(const Plan& plan) const {
  for (std::size_t p = 0; p < least_.size(); ++p)
    if (plan.yield[p] < least_[p]) return false;
  return is_within(plan.yield, case_.most);
}

void CountedWay::consider(const std::vector<std::pair<Pattern, std::int64_t>>& lengths) {
  if (lengths.empty()) return;
  Plan plan = laid(case_, lengths);
  if (!is_enough(plan)) return;
  value_ = case_.value_of(plan);
  plan_ = std::move(plan);
}

Words CountedWay::asked_words() const {
  Words words;
  for (const int p : panels_)
    if (const std::int64_t least = least_[ix(p)]; least > 0) {
      const Words one = say("%1 of %2", least, case_.job.panels[ix(p)].name);
      words = words.empty() ? one : say("%1 and %2", words, one);
    }
  return words;
}

Proof CountedWay::proof() const {
  const Worth reached = case_.aim == Aim::most_worth ? plan_.worth : plan_.net;
  if (is_proved() && !case_.budget.is_cancelled() && plan_.lost.empty())
    return {reached, true, say("with what is set by hand it reaches the bound that has a price for every copy; none gives more")};
  const bool holds = is_whole_ && !case_.budget.is_cancelled() && bound_ >= value_;
  const Worth bound = holds ? std::max(reached, std::min(area_bound_, bound_in_worth(case_, bound_))) : area_bound_;
  return {bound, false,
          holds ? say("this is the best found with what is set by hand, not proved best; the bound has a price for every copy")
                : say("this is the best found with what is set by hand, not proved best; the bound counts every bit of usable cloth")};
}

Result<Plan> CountedWay::run(int rounds) {
  if (auto problem = find_most()) return *std::move(problem);
  if (auto problem = search_prices(rounds)) return *std::move(problem);
  lay();
  if (case_.budget.is_cancelled() && plan_.lengths.empty()) return refused(case_.way, say("planning was stopped before this way"));
  if (plan_.lengths.empty()) {
    const Words asked = asked_words();
    return refused(case_.way, asked.empty() ? say("with what is set by hand no plan within the limits on copies was found")
                                            : say("no plan with at least %1 was found; that there is none is not proved", asked));
  }
  Plan plan = plan_;
  plan.proof = proof();
  return plan;
}

}  // namespace foldyard
