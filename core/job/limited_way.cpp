#include "job/limited_way.h"

#include <algorithm>

#include "job/cloth_to_cut.h"
#include "job/limited_bound.h"
#include "job/write_pattern.h"
#include "measure/index.h"

namespace foldyard {

namespace {

constexpr int kMostRepeats = 20;

// Whether the positions that FoldLayout names hold every number of copies. Those
// of a fan whose legs are searched put as many plies as may be into its middle
// strip; within a limit fewer may be better.
bool holds_all_counts(const FoldWay& way) {
  return way.plain || (way.kind != FoldKind::fan && way.kind != FoldKind::quarters);
}
constexpr std::int64_t kMostStates = 300'000;
constexpr std::int64_t kMostColumns = 400'000;

}  // namespace

LimitedWay::LimitedWay(const Job& job, int roll, Aim aim, const FoldWay& way, const SearchBudget& budget,
                       std::vector<std::int64_t> start_prices)
    : case_(job, roll, aim, way, budget), pool_(case_), prices_(case_, std::move(start_prices)),
      steps_left_(budget.steps / (case_.worth_first ? 4 : 16)) {}

RollPlanner LimitedWay::planner(const std::vector<std::int64_t>& prices) const {
  return RollPlanner(case_.job, case_.roll, case_.aim, case_.budget, {case_.scale, prices});
}

std::optional<Problem> LimitedWay::search_prices(int rounds) {
  for (int round = 0; round < rounds && !case_.budget.is_cancelled(); ++round) {
    RollPlanner at_prices = planner(prices_.prices());
    case_.most_lengths = std::max<std::int64_t>(1, at_prices.most_lengths(case_.way));
    Result<RollPlanner::Searched> found = at_prices.search(case_.way);
    if (!found) return found.problem();
    area_bound_ = at_prices.area_bound();
    is_whole_ = is_whole_ && found->is_whole;
    for (const Pattern& pattern : found->plan.patterns) pool_.add(pattern);
    pool_.improve(prices_.best_prices(), 100'000);
    const bool goes_on = prices_.note(found->plan.yield, found->bound, pool_.value());
    bound_ = prices_.bound();
    if (!goes_on) break;
  }
  return std::nullopt;
}

// The densest pattern as often as the limits let it, then the rest of the roll
// planned with what the limits leave, and so on.
void LimitedWay::fill_in_turn() {
  Job rest = case_.job;
  Roll& roll = rest.rolls[ix(case_.roll)];
  std::vector<std::int64_t> left = case_.most;
  std::vector<std::pair<Pattern, std::int64_t>> lengths;
  for (int turn = 0; turn < 4 && !is_proved() && !case_.budget.is_cancelled(); ++turn) {
    Prices prices{case_.scale, prices_.best_prices()};
    for (std::size_t p = 0; p < left.size(); ++p)
      if (left[p] == 0) prices.panel[p] = std::max<std::int64_t>(0, case_.gains[p]);
    RollPlanner turn_planner(rest, case_.roll, case_.aim, case_.budget, prices);
    const Result<RollPlanner::Searched> found = turn_planner.search(case_.way);
    if (!found || found->plan.patterns.empty()) return;
    for (const Pattern& pattern : found->plan.patterns) pool_.add(pattern);
    std::optional<Pattern> next = cut_back(rest, roll, found->plan.patterns.front(), left);
    if (!next) return;
    const auto copies = copies_in(*next, left.size());
    const Length size = next->length + rest.losses.allowance;
    std::int64_t times = cloth_to_cut(roll, rest.losses).size().units() / size.units();
    for (std::size_t p = 0; p < left.size(); ++p)
      if (copies[p] > 0 && left[p] != kNoLimit) times = std::min(times, left[p] / copies[p]);
    for (std::size_t p = 0; p < left.size(); ++p)
      if (left[p] != kNoLimit) left[p] -= copies[p] * times;
    roll.length -= size * times;
    pool_.add(*next);
    lengths.push_back({*std::move(next), times});
    pool_.consider(lengths);
  }
}

void LimitedWay::close_gap() {
  RollPlanner at_prices = planner(prices_.best_prices());
  const Result<RollPlanner::Searched> priced = at_prices.search(case_.way);
  if (!priced || !priced->is_whole) return;
  for (const std::int64_t share : {32, 8, 2, 1}) {
    if (is_proved()) return;
    const std::int64_t gap = bound_ - pool_.value() - case_.scale;
    if (!close_gap(at_prices, *priced, gap / share)) return;
  }
}

// Enumerates every plan that falls short of the bound by no more than allowed.
bool LimitedWay::close_gap(RollPlanner& at_prices, const RollPlanner::Searched& priced, std::int64_t allowed) {
  const CopyLimits limits = case_.limits(prices_.best_prices());
  const limited::Counting counting(limits.most);
  if (!counting.fits()) return false;
  const Layouts layouts = at_prices.layouts_for(case_.way);
  NearStrips near(at_prices.tables(), layouts, case_.way.end_to_end, counting, case_.limit_of, limits.most,
                  {steps_left_, kMostColumns, case_.budget.cancelled});
  std::vector<RestBound::Lay> lays;
  for (const RollPlanner::PricedLay& lay : priced.lays) lays.push_back({lay.size, lay.value});
  const RestBound rest(lays, case_.capacity);
  const std::int64_t whole = prices_.bound() - prices_.given_back(prices_.best_prices());
  const std::int64_t slack = allowed + prices_.bound() - bound_;
  for (const RollPlanner::PricedLay& lay : priced.lays) {
    const std::int64_t loss = slack - (whole - lay.value - rest.at(case_.capacity - lay.size));
    if (loss >= 0) near.allow(lay.place, lay.lengths, lay.size, lay.value + lay.apart, loss, lay.apart);
  }
  const bool all_found = near.find();
  steps_left_ -= near.steps();
  if (!all_found) return false;
  return lay_series(near, limits, counting, at_prices.tables().along(case_.way.end_to_end), allowed);
}

std::vector<LimitedEntry> LimitedWay::entries_of(const NearStrips& near, const CopyLimits& limits,
                                                 const limited::Counting& counting) const {
  std::vector<LimitedEntry> entries;
  for (const NearStrips::Column& c : near.columns()) {
    std::vector<std::int64_t> copies;
    for (int p = 0; p < std::ssize(case_.limited); ++p) copies.push_back(counting.of(c.copies, p));
    entries.push_back({c.size, c.value + limits.price_of(copies), case_.worth_first ? c.cost : 0, std::move(copies)});
  }
  return entries;
}

Pattern LimitedWay::pattern_of(NearStrips& near, const NearStrips::Column& c, const Grid& along) const {
  const FoldPlan fold{case_.way, c.layout->lines(c.left_size, c.right_size), levels_of(case_.way)};
  return write_pattern(case_.job, case_.cloth(), fold, along[c.v] * (case_.way.end_to_end ? 2 : 1), near.tree_of(c));
}

// The best series of the columns found. A column of which a ply gives panels by
// the way counts with them once that is seen, and then the answer proves nothing.
bool LimitedWay::lay_series(NearStrips& near, const CopyLimits& limits, const limited::Counting& counting,
                            const Grid& along, std::int64_t allowed) {
  std::vector<LimitedEntry> entries = entries_of(near, limits, counting);
  bool as_counted = true;
  for (int again = 0; again < kMostRepeats; ++again) {
    const LimitedSeries series = best_limited_series(entries, case_.capacity, limits, pool_.value(),
                                                     {steps_left_, kMostStates, case_.budget.cancelled});
    steps_left_ -= series.steps;
    std::vector<std::pair<Pattern, std::int64_t>> lengths;
    bool all_as_counted = true;
    for (const int pick : series.picks) {
      const NearStrips::Column& c = near.columns()[ix(pick)];
      lengths.push_back({pattern_of(near, c, along), c.lengths});
      LimitedEntry& entry = entries[ix(pick)];
      std::vector<std::int64_t> copies = case_.of_limited(copies_in(lengths.back().first, case_.most.size()));
      for (std::int64_t& n : copies) n *= c.lengths;
      all_as_counted = all_as_counted && copies == entry.copies;
      entry.copies = std::move(copies);
    }
    for (const auto& [pattern, n] : lengths) pool_.add(pattern);
    pool_.consider(lengths);
    as_counted = as_counted && all_as_counted;
    if (!all_as_counted) continue;
    if (series.complete && as_counted && holds_all_counts(case_.way))
      bound_ = std::min(bound_, std::max({pool_.value(), series.gain, bound_ - allowed - 1}));
    return series.complete && as_counted;
  }
  return false;
}

Proof LimitedWay::proof() const {
  const Plan& plan = pool_.best();
  const bool by_worth = case_.aim == Aim::most_worth;
  const Worth reached = by_worth ? plan.worth : plan.net;
  const bool holds = is_whole_ && bound_ >= pool_.value() && !case_.budget.is_cancelled();
  if (holds && is_proved())
    return {reached, true,
            say("every place where a fold or a cut can matter was searched; within the limits on copies none gives more")};
  Worth bound = area_bound_;
  if (holds) bound = std::max(reached, std::min(bound, bound_in_worth(case_, bound_)));
  return {bound, false,
          holds ? say("this is the best found within the limits on copies, not proved best; the bound has a price for "
                      "every copy instead of a limit")
                : say("this is the best found within the limits on copies, not proved best; the bound counts every bit of "
                      "usable cloth")};
}

Words LimitedWay::refusal() const {
  if (case_.budget.is_cancelled()) return say("planning was stopped before this way");
  if (!case_.worth_first) return say("within the limits on copies no panel was found that is worth the time of cutting it");
  return bound_ < case_.scale ? say("within the limits on copies no panel can be cut so")
                              : say("no way was found to cut within the limits on copies");
}

Result<Plan> LimitedWay::run(int rounds) {
  if (std::optional<Problem> problem = search_prices(rounds)) return *std::move(problem);
  if (!is_proved()) fill_in_turn();
  pool_.improve(prices_.best_prices(), 2'000'000);
  if (!is_proved() && !case_.budget.is_cancelled()) close_gap();
  if (!pool_.has_plan())
    return Problem{way_name(case_.way), refusal(), ""};
  Plan plan = pool_.best();
  plan.proof = proof();
  return plan;
}

}  // namespace foldyard
