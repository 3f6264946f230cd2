#include "job/batch_market.h"

#include <algorithm>
#include <cmath>
#include <future>
#include <map>
#include <set>
#include <thread>

#include "job/byte_gate.h"
#include "job/length_pricer.h"
#include "measure/index.h"
#include "measure/stop.h"

namespace foldyard {

namespace {

constexpr std::int64_t kFewPanels = 1000;       // on the one length that a market has at least
constexpr std::int64_t kDearest = 1 << 20;  // a panel, about: so that tables keep to 64 bits

double in_metres(Length length) { return length.in_mm() / 1000; }

struct Candidate {
  PricedLength length;
  double reduced = 0;
};

// What a length gains over what its cloth costs in the source where it costs least.
double reduced(const PricedLength& length, const Market& market, const Asking& asking) {
  const double value = static_cast<double>(length.value) / (1e4 * static_cast<double>(asking.prices.scale));
  const Length size = length.length + asking.job.losses.allowance;
  double best = -1;
  for (const int s : market.sources)
    if (size <= asking.batch.order.sources[ix(s)].room)
      best = std::max(best, value - asking.metre_prices[ix(s)] * in_metres(size));
  return best;
}

// Of each way the two that gain most, and the one that gains most in each sixth of the
// lengths.
std::vector<PricedLength> worth_adding(const std::vector<PricedLength>& all, const Market& market, const Asking& asking) {
  std::vector<Candidate> gaining;
  for (const PricedLength& l : all)
    if (const double gain = reduced(l, market, asking); gain > 1e-6) gaining.push_back({l, gain});
  std::stable_sort(gaining.begin(), gaining.end(), [](const auto& a, const auto& b) { return a.reduced > b.reduced; });
  std::vector<PricedLength> chosen;
  std::map<int, int> best;
  std::set<std::pair<int, std::int64_t>> parts;
  for (const Candidate& c : gaining) {
    const std::int64_t part = c.length.length.units() * 6 / (asking.job.table.length.units() * 2 + 1);
    const bool is_first = parts.insert({c.length.way, part}).second;
    if (is_first || ++best[c.length.way] <= 2) chosen.push_back(c.length);
  }
  return chosen;
}

std::vector<int> asked_ways(const BatchKind& kind, const Asking& asking) {
  std::vector<int> ways;
  for (int w = 0; w < kind.priced; ++w)
    if (asking.end_to_end || !kind.ways[ix(w)].end_to_end) ways.push_back(w);
  return ways;
}

Offer offer_of(const Market& market, const Asking& asking, ByteGate& gate) {
  const BatchKind& kind = asking.batch.kinds[ix(market.kind)];
  LengthPricer pricer(asking.job, kind.cloth, asking.prices.panel[ix(market.cloth)], asking.steps, asking.cancelled);
  Offer offer;
  if (!pricer.sells()) return offer;
  const ByteGate::Pass pass(gate, pricer.most_bytes());
  std::vector<PricedLength> priced = pricer.lengths(asked_ways(kind, asking), kind.ways);
  std::int64_t room = asking.most_panels;
  for (const PricedLength& l : worth_adding(priced, market, asking)) {
    Pattern pattern = pricer.pattern(l, kind.ways);
    const std::int64_t panels = std::ssize(pattern.panels);
    if (panels > room && (!offer.lengths.empty() || panels > kFewPanels)) continue;
    room -= panels;
    offer.lengths.push_back({l.way, std::move(pattern)});
  }
  if (asking.for_bound) {
    const auto add = [&](bool end_to_end) {
      for (const PricedLength& l : pricer.bounding(end_to_end))
        offer.sold.push_back({l.length + asking.job.losses.allowance, l.value});
    };
    add(false);
    if (kind.may_lie_end_to_end) add(true);
  }
  offer.is_whole = pricer.is_whole();
  offer.most_of_metre = pricer.most_by_area(Length::mm(1000));
  return offer;
}

}  // namespace

std::vector<Market> markets_of(const OrderCase& order) {
  std::vector<Market> markets;
  for (int s = 0; s < std::ssize(order.sources); ++s) {
    const CaseSource& source = order.sources[ix(s)];
    auto found = std::find_if(markets.begin(), markets.end(),
                              [&](const Market& m) { return m.cloth == source.cloth && m.kind == source.kind; });
    if (found == markets.end()) found = markets.insert(markets.end(), {source.cloth, source.kind, {}});
    found->sources.push_back(s);
  }
  return markets;
}

std::vector<Offer> offers_of(const std::vector<Market>& markets, const Asking& asking) {
  std::vector<Offer> offers(markets.size());
  std::atomic<std::size_t> next = 0;
  ByteGate gate(LengthPricer::kMostBytes);
  const auto work = [&] {
    for (std::size_t i; !is_set(asking.cancelled) && (i = next++) < markets.size();) offers[i] = offer_of(markets[i], asking, gate);
  };
  std::vector<std::future<void>> others;
  for (unsigned n = std::min(4u, std::thread::hardware_concurrency()); n > 1; --n)
    others.push_back(std::async(std::launch::async, work));
  work();
  for (std::future<void>& other : others) other.get();
  return offers;
}

OrderPrices whole_prices(const OrderCase& order, const OrderModel& model) {
  OrderPrices prices;
  double dearest = 1;
  for (int c = 0; c < std::ssize(order.cloths); ++c)
    for (int p = 0; p < order.panels; ++p) dearest = std::max(dearest, model.panel_price(c, p) * 1e4);
  while (prices.scale < kDearest && dearest * static_cast<double>(prices.scale) * 2 <= kDearest) prices.scale *= 2;
  const auto whole = [&](double price) {
    return static_cast<std::int64_t>(std::llround(std::min(price * 1e4 * static_cast<double>(prices.scale), 1e12)));
  };
  for (int c = 0; c < std::ssize(order.cloths); ++c) {
    prices.panel.emplace_back();
    for (int p = 0; p < order.panels; ++p) prices.panel.back().push_back(whole(model.panel_price(c, p)));
  }
  for (int l = 0; l < std::ssize(order.lines); ++l) {
    prices.rules.emplace_back();
    for (int r = 0; r < std::ssize(order.lines[ix(l)].rules); ++r)
      prices.rules.back().push_back(model.rule_price(l, r, prices.scale));
  }
  for (int c = 0; c < std::ssize(order.cloths); ++c) prices.opening.push_back(whole(model.opening_price(c)));
  prices.cloth = prices.may = prices.scale;
  return prices;
}

std::optional<Wide> least_of_all(const OrderCase& order, const std::vector<Market>& markets,
                                 const std::vector<Offer>& offers, const OrderPrices& prices, std::int64_t steps,
                                 const std::atomic<bool>* cancelled) {
  Wide least = least_of_pieces(order, prices);
  for (std::size_t m = 0; m < markets.size(); ++m)
    for (const int s : markets[m].sources)
      for (const int r : order.sources[ix(s)].rolls) {
        if (is_set(cancelled)) return std::nullopt;
        const CaseRoll& roll = order.rolls[ix(r)];
        const Offer& offer = offers[m];
        least += offer.is_whole
                     ? Wide(least_of_roll(roll, offer.sold, prices, steps, cancelled))
                     : least_of_roll_by_density(roll, offer.most_of_metre, Length::mm(1000), prices);
      }
  return least;
}

}  // namespace foldyard
