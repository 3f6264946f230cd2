#include "batch/cut_to_length.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <numeric>

#include "batch/bounded_fill.h"
#include "measure/index.h"
#include "solver/lp_solver.h"

namespace foldyard {
namespace {

using Counts = std::vector<std::int64_t>;

// Prices of the linear model, as whole numbers of this part.
constexpr std::int64_t kPriceScale = 10'000'000;

std::int64_t sum_of(const Counts& counts) { return std::accumulate(counts.begin(), counts.end(), std::int64_t{0}); }

std::int64_t rounded_up(std::int64_t a, std::int64_t b) { return a <= 0 ? 0 : (a + b - 1) / b; }

class Cutter1D {
 public:
  Cutter1D(const std::vector<WantedLength>& wanted, Length roll, Length loss, const std::vector<Length>& ends)
      : ends_(ends) {
    for (const WantedLength& each : wanted) {
      sizes_.push_back(each.length + loss);
      all_.push_back(each.count);
    }
    fills_.emplace_back(sizes_, roll);
    for (const Length end : ends) fills_.emplace_back(sizes_, end);
    make_model();
  }

  CutToLength run(int rounds) {
    if (sum_of(all_) == 0) return {{}, 0, 0, true};
    keep(first_fit());
    for (int round = 0; round < rounds && !is_proved(); ++round) keep(descend(round));
    best_.bound = bound_;
    best_.proved = is_proved();
    return best_;
  }

 private:
  struct Column {
    int place = 0;  // 0: a full roll; else an end, from 1
    Counts counts;
    bool operator==(const Column&) const = default;
  };
  struct State {
    Counts left;
    std::vector<bool> used;  // by end
    std::vector<LengthCuts> cuts;
    std::int64_t rolls = 0;
  };

  bool is_proved() const { return best_.rolls <= bound_; }

  void make_model() {
    for (const std::int64_t count : all_) model_.add_row(static_cast<double>(count), LpSolver::kNoLimit);
    for (std::size_t i = 0; i < ends_.size(); ++i) model_.add_row(-LpSolver::kNoLimit, 1);
    for (std::size_t i = 0; i < sizes_.size(); ++i) {
      Counts one(sizes_.size());
      one[i] = 1;
      add({0, std::move(one)});
    }
  }

  void add(Column column) {
    if (std::find(columns_.begin(), columns_.end(), column) != columns_.end()) return;
    std::vector<LpTerm> terms;
    for (std::size_t i = 0; i < column.counts.size(); ++i) {
      if (column.counts[i] > 0) terms.push_back({static_cast<int>(i), static_cast<double>(column.counts[i])});
    }
    if (column.place > 0) terms.push_back({static_cast<int>(sizes_.size()) + column.place - 1, 1});
    model_.add_column(column.place == 0 ? 1 : 0, LpSolver::kNoLimit, terms);
    columns_.push_back(std::move(column));
  }

  State start() const { return {all_, std::vector<bool>(ends_.size()), {}, 0}; }

  void ask_for(const State& state) {
    for (std::size_t i = 0; i < sizes_.size(); ++i)
      model_.set_row(static_cast<int>(i), static_cast<double>(state.left[i]), LpSolver::kNoLimit);
    for (std::size_t e = 0; e < ends_.size(); ++e)
      model_.set_row(static_cast<int>(sizes_.size() + e), -LpSolver::kNoLimit, state.used[e] ? 0 : 1);
  }

  Counts prices() const {
    Counts prices;
    for (std::size_t i = 0; i < sizes_.size(); ++i) {
      const double price = model_.price(static_cast<int>(i));
      const bool is_sound = std::isfinite(price) && price > 0 && price < 1e6;
      prices.push_back(is_sound ? static_cast<std::int64_t>(std::llround(price * static_cast<double>(kPriceScale))) : 0);
    }
    return prices;
  }

  // Adds what is worth more at the prices than it costs; gives whether there was
  // any. Where everything is still to be cut, the prices give a bound too.
  bool add_columns(const State& state, bool is_whole) {
    const Counts price = prices();
    bool added = false;
    std::int64_t wanted = 0;
    for (std::size_t i = 0; i < price.size(); ++i) wanted += price[i] * state.left[i];
    const auto take = [&](int place, std::int64_t free) {
      const BoundedFill::Filling filling = fills_[ix(place)].best(price, state.left);
      if (filling.value > free + static_cast<std::int64_t>(sizes_.size())) {
        const std::size_t before = columns_.size();
        add({place, filling.counts});
        added |= columns_.size() > before;
      }
      return filling.bound;
    };
    const std::int64_t roll = take(0, kPriceScale);
    for (std::size_t e = 0; e < ends_.size(); ++e) {
      if (state.used[e]) continue;
      const double end_price = model_.price(static_cast<int>(sizes_.size() + e));
      const double free = std::isfinite(end_price) ? std::min(0.0, std::max(end_price, -1e6)) : 0;
      wanted -= take(static_cast<int>(e) + 1, std::llround(-free * static_cast<double>(kPriceScale)));
    }
    if (is_whole && roll > 0) bound_ = std::max(bound_, rounded_up(wanted, roll));
    return added;
  }

  bool solve(const State& state, bool is_whole) {
    ask_for(state);
    do {
      if (!model_.solve()) return false;
    } while (add_columns(state, is_whole));
    return true;
  }

  // As often as it fits and is wanted, no more of a length than is left.
  void cut(State& state, const Column& column, std::int64_t times) const {
    for (; times > 0 && sum_of(state.left) > 0; --times) {
      LengthCuts cuts{column.place - 1, 1, column.counts};
      for (std::size_t i = 0; i < cuts.counts.size(); ++i) {
        cuts.counts[i] = std::min(cuts.counts[i], state.left[i]);
        state.left[i] -= cuts.counts[i];
      }
      if (sum_of(cuts.counts) == 0) return;
      if (column.place > 0) state.used[ix(column.place - 1)] = true;
      else ++state.rolls;
      state.cuts.push_back(std::move(cuts));
    }
  }

  bool is_spent(const State& state, const Column& column) const {
    return column.place > 0 && state.used[ix(column.place - 1)];
  }

  // Of what is cut in the linear answer: whole parts at once, else the column whose
  // part is nearest to one from below; `skip` of the best are passed over.
  bool fix_next(State& state, int skip) const {
    std::vector<std::pair<double, std::size_t>> parts;
    bool fixed = false;
    for (std::size_t c = 0; c < columns_.size(); ++c) {
      const double value = model_.value(static_cast<int>(c));
      if (!std::isfinite(value) || value < 1e-6 || is_spent(state, columns_[c])) continue;
      const double whole = std::floor(value + 1e-6);
      if (whole >= 1 && fits(state, columns_[c])) {
        cut(state, columns_[c], static_cast<std::int64_t>(whole));
        fixed = true;
      } else {
        parts.push_back({-(value - whole), c});
      }
    }
    if (fixed) return true;
    std::sort(parts.begin(), parts.end());
    if (parts.empty()) return false;
    const auto at = std::min(static_cast<std::size_t>(skip), parts.size() - 1);
    cut(state, columns_[parts[at].second], 1);
    return true;
  }

  static bool fits(const State& state, const Column& column) {
    for (std::size_t i = 0; i < column.counts.size(); ++i) {
      if (column.counts[i] > state.left[i]) return false;
    }
    return true;
  }

  State descend(int round) {
    State state = start();
    for (int depth = 0; sum_of(state.left) > 0; ++depth) {
      if (!solve(state, depth == 0) || is_hopeless(state)) break;
      if (!fix_next(state, passed_over(round, depth))) break;
    }
    fill_rest(state);
    return state;
  }

  // Of the best choices: none in the first round; later at about every fourth
  // depth one or two, elsewhere in each round.
  static int passed_over(int round, int depth) {
    if (round == 0) return 0;
    std::uint32_t mixed = static_cast<std::uint32_t>(round) * 0x9E3779B1u ^ static_cast<std::uint32_t>(depth) * 0x85EBCA6Bu;
    mixed ^= mixed >> 15;
    mixed *= 0xC2B2AE35u;
    mixed ^= mixed >> 13;
    return mixed % 4 == 0 ? 1 + static_cast<int>(mixed / 4 % 2) : 0;
  }

  // The linear model of what is left says that no better plan comes of it.
  bool is_hopeless(const State& state) const {
    return state.rolls + static_cast<std::int64_t>(std::ceil(model_.cost() - 1e-6)) >= best_.rolls;
  }

  // Longest first, ends before rolls, each into the first that has room.
  void fill_rest(State& state) const {
    for (std::size_t e = 0; e < ends_.size(); ++e) {
      if (!state.used[e]) cut(state, {static_cast<int>(e) + 1, greedy(state, static_cast<int>(e) + 1)}, 1);
    }
    while (sum_of(state.left) > 0) cut(state, {0, greedy(state, 0)}, 1);
  }

  // What fills the place best at the worth of length.
  Counts greedy(const State& state, int place) const {
    Counts worth;
    for (const Length size : sizes_) worth.push_back(size.units());
    return fills_[ix(place)].best(worth, state.left).counts;
  }

  State first_fit() const {
    State state = start();
    fill_rest(state);
    return state;
  }

  void keep(const State& state) {
    if (state.rolls >= best_.rolls) return;
    best_.rolls = state.rolls;
    best_.cuts.clear();
    std::map<Counts, std::int64_t, std::greater<>> rolls;
    for (const LengthCuts& cuts : state.cuts) {
      if (cuts.end >= 0) best_.cuts.push_back(cuts);
      else rolls[cuts.counts] += cuts.rolls;
    }
    std::sort(best_.cuts.begin(), best_.cuts.end(), [](const auto& a, const auto& b) { return a.end < b.end; });
    for (const auto& [counts, times] : rolls) best_.cuts.push_back({-1, times, counts});
  }

  const std::vector<Length>& ends_;
  std::vector<Length> sizes_;  // loss included
  Counts all_;
  std::vector<BoundedFill> fills_;  // by place
  std::vector<Column> columns_;
  LpSolver model_;
  CutToLength best_{{}, std::numeric_limits<std::int64_t>::max(), 0, false};
  std::int64_t bound_ = 0;
};

}  // namespace

CutToLength cut_to_length(const std::vector<WantedLength>& wanted, Length roll, Length loss,
                          const std::vector<Length>& ends, int rounds) {
  return Cutter1D(wanted, roll, loss, ends).run(rounds);
}

}  // namespace foldyard
