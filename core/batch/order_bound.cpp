#include "batch/order_bound.h"

#include <algorithm>

#include "measure/index.h"

namespace foldyard {

namespace {

std::int64_t price_of(const PieceNeed& need, int own, const OrderCase& order, const OrderPrices& prices) {
  const auto of = [&](int cloth) {
    return prices.panel[ix(cloth)][ix(need.panel)];
  };
  const auto at = [&](int cloth) {
    std::int64_t least = of(cloth);
    for (const int apart : order.also_for(cloth)) least = std::min(least, of(apart));
    return least;
  };
  if (need.from.empty()) return at(own);
  std::int64_t least = at(need.from.front());
  for (const int cloth : need.from) least = std::min(least, at(cloth));
  return least;
}

// A piece of this line from this cloth.
Wide price_of_piece(const OrderCase& order, const PieceLine& line, const std::vector<RulePrice>& rules, int cloth,
                    const OrderPrices& prices) {
  Wide sum = 0;
  for (const PieceNeed& need : line.needs) sum += Wide(need.count) * price_of(need, cloth, order, prices);
  for (std::size_t r = 0; r < line.rules.size(); ++r)
    if (is_among(line.rules[r].cloths, cloth)) sum += rules[r].at_most - rules[r].at_least;
  return sum;
}

Wide given_back(const PieceLine& line, const std::vector<RulePrice>& rules) {
  Wide sum = 0;
  for (std::size_t r = 0; r < line.rules.size(); ++r) {
    sum += Wide(rules[r].at_least) * line.rules[r].at_least;
    if (line.rules[r].at_most != kAnyNumber) sum -= Wide(rules[r].at_most) * line.rules[r].at_most;
  }
  return sum;
}

// Linear between its ends and `must`, so least at one of the three.
Wide least_of_line(const OrderCase& order, const PieceLine& line, const std::vector<RulePrice>& rules, const OrderPrices& prices) {
  if (line.cloths.empty()) return given_back(line, rules);
  Wide piece = price_of_piece(order, line, rules, line.cloths.front(), prices);
  for (const int cloth : line.cloths) piece = std::min(piece, price_of_piece(order, line, rules, cloth, prices));
  const Wide all_must = (piece - Wide(line.worth) * prices.must) * line.must;
  const Wide all = all_must + (piece - Wide(line.worth) * prices.may) * line.may;
  const Wide least = std::min(all_must, all);
  return given_back(line, rules) + (prices.all_must ? least : std::min<Wide>(0, least));
}

// What lengths that are kept cost, squaring included, less what they sell; of a roll
// that must be cut, its squaring.
std::int64_t settled(const CaseRoll& roll, const OrderPrices& prices) {
  std::int64_t sum = roll.price.of(roll.squaring + roll.kept_size, prices.cloth);
  for (std::size_t p = 0; p < roll.kept_yield.size(); ++p)
    sum -= roll.kept_yield[p] * prices.panel[ix(roll.cloth)][p];
  return sum;
}

}  // namespace

Wide least_of_pieces(const OrderCase& order, const OrderPrices& prices) {
  Wide sum = 0;
  for (std::size_t c = 0; c < order.on_hand.size(); ++c)
    for (std::size_t p = 0; p < order.on_hand[c].size(); ++p) sum -= Wide(prices.panel[c][p]) * order.on_hand[c][p];
  for (const std::int64_t price : prices.opening) sum += price;
  for (std::size_t l = 0; l < order.lines.size(); ++l) sum += least_of_line(order, order.lines[l], prices.rules[l], prices);
  return sum;
}

std::int64_t least_of_roll(const CaseRoll& roll, const std::vector<SoldLength>& lengths, const OrderPrices& prices,
                           std::int64_t steps, const std::atomic<bool>* cancelled) {
  const bool is_settled = roll.must || roll.kept > 0;
  const Length room = roll.room - roll.kept_size;
  std::vector<SeriesEntry> entries;
  for (const SoldLength& length : lengths) {
    const std::int64_t gain = length.value - roll.price.of(length.size, prices.cloth);
    if (length.size <= room && gain > 0) entries.push_back({length.size, gain, 0});
  }
  const std::int64_t most = entries.empty() ? 0 : best_series(entries, room, steps, cancelled).bound;
  if (is_settled) return settled(roll, prices) - most;
  return std::min<std::int64_t>(0, roll.price.of(roll.squaring, prices.cloth) - prices.opening_of(roll.cloth) - most);
}

Wide least_of_roll_by_density(const CaseRoll& roll, Wide value, Length of, const OrderPrices& prices) {
  const Wide most = of.is_zero() ? 0 : value * (roll.room - roll.kept_size).units() / of.units() + 1;
  if (roll.must || roll.kept > 0) return settled(roll, prices) - most;
  return std::min<Wide>(0, Wide(roll.price.of(roll.room, prices.cloth)) - most) - prices.opening_of(roll.cloth);
}

}  // namespace foldyard
