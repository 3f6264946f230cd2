#include "batch/order_model.h"

#include <algorithm>
#include <cmath>

#include "measure/index.h"

namespace foldyard {

namespace {

constexpr double kNoLimit = LpSolver::kNoLimit;

double in_metres(Length length) { return length.in_mm() / 1000; }
double in_whole(std::int64_t parts) { return static_cast<double>(parts) / 10000; }

}  // namespace

OrderModel::OrderModel(const OrderCase& order, const ModelWeights& weights) : order_(order), weights_(weights) {
  const auto wanted = panels_wanted(order);
  for (std::size_t c = 0; c < wanted.size(); ++c) {
    balance_.emplace_back();
    for (const bool w : wanted[c]) balance_.back().push_back(w ? lp_.add_row(0, kNoLimit) : -1);
  }
  add_openings();
  add_sources();
  for (int c = 0; c < std::ssize(order.cloths); ++c)
    for (const int apart : order.also_for(c)) add_moves(apart, c);
  for (const PieceLine& line : order.lines) add_line(line);
}

void OrderModel::add_moves(int apart, int cloth) {
  for (std::size_t p = 0; p < balance_[ix(cloth)].size(); ++p) {
    const int from = balance_[ix(apart)][p], to = balance_[ix(cloth)][p];
    if (from >= 0 && to >= 0) lp_.add_column(0, kNoLimit, {{from, -1}, {to, 1}});
  }
}

// A roll is paid for by the metre, squaring shared out over all that it has; once it
// is cut, or must be, squaring is paid.
double OrderModel::metre_cost(const CaseRoll& roll, bool is_cut) const {
  const double room = std::max(in_metres(roll.room), 1e-6);
  const double squaring = is_cut ? 0 : in_metres(roll.squaring);
  return roll.price.by_metre() * (room + squaring) / room * weights_.cloth;
}

void OrderModel::add_sources() {
  roll_columns_.assign(order_.rolls.size(), -1);
  metre_costs_.assign(order_.rolls.size(), 0);
  for (const CaseSource& source : order_.sources) {
    source_rows_.push_back(lp_.add_row(-kNoLimit, 0));
    for (const int r : source.rolls) {
      const CaseRoll& roll = order_.rolls[ix(r)];
      metre_costs_[ix(r)] = metre_cost(roll, roll.must);
      std::vector<LpTerm> terms{{source_rows_.back(), -1}};
      if (const int row = opening_rows_[ix(roll.cloth)]; row >= 0) terms.push_back({row, 1 / std::max(in_metres(roll.room), 1e-6)});
      roll_columns_[ix(r)] = lp_.add_column(metre_costs_[ix(r)], in_metres(roll.room), terms);
    }
  }
}

// Parts of rolls that are cut, and what lacks to one whole at the least squaring.
void OrderModel::add_openings() {
  const std::vector<bool> opened = cloths_opened(order_);
  opening_rows_.assign(order_.cloths.size(), -1);
  for (std::size_t c = 0; c < opened.size(); ++c) {
    double least = kNoLimit;
    for (const CaseRoll& roll : order_.rolls)
      if (ix(roll.cloth) == c) least = std::min(least, roll.price.by_metre() * in_metres(roll.squaring) * weights_.cloth);
    if (!opened[c] || least == kNoLimit || least <= 0) continue;
    opening_rows_[c] = lp_.add_row(1, kNoLimit);
    lp_.add_column(least, 1, {{opening_rows_[c], 1}});
  }
}

void OrderModel::add_line(const PieceLine& line) {
  LineRows rows;
  const int total = lp_.add_row(0, 0);
  const double worth = in_whole(line.worth);
  lp_.add_column(-worth * weights_.must, static_cast<double>(line.must), {{total, -1}});
  lp_.add_column(-worth * weights_.may, static_cast<double>(line.may), {{total, -1}});
  for (const PieceRule& rule : line.rules) {
    const bool has_least = rule.at_least > 0, has_most = rule.at_most != kAnyNumber;
    rows.at_least.push_back(has_least ? lp_.add_row(static_cast<double>(rule.at_least), kNoLimit) : -1);
    rows.at_most.push_back(has_most ? lp_.add_row(-kNoLimit, static_cast<double>(rule.at_most)) : -1);
    if (has_least) lp_.add_column(worth * weights_.rules, kNoLimit, {{rows.at_least.back(), 1}});
  }
  std::vector<int> need_rows;
  for (const PieceNeed& need : line.needs) {
    need_rows.push_back(need.from.empty() ? -1 : lp_.add_row(0, 0));
    rows.named.emplace_back();
    for (const int cloth : need.from)
      rows.named.back()[cloth] =
          lp_.add_column(0, kNoLimit, {{need_rows.back(), 1}, {balance_[ix(cloth)][ix(need.panel)], -1}});
  }
  add_pieces(line, rows, total, need_rows);
  lines_.push_back(std::move(rows));
}

void OrderModel::add_pieces(const PieceLine& line, LineRows& rows, int total, const std::vector<int>& need_rows) {
  rows.pieces.assign(order_.cloths.size(), -1);
  for (const int cloth : line.cloths) {
    std::vector<LpTerm> terms{{total, 1}};
    for (std::size_t n = 0; n < line.needs.size(); ++n) {
      const PieceNeed& need = line.needs[n];
      const int row = need.from.empty() ? balance_[ix(cloth)][ix(need.panel)] : need_rows[n];
      terms.push_back({row, -static_cast<double>(need.count)});
    }
    for (std::size_t r = 0; r < line.rules.size(); ++r) {
      const auto& of = line.rules[r].cloths;
      if (std::find(of.begin(), of.end(), cloth) == of.end()) continue;
      if (rows.at_least[r] >= 0) terms.push_back({rows.at_least[r], 1});
      if (rows.at_most[r] >= 0) terms.push_back({rows.at_most[r], 1});
    }
    rows.pieces[ix(cloth)] = lp_.add_column(0, kNoLimit, terms);
  }
}

void OrderModel::allow(int source, int length, const LengthPool& pool) {
  if (!index_.emplace(std::pair(source, length), std::ssize(known_)).second) return;
  const OrderLength& l = pool[ix(length)];
  std::vector<LpTerm> terms{{source_rows_[ix(source)], in_metres(l.size)}};
  const auto& balance = balance_[ix(order_.sources[ix(source)].cloth)];
  for (std::size_t p = 0; p < l.yield.size(); ++p)
    if (balance[p] >= 0 && l.yield[p] > 0) terms.push_back({balance[p], static_cast<double>(l.yield[p])});
  known_.push_back({source, length, lp_.add_column(0, kNoLimit, terms)});
}

void OrderModel::set_state(const OrderState& state, const LengthPool& pool) {
  const ByClothAndPanel yield = yield_of(order_, state, pool);
  for (std::size_t c = 0; c < balance_.size(); ++c)
    for (std::size_t p = 0; p < balance_[c].size(); ++p)
      if (balance_[c][p] >= 0) lp_.set_row(balance_[c][p], -static_cast<double>(yield[c][p]), kNoLimit);
  for (std::size_t r = 0; r < order_.rolls.size(); ++r) {
    const CaseRoll& roll = order_.rolls[r];
    Length left;
    for (int s = 0; s < std::ssize(roll.stretches); ++s) left += room_left(roll, state.rolls[r], pool, s);
    lp_.set_most(roll_columns_[r], in_metres(left));
    const double cost = metre_cost(roll, roll.must || !state.rolls[r].lengths.empty());
    if (cost == metre_costs_[r]) continue;
    lp_.set_cost(roll_columns_[r], cost);
    metre_costs_[r] = cost;
  }
  for (std::size_t c = 0; c < opening_rows_.size(); ++c) {
    bool is_cut = false;
    for (std::size_t r = 0; r < order_.rolls.size(); ++r) is_cut |= ix(order_.rolls[r].cloth) == c && !state.rolls[r].lengths.empty();
    if (opening_rows_[c] >= 0) lp_.set_row(opening_rows_[c], is_cut ? 0 : 1, kNoLimit);
  }
  for (const Known& known : known_) {
    std::int64_t most = 0;
    for (const int r : order_.sources[ix(known.source)].rolls)
      most += times_it_fits(order_.rolls[ix(r)], state.rolls[ix(r)], pool, known.length);
    lp_.set_most(known.column, static_cast<double>(most));
  }
}

bool OrderModel::solve() { return lp_.solve(); }

std::vector<OrderModel::Cut> OrderModel::cuts() const {
  std::vector<Cut> cuts;
  for (const Known& known : known_)
    if (const double times = lp_.value(known.column); times > 1e-7) cuts.push_back({known.source, known.length, times});
  return cuts;
}

double OrderModel::pieces(int line, int cloth) const {
  const int column = lines_[ix(line)].pieces[ix(cloth)];
  return column < 0 ? 0 : lp_.value(column);
}

double OrderModel::named(int line, int need, int cloth) const {
  const auto& columns = lines_[ix(line)].named[ix(need)];
  const auto found = columns.find(cloth);
  return found == columns.end() ? 0 : lp_.value(found->second);
}

double OrderModel::panel_price(int cloth, int panel) const {
  const int row = balance_[ix(cloth)][ix(panel)];
  return row < 0 ? 0 : std::max(0.0, lp_.price(row));
}

double OrderModel::metre_price(int source) const { return std::max(0.0, -lp_.price(source_rows_[ix(source)])); }

double OrderModel::opening_price(int cloth) const {
  const int row = opening_rows_[ix(cloth)];
  return row < 0 ? 0 : std::max(0.0, lp_.price(row));
}

RulePrice OrderModel::rule_price(int line, int rule, std::int64_t scale) const {
  const auto whole = [&](int row, double sign) {
    const double price = row < 0 ? 0 : std::clamp(sign * lp_.price(row), 0.0, 1e9);
    return static_cast<std::int64_t>(std::llround(std::min(price * 1e4 * static_cast<double>(scale), 1e17)));
  };
  return {whole(lines_[ix(line)].at_least[ix(rule)], 1), whole(lines_[ix(line)].at_most[ix(rule)], -1)};
}

}  // namespace foldyard
