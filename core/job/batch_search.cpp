#include "job/batch_search.h"

#include <algorithm>
#include <cmath>

#include "batch/order_pieces.h"
#include "batch/order_refold.h"
#include "batch/order_required.h"
#include "job/length_pricer.h"
#include "measure/index.h"

namespace foldyard {

namespace {

constexpr int kMostPriceRounds = 60;
constexpr int kMostBoundRounds = 2;
constexpr int kServedTurns = 24;
constexpr int kMostToImprove = 400;  // lengths in the model of the steps
constexpr int kMostFewRounds = 10;
constexpr std::int64_t kFewTableSteps = 3'000'000;  // of a table that need not hold every place
constexpr int kMostRefolds = 60;
constexpr int kLengthsFolded = 10;  // so many times more tries under all ways
constexpr std::int64_t kLastSteps = 4'000;
constexpr std::int64_t kRollSteps = 2'000'000;  // of a roll's series in the bound

// So much that no cloth saved outweighs a piece that must be made.
ModelWeights weights_for(const Job& job, const OrderCase& order) {
  double dearest = 0, most = 1;
  for (const CaseRoll& roll : order.rolls) dearest = std::max(dearest, roll.price.by_metre());
  for (const PieceLine& line : order.lines) {
    double metres = 0;
    for (const PieceNeed& need : line.needs)
      metres += static_cast<double>(need.count) * job.panels[ix(need.panel)].along.in_mm() / 1000;
    most = std::max(most, dearest * metres * 1e4 / static_cast<double>(line.worth));
  }
  return {1, most * 400, 1, most * 20};
}

Wide divided_up(Wide a, Wide b) { return a >= 0 ? (a + b - 1) / b : -(-a / b); }

std::int64_t all_that_must(const OrderCase& order) {
  std::int64_t worth = 0;
  for (const PieceLine& line : order.lines) worth += line.worth * line.must;
  return worth;
}

}  // namespace

BatchSearch::BatchSearch(const Job& job, const BatchCase& c, const BatchBudget& budget, std::function<void()> found)
    : job_(job), case_(c), order_(c.order), budget_(budget), found_(std::move(found)), markets_(markets_of(c.order)),
      lengths_(job, c), last_(job, c, lengths_, kLastSteps, budget.cancelled), areas_(prices_by_area(job)),
      weights_(weights_for(job, c.order)), cost_{OrderModel(c.order, weights_), false, false, 0}, base_(kept_state()), best_(base_) {
  cost_.model.set_state(base_, lengths_.pool());
  bounds_.filled = all_that_must(c.order);
}

bool BatchSearch::is_proved() const {
  return has_plan_ && bounds_.has_cost && score_.filled >= bounds_.filled && score_.short_of_rules == 0 && score_.uncut == 0 &&
         score_.cost <= bounds_.cost;
}

// What is kept, before anything is searched.
OrderState BatchSearch::kept_state() {
  OrderState state = empty_state(order_);
  for (const KeptOnRoll& kept : case_.kept) {
    const int length = lengths_.keep(order_.rolls[ix(kept.roll)].kind, kept.way, kept.pattern);
    for (const int stretch : kept.stretches) state.rolls[ix(kept.roll)].lengths.push_back({length, stretch});
  }
  state.pieces = pieces_from(order_, yield_of(order_, state, lengths_.pool()), state.pieces);
  return state;
}

FillTools BatchSearch::tools(bool with_last) {
  FillTools tools{order_, lengths_.pool(), areas_, {}};
  if (with_last)
    tools.last = [this](int kind, int way, const std::vector<std::int64_t>& needs, Length most) {
      return last_(kind, way, needs, most);
    };
  tools.ways.assign(case_.kinds.size(), 1);
  tools.cancelled = budget_.cancelled;
  return tools;
}

std::int64_t BatchSearch::few_steps() const { return std::min(budget_.steps, kFewTableSteps); }

// Of each panel by itself every length, so that every panel can be cut.
void BatchSearch::add_single_lengths(int kind) {
  const auto wanted = panels_wanted(order_);
  for (int p = 0; p < order_.panels; ++p) {
    const bool is_wanted = std::any_of(markets_.begin(), markets_.end(), [&](const Market& m) {
      return m.kind == kind && wanted[ix(m.cloth)][ix(p)];
    });
    if (is_wanted && !budget_.is_cancelled()) add_single_lengths(kind, p);
  }
}

// Each length holds more of the panel than the one before; together no more than a share of
// what patterns may take, but the first is always there.
void BatchSearch::add_single_lengths(int kind, int panel) {
  constexpr std::int64_t kPrice = 1000;
  const BatchKind& of = case_.kinds[ix(kind)];
  std::vector<std::int64_t> prices(ix(order_.panels), 0);
  prices[ix(panel)] = kPrice;
  LengthPricer pricer(job_, of.cloth, prices, few_steps(), budget_.cancelled);
  std::map<int, std::int64_t> most;  // panels, by way
  std::int64_t room = BatchLengths::kMostPanels / 2 / order_.kinds / order_.panels;
  bool has_any = false;
  for (const PricedLength& l : pricer.lengths({of.ways.begin(), of.ways.begin() + of.priced})) {
    const std::int64_t panels = l.value / kPrice;
    if (panels <= most[l.way] || (has_any && panels > room)) continue;
    most[l.way] = panels;
    room -= panels;
    has_any = true;
    lengths_.add(kind, l.way, pricer.pattern(l, of.ways));
  }
}

// Lengths of many panels, priced by area, about a dozen.
void BatchSearch::add_by_area(const Market& market) {
  const BatchKind& of = case_.kinds[ix(market.kind)];
  std::vector<std::int64_t> prices = areas_;
  const auto wanted = panels_wanted(order_)[ix(market.cloth)];
  for (std::size_t p = 0; p < prices.size(); ++p)
    if (!wanted[p]) prices[p] = 0;
  LengthPricer pricer(job_, of.cloth, prices, few_steps(), budget_.cancelled);
  const std::vector<PricedLength> all = pricer.lengths({of.ways.begin(), of.ways.begin() + 1});
  const std::size_t stride = std::max<std::size_t>(1, all.size() / 12);
  std::int64_t room = BatchLengths::kMostPanels / 4 / std::ssize(markets_);
  for (std::size_t i = all.size(); i >= 1; i = i > stride ? i - stride : 0) {
    Pattern pattern = pricer.pattern(all[i - 1], of.ways);
    if (std::ssize(pattern.panels) > room) continue;
    room -= std::ssize(pattern.panels);
    lengths_.add(market.kind, all[i - 1].way, pattern);
  }
}

void BatchSearch::add_first_lengths() {
  for (int k = 0; k < order_.kinds; ++k) add_single_lengths(k);
  for (const Market& market : markets_)
    if (!budget_.is_cancelled()) add_by_area(market);
}

// A kind that may only be cut end to end has no other way.
bool BatchSearch::is_for(const Stage& stage, const OrderLength& length) const {
  const auto& ways = case_.kinds[ix(length.kind)].ways;
  return stage.end_to_end || !ways[ix(length.way)].end_to_end;
}

void BatchSearch::allow_all(Stage& stage) const {
  for (; stage.allowed < lengths_.pool().size(); ++stage.allowed)
    for (int s = 0; s < std::ssize(order_.sources); ++s) {
      const OrderLength& length = lengths_.pool()[stage.allowed];
      if (is_for(stage, length) && length.kind == order_.sources[ix(s)].kind && length.size <= order_.sources[ix(s)].room)
        stage.model.allow(s, static_cast<int>(stage.allowed), lengths_.pool());
    }
}

// Until no length is worth adding. A bound needs lengths folded end to end, too: first
// about, from small tables, then exactly.
void BatchSearch::price_out(Stage& stage) {
  const int rounds = stage.end_to_end ? kMostFewRounds : kMostPriceRounds;
  for (int round = 0; round < rounds && !is_over(); ++round)
    if (!price(stage, false, stage.end_to_end ? few_steps() : budget_.steps)) break;
  for (int round = 0; stage.end_to_end && round < kMostBoundRounds && !is_over(); ++round)
    if (!price(stage, true, budget_.steps)) break;
}

std::vector<Offer> BatchSearch::offers_at(const Stage& stage, const OrderPrices& prices, bool for_bound, std::int64_t steps) const {
  Asking asking{job_, case_, prices, {}, stage.end_to_end, for_bound, steps, budget_.cancelled};
  asking.most_panels = lengths_.room() / std::max<std::int64_t>(1, std::ssize(markets_));
  for (int s = 0; s < std::ssize(order_.sources); ++s) asking.metre_prices.push_back(stage.model.metre_price(s));
  return offers_of(markets_, asking);
}

// False where all were known, or there is no room for more.
bool BatchSearch::add_offered(const std::vector<Offer>& offers) {
  const std::size_t known = lengths_.pool().size();
  for (std::size_t m = 0; m < markets_.size(); ++m)
    for (const auto& [way, pattern] : offers[m].lengths)
      if (lengths_.room() > 0) lengths_.add(markets_[m].kind, way, pattern);
  return lengths_.pool().size() > known;
}

// One round at the model's prices. False where no length is worth adding.
bool BatchSearch::price(Stage& stage, bool for_bound, std::int64_t steps) {
  allow_all(stage);
  if (!stage.model.solve()) return false;
  const OrderPrices prices = whole_prices(order_, stage.model);
  const std::vector<Offer> offers = offers_at(stage, prices, for_bound, steps);
  if (budget_.is_cancelled()) return false;
  const bool is_more = add_offered(offers);
  allow_all(stage);
  if (for_bound) note_bound(stage, offers, prices);
  return is_more;
}

// What rounding each roll's cost down may take off in all.
std::int64_t BatchSearch::uneven_cost() const {
  std::int64_t rolls = 0;
  for (const CaseRoll& roll : order_.rolls) rolls += roll.price.parts * 32 % roll.price.units != 0;
  return rolls;
}

void BatchSearch::note_bound(const Stage& stage, const std::vector<Offer>& offers, OrderPrices prices) {
  if (stage.to_fill)
    note_fill_bound(offers, std::move(prices));
  else
    note_cost_bound(offers, std::move(prices));
}

// Where not all can be made, a plan's cost less the worth of what it fills, that
// weighed as in the model, is bound instead; what fills the bound has so much of it.
void BatchSearch::note_cost_bound(const std::vector<Offer>& offers, OrderPrices prices) {
  const bool all = bounds_.filled == all_that_must(order_);
  const bool keeps_rules = score_.short_of_rules == 0;
  if (keeps_rules != bounds_.keeps_rules) bounds_.has_cost = false;
  bounds_.keeps_rules = keeps_rules;
  for (auto& rules : prices.rules)
    for (RulePrice& rule : rules)
      if (!bounds_.keeps_rules) rule.at_least = 0;
  const auto weight = static_cast<std::int64_t>(weights_.must);
  prices.all_must = all;
  if (!all || !keeps_rules) prices.opening.clear();
  prices.must = all ? 0 : weight * prices.scale;
  const auto least = least_of_all(order_, markets_, offers, prices, kRollSteps, budget_.cancelled);
  if (!least) return;
  const Wide bound = *least + (all ? Wide(0) : Wide(weight) * prices.scale * bounds_.filled);
  const auto cost = static_cast<std::int64_t>(divided_up(bound, prices.scale)) - uneven_cost();
  bounds_.cost = bounds_.has_cost ? std::max(bounds_.cost, cost) : cost;
  bounds_.has_cost = true;
}

void BatchSearch::note_fill_bound(const std::vector<Offer>& offers, OrderPrices prices) {
  prices.cloth = prices.may = 0;
  prices.opening.clear();
  prices.must = prices.scale;
  for (auto& rules : prices.rules)
    for (RulePrice& rule : rules) rule.at_least = 0;
  const auto least = least_of_all(order_, markets_, offers, prices, kRollSteps, budget_.cancelled);
  if (!least) return;
  const Wide most = -divided_up(*least, prices.scale);
  bounds_.filled = static_cast<std::int64_t>(std::min<Wide>(bounds_.filled, most));
}

void BatchSearch::bound(bool to_fill) {
  const ModelWeights weights = to_fill ? ModelWeights{0, 1, 0, 0} : weights_;
  Stage stage{OrderModel(order_, weights), to_fill, true, 0};
  stage.model.set_state(base_, lengths_.pool());
  price_out(stage);
}

// At the least weight of what must be made at which the model fills as much as the best plan.
double BatchSearch::weight_that_serves() const {
  double low = 1e-6, high = weights_.must;
  for (int turn = 0; turn < kServedTurns && !budget_.is_cancelled(); ++turn) {
    const double weight = std::sqrt(low * high);
    Stage stage{OrderModel(order_, {1, weight, 1, 0}), false, true, 0};
    stage.model.set_state(base_, lengths_.pool());
    allow_all(stage);
    if (!stage.model.solve()) return high;
    double filled = 0;
    for (int l = 0; l < std::ssize(order_.lines); ++l) {
      double pieces = 0;
      for (int c = 0; c < std::ssize(order_.cloths); ++c) pieces += stage.model.pieces(l, c);
      filled += std::min(pieces, static_cast<double>(order_.lines[ix(l)].must)) * static_cast<double>(order_.lines[ix(l)].worth);
    }
    (filled + 0.5 < static_cast<double>(score_.filled) ? low : high) = weight;
  }
  return high;
}

// A plan costs no less than the least of cost less what is filled, that weighed, and what
// plans of interest fill besides: whatever the weight.
void BatchSearch::bound_served() {
  Stage stage{OrderModel(order_, {1, weight_that_serves(), 1, 0}), false, true, 0};
  stage.model.set_state(base_, lengths_.pool());
  const double weight = stage.model.weights().must;
  for (int round = 0; round < kMostBoundRounds && !budget_.is_cancelled(); ++round) {
    allow_all(stage);
    if (!stage.model.solve()) return;
    OrderPrices prices = whole_prices(order_, stage.model);
    const std::vector<Offer> offers = offers_at(stage, prices, true, budget_.steps);
    if (budget_.is_cancelled()) return;
    prices.opening.clear();
    prices.must = std::llround(weight * static_cast<double>(prices.scale));
    for (auto& rules : prices.rules)
      for (RulePrice& rule : rules) rule.at_least = 0;
    const auto least = least_of_all(order_, markets_, offers, prices, kRollSteps, budget_.cancelled);
    if (!least) return;
    const Wide bound = *least + Wide(prices.must) * score_.filled;
    const auto cost = static_cast<std::int64_t>(divided_up(bound, prices.scale)) - uneven_cost();
    bounds_.served_cost = std::max(bounds_.served_cost.value_or(cost), cost);
    if (!add_offered(offers)) return;
  }
}

void BatchSearch::consider(OrderState state) {
  const OrderScore score = score_of(order_, state, lengths_.pool());
  if (has_plan_ && !is_better(order_, score, score_)) return;
  best_ = std::move(state);
  score_ = score;
  has_plan_ = true;
  if (found_) found_();
}

void BatchSearch::dive_from(OrderState state, double share, bool with_last) {
  allow_all(cost_);
  const FillTools fill = tools(with_last);
  OrderState next = dive(fill, cost_.model, std::move(state), {share, 400});
  drop_idle_lengths(fill, next);
  cut_required(order_, lengths_.pool(), next, budget_.cancelled);
  consider(std::move(next));
  cost_.model.set_state(base_, lengths_.pool());
}

// Of the lengths of the pool those that cost least above what they sell for: few, so
// that the model is soon solved.
std::vector<int> BatchSearch::best_lengths() {
  std::vector<std::pair<double, int>> lost;
  cost_.model.set_state(base_, lengths_.pool());
  if (!cost_.model.solve()) return {};
  for (int i = 0; i < std::ssize(lengths_.pool()); ++i) {
    const OrderLength& length = lengths_.pool()[ix(i)];
    double least = 1e9;
    for (int s = 0; s < std::ssize(order_.sources); ++s) {
      const CaseSource& source = order_.sources[ix(s)];
      if (source.kind != length.kind || !is_for(cost_, length)) continue;
      double gain = 0;
      for (int p = 0; p < order_.panels; ++p)
        gain += static_cast<double>(length.yield[ix(p)]) * cost_.model.panel_price(source.cloth, p);
      const double metres = length.size.in_mm() / 1000;
      least = std::min(least, cost_.model.metre_price(s) * metres - gain);
    }
    lost.push_back({least, i});
  }
  std::stable_sort(lost.begin(), lost.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<int> best;
  for (const auto& [loss, i] : lost)
    if (loss < 1e9 && std::ssize(best) < kMostToImprove) best.push_back(i);
  return best;
}

void BatchSearch::improve() {
  const FillTools fill = tools(true);
  OrderImprove improve(fill, best_);
  Stage few{OrderModel(order_, weights_), false, cost_.end_to_end, 0};
  for (const int length : best_lengths())
    for (int s = 0; s < std::ssize(order_.sources); ++s) {
      const CaseSource& source = order_.sources[ix(s)];
      const OrderLength& l = lengths_.pool()[ix(length)];
      if (l.kind == source.kind && l.size <= source.room) few.model.allow(s, length, lengths_.pool());
    }
  few.allowed = lengths_.pool().size();
  for (int round = 0; round < budget_.rounds && !is_over(); ++round) {
    bool is_other = false;
    if (round % 2 == 0) {
      is_other = improve.step();
    } else {
      allow_all(few);
      is_other = improve.dive_step(few.model);
    }
    if (is_other) consider(improve.state());
    if (budget_.progress) ++budget_.progress->done;
  }
}

// The best plan cut other ways where that is better by the aims: by the quick ones, or each
// length by all.
void BatchSearch::refold_best(bool all_ways) {
  std::vector<int> ways;
  for (const BatchKind& kind : case_.kinds) ways.push_back(all_ways ? static_cast<int>(kind.ways.size()) : kind.quick);
  OrderState state = best_;
  const FillTools fill = tools(true);
  const bool is_other = all_ways ? refold_each(fill, ways, kMostRefolds * kLengthsFolded, state) : refold(fill, ways, kMostRefolds, state);
  if (is_other) consider(std::move(state));
}

void BatchSearch::run() {
  if (budget_.progress) budget_.progress->begin(budget_.rounds);
  add_first_lengths();
  dive_from(base_, 0.5, false);
  price_out(cost_);
  for (const double share : {0.5, 0.3, 0.7, 0.9})
    if (!is_over()) dive_from(base_, share, true);
  if (!is_over() && score_.filled < bounds_.filled) bound(true);
  if (!is_over()) bound(false);
  cost_.end_to_end = true;
  cost_.allowed = 0;
  for (const double share : {0.5, 0.3, 0.7, 0.9})
    if (!is_over()) dive_from(base_, share, true);
  if (!is_over()) refold_best(false);
  if (!is_over()) improve();
  if (!budget_.is_cancelled()) refold_best(false);
  if (!budget_.is_cancelled()) refold_best(true);
  if (!budget_.is_cancelled() && score_.filled < bounds_.filled) bound_served();
}

}  // namespace foldyard
