#include "batch/order_state.h"

#include <algorithm>
#include <map>
#include <numeric>

#include "lay/stack.h"
#include "measure/index.h"

namespace foldyard {

namespace {

const OrderLength& at(const LengthPool& pool, int length) { return pool[ix(length)]; }

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

Length room_left(const CaseRoll& roll, const RollState& state, const LengthPool& pool, int stretch) {
  return roll.stretches[ix(stretch)].size() - used_of(state, pool, stretch);
}

bool cut_from(const CaseRoll& roll, RollState& state, const LengthPool& pool, int length) {
  for (int s = 0; s < std::ssize(roll.stretches); ++s) {
    if (at(pool, length).size > room_left(roll, state, pool, s)) continue;
    state.lengths.push_back({length, s});
    return true;
  }
  return false;
}

std::int64_t times_it_fits(const CaseRoll& roll, const RollState& state, const LengthPool& pool, int length) {
  std::int64_t times = 0;
  for (int s = 0; s < std::ssize(roll.stretches); ++s)
    times += room_left(roll, state, pool, s) / at(pool, length).size;
  return times;
}

Length cut_off(const CaseRoll& roll, const RollState& state, const LengthPool& pool) {
  Length last;
  for (int s = 0; s < std::ssize(roll.stretches); ++s) {
    const Length used = used_of(state, pool, s);
    if (!used.is_zero()) last = roll.stretches[ix(s)].from + used;
  }
  return last;
}

ByClothAndPanel yield_of(const OrderCase& order, const OrderState& state, const LengthPool& pool) {
  ByClothAndPanel yield(order.cloths.size(), std::vector<std::int64_t>(static_cast<std::size_t>(order.panels), 0));
  std::copy(order.on_hand.begin(), order.on_hand.end(), yield.begin());
  for (std::size_t r = 0; r < order.rolls.size(); ++r) {
    auto& of_cloth = yield[ix(order.rolls[r].cloth)];
    for (const StateLength& l : state.rolls[r].lengths)
      for (std::size_t p = 0; p < of_cloth.size(); ++p) of_cloth[p] += at(pool, l.length).yield[p];
  }
  return yield;
}

std::int64_t pieces_of(const PiecesMade& pieces, int line) {
  const auto& of_line = pieces[ix(line)];
  return std::accumulate(of_line.begin(), of_line.end(), std::int64_t{0});
}

std::int64_t missing(const PieceRule& rule, const std::vector<std::int64_t>& pieces) {
  std::int64_t sum = 0;
  for (const int cloth : rule.cloths) sum += pieces[ix(cloth)];
  return std::max<std::int64_t>(0, rule.at_least - sum);
}

namespace {

// A roll that is not cut is kept whole.
std::int64_t kept_of(const CaseRoll& roll, Length cut) {
  const Length end = roll.squaring + roll.room;
  const Length rest = cut.is_zero() ? end : end - cut;
  return rest >= roll.keep ? roll.price.of(rest) : 0;
}

void count_rolls(const OrderCase& order, const OrderState& state, const LengthPool& pool, OrderScore& score) {
  for (std::size_t r = 0; r < order.rolls.size(); ++r) {
    const Length cut = cut_off(order.rolls[r], state.rolls[r], pool);
    score.cost += order.rolls[r].price.of(cut);
    score.remnants += kept_of(order.rolls[r], cut);
    if (cut.is_zero() && order.rolls[r].must) ++score.uncut;
    if (!cut.is_zero()) score.ticks += order.unroll.ticks();
  }
}

void count_lays(const OrderCase& order, const OrderState& state, const LengthPool& pool, OrderScore& score) {
  std::map<int, std::vector<Length>> heights;  // by length
  for (std::size_t r = 0; r < order.rolls.size(); ++r)
    for (const StateLength& l : state.rolls[r].lengths) {
      heights[l.length].push_back(order.rolls[r].thickness * at(pool, l.length).plies);
      score.ticks += at(pool, l.length).each.ticks();
    }
  for (const auto& [length, of] : heights) {
    const std::int64_t lays = std::ssize(fewest_stacks(of, at(pool, length).plies, order.cutter).stacks);
    score.lifts += lays;
    score.ticks += at(pool, length).lay.ticks() * lays;
  }
}

std::int64_t of_aim(const OrderScore& score, CaseAim aim) {
  switch (aim) {
    case CaseAim::cost: return score.cost;
    case CaseAim::lifts: return score.lifts;
    case CaseAim::minutes: return score.ticks;
    case CaseAim::remnants: return -score.remnants;
  }
  return 0;
}

}  // namespace

OrderScore score_of(const OrderCase& order, const OrderState& state, const LengthPool& pool) {
  OrderScore score;
  for (int l = 0; l < std::ssize(order.lines); ++l) {
    const PieceLine& line = order.lines[ix(l)];
    const std::int64_t made = pieces_of(state.pieces, l);
    score.filled += line.worth * std::min(made, line.must);
    score.cost -= line.worth * std::max<std::int64_t>(0, made - line.must);
    for (const PieceRule& rule : line.rules)
      score.short_of_rules += line.worth * missing(rule, state.pieces[ix(l)]);
  }
  count_rolls(order, state, pool, score);
  count_lays(order, state, pool, score);
  return score;
}

bool is_better(const OrderCase& order, const OrderScore& a, const OrderScore& b) {
  if (a.filled != b.filled) return a.filled > b.filled;
  if (a.short_of_rules != b.short_of_rules) return a.short_of_rules < b.short_of_rules;
  if (a.uncut != b.uncut) return a.uncut < b.uncut;
  for (const CaseAim aim : order.aims)
    if (of_aim(a, aim) != of_aim(b, aim)) return of_aim(a, aim) < of_aim(b, aim);
  return false;
}

}  // namespace foldyard
