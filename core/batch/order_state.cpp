#include "batch/order_state.h"

#include <algorithm>
#include <numeric>
#include <tuple>

namespace foldyard {

namespace {

const OrderLength& at(const LengthPool& pool, int length) { return pool[static_cast<std::size_t>(length)]; }

Length used_of(const RollState& state, const LengthPool& pool, int stretch) {
  Length used;
  for (const StateLength& l : state.lengths)
    if (l.stretch == stretch) used += at(pool, l.length).size;
  return used;
}

}  // namespace

OrderState empty_state(const OrderCase& order) {
  return {std::vector<RollState>(order.rolls.size()),
          PiecesMade(order.lines.size(), std::vector<std::int64_t>(order.cloths.size(), 0))};
}

int way_of(const RollState& roll, const LengthPool& pool) {
  return roll.lengths.empty() ? -1 : at(pool, roll.lengths.front().length).way;
}

Length room_left(const CaseRoll& roll, const RollState& state, const LengthPool& pool, int stretch) {
  return roll.stretches[static_cast<std::size_t>(stretch)].size() - used_of(state, pool, stretch);
}

bool cut_from(const CaseRoll& roll, RollState& state, const LengthPool& pool, int length) {
  const int way = way_of(state, pool);
  if (way >= 0 && way != at(pool, length).way) return false;
  for (int s = 0; s < std::ssize(roll.stretches); ++s) {
    if (at(pool, length).size > room_left(roll, state, pool, s)) continue;
    state.lengths.push_back({length, s});
    return true;
  }
  return false;
}

std::int64_t times_it_fits(const CaseRoll& roll, const RollState& state, const LengthPool& pool, int length) {
  const int way = way_of(state, pool);
  if (way >= 0 && way != at(pool, length).way) return 0;
  std::int64_t times = 0;
  for (int s = 0; s < std::ssize(roll.stretches); ++s)
    times += room_left(roll, state, pool, s) / at(pool, length).size;
  return times;
}

Length cut_off(const CaseRoll& roll, const RollState& state, const LengthPool& pool) {
  Length last;
  for (int s = 0; s < std::ssize(roll.stretches); ++s) {
    const Length used = used_of(state, pool, s);
    if (!used.is_zero()) last = roll.stretches[static_cast<std::size_t>(s)].from + used;
  }
  return last;
}

ByClothAndPanel yield_of(const OrderCase& order, const OrderState& state, const LengthPool& pool) {
  ByClothAndPanel yield(order.cloths.size(), std::vector<std::int64_t>(static_cast<std::size_t>(order.panels), 0));
  for (std::size_t r = 0; r < order.rolls.size(); ++r) {
    auto& of_cloth = yield[static_cast<std::size_t>(order.rolls[r].cloth)];
    for (const StateLength& l : state.rolls[r].lengths)
      for (std::size_t p = 0; p < of_cloth.size(); ++p) of_cloth[p] += at(pool, l.length).yield[p];
  }
  return yield;
}

std::int64_t pieces_of(const PiecesMade& pieces, int line) {
  const auto& of_line = pieces[static_cast<std::size_t>(line)];
  return std::accumulate(of_line.begin(), of_line.end(), std::int64_t{0});
}

std::int64_t missing(const PieceRule& rule, const std::vector<std::int64_t>& pieces) {
  std::int64_t sum = 0;
  for (const int cloth : rule.cloths) sum += pieces[static_cast<std::size_t>(cloth)];
  return std::max<std::int64_t>(0, rule.at_least - sum);
}

OrderScore score_of(const OrderCase& order, const OrderState& state, const LengthPool& pool) {
  OrderScore score;
  for (int l = 0; l < std::ssize(order.lines); ++l) {
    const PieceLine& line = order.lines[static_cast<std::size_t>(l)];
    const std::int64_t made = pieces_of(state.pieces, l);
    score.filled += line.worth * std::min(made, line.must);
    score.cost -= line.worth * std::max<std::int64_t>(0, made - line.must);
    for (const PieceRule& rule : line.rules)
      score.short_of_rules += line.worth * missing(rule, state.pieces[static_cast<std::size_t>(l)]);
  }
  for (std::size_t r = 0; r < order.rolls.size(); ++r)
    score.cost += order.rolls[r].price.of(cut_off(order.rolls[r], state.rolls[r], pool));
  return score;
}

bool is_better(const OrderScore& a, const OrderScore& b) {
  return std::tuple(-a.filled, a.short_of_rules, a.cost) < std::tuple(-b.filled, b.short_of_rules, b.cost);
}

}  // namespace foldyard
